import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import type { TableRow } from '#app/_ui/controls/data-table.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import type { Book } from '#lib/rulebook/book.ts';
import { need } from '#lib/rulebook/book.ts';
import type { Material, PhWindow } from '#lib/rulebook/material.ts';
import { textFromMinor } from '../money-text.ts';
import styles from '../office.module.css';
import { NoRulebook, OfficePage } from '../office-page.tsx';
import type { OfficeText } from '../office-text.ts';
import { officeText } from '../office-text.ts';
import { plainWords } from '../plain-name.ts';

export const metadata = { title: 'Materials and stocks – Office' };

export default async function MaterialsPage(): Promise<ReactNode> {
  await connection();
  const { flow } = await staffPage(['formulator', 'manager'], '/office/materials');
  const view = readRulebook(flow);
  const text = officeText();
  const { t } = text;
  return (
    <OfficePage view={view} place="materials" title={t('materials-title')}>
      {view.draft ? (
        <>
          <section className={styles.section}>
            <DataTable
              caption={t('materials-caption')}
              showCaption
              columns={[
                { id: 'name', head: t('col-name') },
                { id: 'code', head: t('col-code') },
                { id: 'inci', head: t('col-inci') },
                { id: 'kind', head: t('col-kind') },
                { id: 'classes', head: t('col-classes') },
                { id: 'tags', head: t('col-tags') },
                { id: 'ph', head: t('col-ph') },
                { id: 'oil', head: t('col-oil'), align: 'end' },
              ]}
              rows={materialRows(view.draft.book, text)}
            />
          </section>
          <section className={styles.section}>
            <DataTable
              caption={t('stocks-caption')}
              showCaption
              columns={[
                { id: 'name', head: t('col-name') },
                { id: 'code', head: t('col-code') },
                { id: 'parts', head: t('col-parts') },
                { id: 'where', head: t('col-where') },
                { id: 'cost', head: t('col-cost', { currency: view.draft.book.rulebook.currency }), align: 'end' },
              ]}
              rows={stockRows(view.draft.book, text)}
            />
          </section>
        </>
      ) : (
        <NoRulebook />
      )}
    </OfficePage>
  );
}

const materialRows = (book: Book, text: OfficeText): readonly TableRow[] =>
  book.rulebook.materials.map((material) => materialRow(book, material, text));

function materialRow(book: Book, material: Material, text: OfficeText): TableRow {
  const { t, number } = text;
  const inci = material.substances.map(({ substanceId }) => need(book.substances, substanceId).labelNames.EU).join(', ');
  const { oilAbsorptionMgPer100g: oil } = material;
  return {
    id: material.id,
    cells: [
      material.name.en,
      material.code,
      <bdi key="inci" dir="ltr">
        {inci}
      </bdi>,
      plainWords(material.kind),
      material.classes.map(plainWords).join(', '),
      material.tags.length > 0 ? material.tags.map(plainWords).join(', ') : t('none'),
      windowText(material.phFresh, material.phShelf, text) ?? t('none'),
      oil === undefined ? t('none') : number(oil / 1000, 1),
    ],
  };
}

/** The narrower end of each of the two windows. */
function windowText(fresh: PhWindow | undefined, shelf: PhWindow | undefined, { t, number }: OfficeText): string | null {
  const windows = [fresh, shelf].filter((window) => window !== undefined);
  if (windows.length === 0) return null;
  const min = Math.max(...windows.map((window) => window.minPhX100));
  const max = Math.min(...windows.map((window) => window.maxPhX100));
  return t('ph-window', { from: number(min / 100), to: number(max / 100) });
}

const stockRows = (book: Book, { t, percent }: OfficeText): readonly TableRow[] =>
  book.rulebook.stocks.map((stock) => ({
    id: stock.id,
    cells: [
      stock.name.en,
      stock.code,
      stock.parts.map(({ materialId, sharePpm }) => `${need(book.materials, materialId).name.en} ${percent(sharePpm)}`).join(' · '),
      t(`goes-${stock.addedTo}`),
      textFromMinor(stock.costMinorPerKg),
    ],
  }));
