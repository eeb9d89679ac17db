// How many masks each check refuses, out of all that the rules could name.
import type { ReactNode } from 'react';
import type { TableRow } from '#app/_ui/controls/data-table.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { SectionHead } from '#app/_ui/controls/section-head.tsx';
import styles from '../office.module.css';
import type { RefusalCount } from './example-table.ts';
import { examplesText } from './examples-text.ts';

/** Checks that ask nobody but the rules. */
const COUNTED = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const;

const sumOf = (counts: readonly RefusalCount[], of: (count: RefusalCount) => number | undefined): number =>
  counts.reduce((sum, one) => sum + (of(one) ?? 0), 0);

export function CountSection({ counts }: { readonly counts: readonly RefusalCount[] }): ReactNode {
  const { t, number } = examplesText();
  const variantsCount = sumOf(counts, (one) => one.variantsCount);
  const note = {
    variants: number(variantsCount),
    permitted: number(sumOf(counts, (one) => one.permittedCount)),
    most: Math.max(...counts.map((one) => one.activesCount)),
  };
  return (
    <section className={styles.section} aria-labelledby="counts">
      <SectionHead id="counts" title={t('counts-title')} />
      <p className="type-second">{t('counts-note', note)}</p>
      <div className={styles.columns}>
        <DataTable
          caption={t('counts-caption')}
          columns={[
            { id: 'check', head: t('col-check') },
            { id: 'refuses', head: t('col-refuses'), align: 'end' },
            { id: 'alone', head: t('col-alone'), align: 'end' },
            { id: 'share', head: t('col-share'), align: 'end' },
          ]}
          rows={COUNTED.map((check) => checkRow(check, counts, variantsCount))}
        />
        <DataTable
          caption={t('sizes-caption')}
          columns={[
            { id: 'actives', head: t('col-actives') },
            { id: 'named', head: t('col-named'), align: 'end' },
            { id: 'permitted', head: t('col-permitted'), align: 'end' },
          ]}
          rows={counts.map((one) => ({
            id: String(one.activesCount),
            cells: [one.activesCount, number(one.variantsCount), number(one.permittedCount)],
          }))}
        />
      </div>
    </section>
  );
}

function checkRow(check: (typeof COUNTED)[number], counts: readonly RefusalCount[], variantsCount: number): TableRow {
  const { t, number } = examplesText();
  const refused = sumOf(counts, (one) => one.byCheck[check]);
  const title = `${check} · ${t(`check-${check}`)}`;
  if (refused === 0) return { id: String(check), cells: [title, t('never'), '', ''] };
  const alone = sumOf(counts, (one) => one.aloneByCheck[check]);
  return { id: String(check), cells: [title, number(refused), number(alone), `${number((100 * refused) / variantsCount, 1)} %`] };
}
