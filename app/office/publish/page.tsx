import { connection } from 'next/server';
import type { ReactNode } from 'react';
import type { PublishView } from '#app/_flows/read-publish.ts';
import { readPublish } from '#app/_flows/read-publish.ts';
import type { RulebookView } from '#app/_flows/read-rulebook.ts';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import { services } from '#app/_server/services.ts';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { servedDraft } from '#lib/edition/publish-gate.ts';
import { checkRulebook } from '#lib/rulebook/check-rulebook.ts';
import type { SoundnessFault } from '#lib/rulebook/soundness-fault.ts';
import type { Impact } from '#lib/variants/impact.ts';
import styles from '../office.module.css';
import { NoRulebook, OfficePage } from '../office-page.tsx';
import { officeText } from '../office-text.ts';
import { ImpactSection } from './impact-section.tsx';
import { ImportForm } from './import-form.tsx';
import { PublishForm } from './publish-form.tsx';
import { namesOf } from './rulebook-names.ts';
import { placeInWords, tellChanges } from './tell-changes.ts';

export const metadata = { title: 'Draft and publish – Office' };

interface PageProps {
  readonly searchParams: Promise<Readonly<Record<string, string>>>;
}

export default async function PublishPage({ searchParams }: PageProps): Promise<ReactNode> {
  await connection();
  const { flow, actor } = await staffPage(['formulator', 'manager'], '/office/publish');
  const view = readRulebook(flow);
  const asked = readPublish(flow);
  const { saved } = await searchParams;
  const impact = asked?.newestDocument && view.diff.length > 0 ? await impactOfDraft(asked) : null;
  const mayImport = actor.role === 'formulator';
  return (
    <OfficePage view={view} place="publish" title={officeText().t('publish-title')} saved={saved}>
      {!view.draft || !asked ? (
        <NoRulebook />
      ) : (
        <DraftSections
          view={view}
          draft={view.draft}
          asked={asked}
          impact={impact}
          isOwn={!mayImport || asked.authorIds.includes(actor.accountId)}
        />
      )}
      {mayImport && <ImportForm parentRevisionNo={view.draft?.head.revisionNo ?? null} />}
    </OfficePage>
  );
}

interface DraftProps {
  readonly view: RulebookView;
  readonly draft: NonNullable<RulebookView['draft']>;
  readonly asked: PublishView;
  readonly impact: Impact | null;
  /** The reader edited it, or may not publish at all. */
  readonly isOwn: boolean;
}

function DraftSections({ view, draft, asked, impact, isOwn }: DraftProps): ReactNode {
  const text = officeText();
  const { t } = text;
  const { newest, diff, day } = view;
  const { rulebook } = draft.book;
  const names = namesOf([rulebook, ...(newest ? [newest.book.rulebook] : [])]);
  return (
    <>
      <Faults faults={checkRulebook(rulebook, day)} placeOf={({ path }) => placeInWords(path, rulebook, names, text)} />
      {asked.replaces.length > 0 && (
        <section className={styles.section}>
          {asked.replaces.map(({ editionNo }) => (
            <Notice key={editionNo} tone="care" title={t('notice-replaces-edition', { no: editionNo })} />
          ))}
        </section>
      )}
      {impact && <ImpactSection impact={impact} names={names} text={text} />}
      {newest && diff.length === 0 ? (
        <section className={styles.section}>
          <Notice tone="ok" title={t('publish-same', { no: newest.head.editionNo })}>
            {t('publish-same-note')}
          </Notice>
        </section>
      ) : (
        <PublishForm
          revisionNo={draft.head.revisionNo}
          nextNo={(newest?.head.editionNo ?? 0) + 1}
          zone={view.shop.zone}
          changes={tellChanges(diff, newest?.book ?? null, servedDraft(rulebook), text)}
          isOwn={isOwn}
          isFirst={!newest}
        />
      )}
    </>
  );
}

/** Counted in the worker, since it asks every variant twice. */
async function impactOfDraft({ newestDocument, draftDocument, day, orderedKeys }: PublishView): Promise<Impact | null> {
  const outcome = await services().runJob('impact-of', {
    before: newestDocument ?? '',
    after: draftDocument,
    day,
    askedKeys: orderedKeys,
  });
  return outcome.kind === 'done' ? outcome.output : null;
}

interface FaultsProps {
  readonly faults: readonly SoundnessFault[];
  readonly placeOf: (fault: SoundnessFault) => string;
}

function Faults({ faults, placeOf }: FaultsProps): ReactNode {
  const { t } = officeText();
  return (['error', 'warning'] as const).map((weight) => {
    const rows = faults.filter((fault) => fault.weight === weight);
    if (rows.length === 0) return null;
    return (
      <section key={weight} className={styles.section} id={weight === 'error' ? 'faults' : undefined}>
        <DataTable
          caption={t(weight === 'error' ? 'faults-caption' : 'warnings-caption')}
          showCaption
          density="compact"
          columns={[
            { id: 'place', head: t('col-place') },
            { id: 'fault', head: t('col-fault') },
          ]}
          rows={rows.map((fault, index) => ({
            id: `${index}`,
            look: weight === 'error' ? 'care' : 'plain',
            cells: [placeOf(fault), fault.message],
          }))}
        />
      </section>
    );
  });
}
