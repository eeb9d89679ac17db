// What can happen in the demonstration, with an example each. Only a demonstration has this page: a real shop's rules are its own.
import { notFound } from 'next/navigation';
import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { SectionHead } from '#app/_ui/controls/section-head.tsx';
import { en as reasonWords } from '#app/_ui/text/bench-findings/en.ts';
import { FINDING_CODES } from '#lib/base/finding.ts';
import { localDay } from '#lib/units/time.ts';
import styles from '../office.module.css';
import { OfficePage } from '../office-page.tsx';
import { officeText } from '../office-text.ts';
import { fieldWord, namesOf } from '../publish/rulebook-names.ts';
import { valueInWords } from '../publish/rulebook-values.ts';
import { CountSection } from './count-section.tsx';
import type { Example } from './example-table.ts';
import { EXAMPLES } from './examples.data.ts';
import { examplesText } from './examples-text.ts';

export const metadata = { title: 'What can happen – Office' };

export default async function ExamplesPage(): Promise<ReactNode> {
  await connection();
  const { flow } = await staffPage(['formulator', 'manager'], '/office/examples');
  const view = readRulebook(flow);
  if (!view.shop.isDemo) notFound();
  const { t, day } = examplesText();
  return (
    <OfficePage view={view} place="examples" title={t('title')}>
      <div className={styles.saved}>
        <Notice tone="plain" title={t('invented-title')}>
          {t('intro', { day: day(localDay(EXAMPLES.day)) })}
        </Notice>
      </div>
      <CountSection counts={EXAMPLES.counts} />
      <Findings view={view} />
      <Examples id="outcomes" what={t('col-end')} rows={EXAMPLES.outcomes.map((one) => ({ ...one, says: t(`outcome-${one.id}`) }))} />
      <Examples id="cautions" what={t('col-caution')} rows={EXAMPLES.cautions.map((one) => ({ ...one, says: one.text }))} />
      <Examples id="card" what={t('col-card')} rows={EXAMPLES.card} />
    </OfficePage>
  );
}

function Findings({ view }: { readonly view: ReturnType<typeof readRulebook> }): ReactNode {
  const { t } = examplesText();
  const rulebook = view.inForce?.book.rulebook ?? view.draft?.book.rulebook;
  const teller = { text: officeText(), names: namesOf(rulebook ? [rulebook] : []), currency: rulebook?.currency ?? 'GBP' };
  return (
    <section className={styles.section} aria-labelledby="findings">
      <SectionHead id="findings" title={t('findings-title')} />
      <DataTable
        caption={t('findings-caption')}
        columns={[
          { id: 'check', head: t('col-check') },
          { id: 'reason', head: t('col-reason') },
          { id: 'mask', head: t('col-mask') },
          { id: 'request', head: t('col-request') },
          { id: 'figures', head: t('col-figures') },
        ]}
        rows={EXAMPLES.findings.map(({ id, mask, circumstances, facts }) => ({
          id,
          cells: [
            FINDING_CODES[id].check,
            reasonWords[id],
            mask,
            circumstances.join('; '),
            valueInWords(readable(facts), '', teller) ?? '',
          ],
        }))}
      />
    </section>
  );
}

/** A cap counts in units of its own; where those are shares they read as shares. */
function readable(facts: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { cap, foundUnits, maxUnits, ...rest } = facts;
  if (typeof cap !== 'string' || !cap.endsWith('Ppm')) return facts;
  return { ...rest, cap: fieldWord(cap), foundPpm: foundUnits, maxPpm: maxUnits };
}

/** A section of examples: what happens, for which mask, and what is special about the request. */
function Examples(props: {
  readonly id: 'outcomes' | 'cautions' | 'card';
  readonly what: string;
  readonly rows: readonly (Example & { readonly says: string })[];
}): ReactNode {
  const { t } = examplesText();
  return (
    <section className={styles.section} aria-labelledby={props.id}>
      <SectionHead id={props.id} title={t(`${props.id}-title`)} />
      <DataTable
        caption={t(`${props.id}-caption`)}
        columns={[
          { id: 'what', head: props.what },
          { id: 'mask', head: t('col-mask') },
          { id: 'request', head: t('col-request') },
        ]}
        rows={props.rows.map(({ id, says, mask, circumstances }) => ({ id, cells: [says, mask, circumstances.join('; ')] }))}
      />
    </section>
  );
}
