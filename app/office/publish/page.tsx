import { connection } from 'next/server';
import type { ReactNode } from 'react';
import type { PublishView } from '#app/_flows/read-publish.ts';
import { readPublish } from '#app/_flows/read-publish.ts';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import { services } from '#app/_server/services.ts';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { SectionHead } from '#app/_ui/controls/section-head.tsx';
import { checkRulebook } from '#lib/rulebook/check-rulebook.ts';
import type { SoundnessFault } from '#lib/rulebook/soundness-fault.ts';
import type { Impact } from '#lib/variants/impact.ts';
import styles from '../office.module.css';
import { NoRulebook, OfficePage } from '../office-page.tsx';
import { officeText } from '../office-text.ts';
import { ImportForm } from './import-form.tsx';
import { PublishForm } from './publish-form.tsx';

export const metadata = { title: 'Draft and publish – Office' };

export default async function PublishPage(): Promise<ReactNode> {
  await connection();
  const { flow, actor } = await staffPage(['formulator', 'manager'], '/office/publish');
  const view = readRulebook(flow);
  const asked = readPublish(flow);
  const { t } = officeText();
  const impact = asked?.newestDocument ? await impactOfDraft(asked) : null;
  const faults = view.draft ? checkRulebook(view.draft.book.rulebook, view.day) : [];
  const nextNo = (view.newest?.head.editionNo ?? 0) + 1;
  return (
    <OfficePage view={view} place="publish" title={t('publish-title')}>
      {!view.draft || !asked ? (
        <NoRulebook />
      ) : (
        <>
          <Faults faults={faults} />
          {asked.replaces.map(({ editionNo }) => (
            <Notice key={editionNo} tone="care" title={t('notice-replaces-edition', { no: editionNo })} />
          ))}
          {impact && <ImpactSection impact={impact} />}
          {view.newest && view.diff.length === 0 ? (
            <Notice tone="ok" title={t('publish-same')}>
              {t('publish-same-note')}
            </Notice>
          ) : (
            <PublishForm
              revisionNo={view.draft.head.revisionNo}
              nextNo={nextNo}
              diff={view.diff}
              isOwn={actor.role !== 'formulator' || asked.authorIds.includes(actor.accountId)}
              isFirst={!view.newest}
            />
          )}
        </>
      )}
      {actor.role === 'formulator' && <ImportForm parentRevisionNo={view.draft?.head.revisionNo ?? null} />}
    </OfficePage>
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

function ImpactSection({ impact }: { readonly impact: Impact }): ReactNode {
  const { t } = officeText();
  return (
    <section className={styles.section} aria-labelledby="impact">
      <SectionHead id="impact" title={t('impact-title')} />
      <p className="type-strong">
        {t('impact-lost', { count: impact.lostCount })}. {t('impact-gained', { count: impact.gainedCount })}.
      </p>
      <p>{t('impact-orders', { count: impact.lostKeys.length })}</p>
    </section>
  );
}

function Faults({ faults }: { readonly faults: readonly SoundnessFault[] }): ReactNode {
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
            cells: [fault.path.join(' / '), fault.message],
          }))}
        />
      </section>
    );
  });
}
