import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import type { TableRow } from '#app/_ui/controls/data-table.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { Swatch } from '#app/_ui/drawing/swatch.tsx';
import { swatchOf } from '#lib/colour/lab.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need } from '#lib/rulebook/book.ts';
import type { LabX100 } from '#lib/rulebook/offer.ts';
import { textFromMinor } from '../money-text.ts';
import styles from '../office.module.css';
import { NoRulebook, OfficePage } from '../office-page.tsx';
import type { OfficeText } from '../office-text.ts';
import { officeText } from '../office-text.ts';
import { LevelForm } from './level-form.tsx';

export const metadata = { title: 'Shades and actives – Office' };

type Search = Promise<Readonly<Record<string, string | string[] | undefined>>>;

export default async function OfferPage({ searchParams }: { readonly searchParams: Search }): Promise<ReactNode> {
  await connection();
  const { flow, actor } = await staffPage(['formulator', 'manager'], '/office/offer');
  const view = readRulebook(flow);
  const text = officeText();
  const { active, level, saved } = await searchParams;
  const panel =
    view.draft && actor.role === 'formulator' ? levelPanel(view.draft.book, view.draft.head.revisionNo, { active, level }, text) : null;
  return (
    <OfficePage view={view} place="offer" title={text.t('offer-title')} saved={saved} {...(panel && { panel })}>
      {view.draft ? <Tables book={view.draft.book} text={text} mayChange={actor.role === 'formulator'} /> : <NoRulebook />}
    </OfficePage>
  );
}

function Tables({ book, text, mayChange }: { readonly book: Book; readonly text: OfficeText; readonly mayChange: boolean }): ReactNode {
  const { t } = text;
  const { currency } = book.rulebook;
  return (
    <>
      <section className={styles.section}>
        <DataTable
          caption={t('shades-caption')}
          showCaption
          columns={[
            { id: 'name', head: t('col-name') },
            { id: 'code', head: t('col-code') },
            { id: 'powders', head: t('col-powders') },
            { id: 'colour', head: t('col-colour') },
            { id: 'price', head: t('col-price', { currency }), align: 'end' },
          ]}
          rows={shadeRows(book, text)}
        />
      </section>
      <section className={styles.section}>
        <DataTable
          caption={t('actives-caption')}
          showCaption
          columns={[
            { id: 'name', head: t('col-name') },
            { id: 'level', head: t('col-level'), align: 'end' },
            { id: 'good', head: t('col-good-for') },
            { id: 'price', head: t('col-price', { currency }), align: 'end' },
            { id: 'sale', head: t('col-on-sale') },
            ...(mayChange ? [{ id: 'change', head: t('change') }] : []),
          ]}
          rows={levelRows(book, text, mayChange)}
        />
      </section>
    </>
  );
}

const hexOf = ({ lX100, aX100, bX100 }: LabX100): string => swatchOf({ l: lX100 / 100, a: aX100 / 100, b: bX100 / 100 }).hex;

const shadeRows = (book: Book, { t, percent }: OfficeText): readonly TableRow[] =>
  book.rulebook.shades.map((shade) => ({
    id: shade.id,
    cells: [
      shade.name.en,
      shade.code,
      shade.parts.map(({ materialId, sharePpm }) => `${need(book.materials, materialId).name.en} ${percent(sharePpm)}`).join(' · '),
      <Swatch
        key="colour"
        size="list"
        wet={[hexOf(shade.colour.wet)]}
        dry={[hexOf(shade.colour.dry)]}
        wetWord={t('wet')}
        dryWord={t('dry')}
      />,
      textFromMinor(shade.priceMinor),
    ],
  }));

/** The words the customer reads. A concern without words yet shows its id: the publish page lists the missing text. */
function concernName({ rulebook }: Book, concernId: string): string {
  const concern = rulebook.concerns.find(({ id }) => id === concernId);
  return rulebook.texts.en?.[concern?.textId ?? ''] ?? concernId;
}

const levelRows = (book: Book, { t, percent, number }: OfficeText, mayChange: boolean): readonly TableRow[] =>
  book.rulebook.actives.flatMap((active) =>
    active.levels.map((level): TableRow => {
      const good = level.benefits
        .map(({ concernId, benefitMilli }) => `${concernName(book, concernId)} ${number(benefitMilli / 1000)}`)
        .join(' · ');
      const shown = percent(level.levelPpm);
      return {
        id: `${active.id}@${level.levelPpm}`,
        look: level.permitted ? 'plain' : 'care',
        cells: [
          active.name.en,
          shown,
          active.role === 'adjuster' ? t('adjuster') : good,
          textFromMinor(level.priceMinor),
          t(level.permitted ? 'on-sale' : 'not-on-sale'),
          mayChange && (
            <a
              key="change"
              href={`/office/offer?active=${active.id}&level=${level.levelPpm}#panel`}
              aria-label={t('change-level', { name: active.name.en ?? active.code, level: shown })}
            >
              {t('change')}
            </a>
          ),
        ],
      };
    }),
  );

interface Chosen {
  readonly active: string | string[] | undefined;
  readonly level: string | string[] | undefined;
}

function levelPanel(
  book: Book,
  revisionNo: number,
  chosen: Chosen,
  { t, percent }: OfficeText,
): { readonly label: string; readonly body: ReactNode } | null {
  const active = book.rulebook.actives.find((one) => one.id === chosen.active);
  const level = active?.levels.find((one) => String(one.levelPpm) === chosen.level);
  if (!active || !level) return null;
  const label = t('change-level', { name: active.name.en ?? active.code, level: percent(level.levelPpm) });
  return {
    label,
    body: (
      <LevelForm
        key={`${active.id}@${level.levelPpm}`}
        title={label}
        revisionNo={revisionNo}
        activeId={active.id}
        level={level}
        currency={book.rulebook.currency}
      />
    ),
  };
}
