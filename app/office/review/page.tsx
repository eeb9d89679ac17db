import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import type { NamedCombination, Sales } from '#app/_flows/show-sales.ts';
import { showSales } from '#app/_flows/show-sales.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { chartColours } from '#app/_ui/drawing/earth.data.ts';
import { Bars } from '#app/_ui/figure/bars.tsx';
import { Figure } from '#app/_ui/figure/figure.tsx';
import { leader } from '#lib/review/combinations.ts';
import styles from '../office.module.css';
import { OfficePage } from '../office-page.tsx';
import type { OfficeText } from '../office-text.ts';
import { officeText } from '../office-text.ts';

export const metadata = { title: 'Sold combinations – Office' };

const SHOWN_BARS = 12;

export default async function ReviewPage(): Promise<ReactNode> {
  await connection();
  const { flow } = await staffPage(['formulator', 'manager'], '/office/review');
  const view = readRulebook(flow);
  const text = officeText();
  const sales = showSales(flow);
  return (
    <OfficePage view={view} place="review" title={text.t('review-title')}>
      <section className={styles.section}>
        {sales.combinations.length === 0 ? (
          <Notice tone="plain" title={text.t('review-none')}>
            {text.t('review-none-why')}
          </Notice>
        ) : (
          <SalesFigure sales={sales} text={text} />
        )}
      </section>
    </OfficePage>
  );
}

function SalesFigure({ sales, text }: { readonly sales: Sales; readonly text: OfficeText }): ReactNode {
  const { t, number, day } = text;
  return (
    <Figure
      id="sold"
      title={findingOf(sales, text)}
      description={t('review-description')}
      source={t('review-source', { from: day(sales.fromDay), to: day(sales.toDay), count: sales.jarsCount })}
      csv={{ href: '/api/office/sales', word: t('csv') }}
      words={{ view: t('view'), chart: t('chart'), table: t('table') }}
      table={{
        caption: t('review-caption'),
        columns: [
          { id: 'name', head: t('col-combination') },
          { id: 'jars', head: t('col-jars'), align: 'end' },
          { id: 'share', head: t('col-share'), align: 'end' },
          { id: 'revenue', head: t('col-revenue'), align: 'end' },
        ],
        rows: sales.combinations.map((one) => ({ id: one.variantKey, cells: cellsOf(one, sales.currency, text) })),
      }}
    >
      <Bars
        label={t('review-description')}
        formatTick={(value) => number(value, 0)}
        bars={sales.combinations.slice(0, SHOWN_BARS).map((one) => ({
          id: one.variantKey,
          name: one.name,
          value: one.jarsCount,
          text: number(one.jarsCount),
          fill: chartColours[1],
          hatch: 'oil',
        }))}
      />
    </Figure>
  );
}

function findingOf({ combinations, jarsCount }: Sales, { t }: OfficeText): string {
  const found = leader(combinations);
  if (found === 'too-few') return t('review-no-finding', { count: jarsCount });
  return found === 'none' ? t('review-even', { count: jarsCount }) : t('review-finding', { name: found.name });
}

const cellsOf = (one: NamedCombination, currency: string, { number, percent, money }: OfficeText): readonly string[] => [
  one.name,
  number(one.jarsCount),
  percent(one.sharePpm, 1),
  money(one.revenueMinor, currency),
];
