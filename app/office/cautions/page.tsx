import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import type { TableRow } from '#app/_ui/controls/data-table.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import type { Book } from '#lib/rulebook/book.ts';
import type { Caution } from '#lib/rulebook/questionnaire.ts';
import styles from '../office.module.css';
import { NoRulebook, OfficePage } from '../office-page.tsx';
import type { OfficeText } from '../office-text.ts';
import { officeText } from '../office-text.ts';
import { plainName, plainWords } from '../plain-name.ts';
import { CautionForm } from './caution-form.tsx';

export const metadata = { title: 'Cautions – Office' };

type Search = Promise<Readonly<Record<string, string | string[] | undefined>>>;

export default async function CautionsPage({ searchParams }: { readonly searchParams: Search }): Promise<ReactNode> {
  await connection();
  const { flow, actor } = await staffPage(['formulator', 'manager'], '/office/cautions');
  const view = readRulebook(flow);
  const text = officeText();
  const { t } = text;
  const { draft } = view;
  const { caution: chosen, saved } = await searchParams;
  const caution = actor.role === 'formulator' ? draft?.book.rulebook.cautions.find((one) => one.id === chosen) : undefined;
  const words = draft?.book.rulebook.texts.en ?? {};
  const panel = draft &&
    caution && {
      label: t('caution-edit', { name: plainName(caution.id) }),
      body: (
        <CautionForm
          key={caution.id}
          title={t('caution-edit', { name: plainName(caution.id) })}
          revisionNo={draft.head.revisionNo}
          cautionId={caution.id}
          text={words[caution.textId] ?? ''}
          labelText={caution.labelTextId === undefined ? null : (words[caution.labelTextId] ?? '')}
        />
      ),
    };
  return (
    <OfficePage view={view} place="cautions" title={t('cautions-title')} saved={saved} {...(panel && { panel })}>
      {draft ? (
        <section className={styles.section}>
          <DataTable
            caption={t('cautions-caption')}
            columns={[
              { id: 'code', head: t('col-name') },
              { id: 'text', head: t('col-text') },
              { id: 'label', head: t('col-label') },
              { id: 'places', head: t('col-places') },
              { id: 'must', head: t('col-must') },
            ]}
            rows={cautionRows(draft.book, text, actor.role === 'formulator')}
          />
        </section>
      ) : (
        <NoRulebook />
      )}
    </OfficePage>
  );
}

const cautionRows = (book: Book, text: OfficeText, mayChange: boolean): readonly TableRow[] =>
  book.rulebook.cautions.map((caution) => {
    const { t } = text;
    const words = book.rulebook.texts.en ?? {};
    return {
      id: caution.id,
      cells: [
        mayChange ? (
          <a key="id" href={`/office/cautions?caution=${caution.id}#panel`}>
            {plainName(caution.id)}
          </a>
        ) : (
          plainName(caution.id)
        ),
        words[caution.textId] ?? t('none'),
        caution.labelTextId === undefined ? t('none') : (words[caution.labelTextId] ?? t('none')),
        caution.places.map(plainWords).join(', '),
        mustTickWords(book, caution, text),
      ],
    };
  });

/** A caution can owe its tick to the mask, or only to what a customer answered. */
function mustTickWords({ rulebook }: Book, caution: Caution, { t }: OfficeText): string {
  if (caution.audience === 'staff') return t('must-staff');
  if (caution.mustTick) return t('must-always');
  const wordsOf = (one: { readonly id: string; readonly textId: string }): string => rulebook.texts.en?.[one.textId] ?? plainName(one.id);
  const asked = rulebook.questions.flatMap((question) => {
    const answers = question.options
      .filter(({ effects }) => effects.some((effect) => effect.kind === 'caution' && effect.cautionId === caution.id && effect.mustTick))
      .map(wordsOf);
    return answers.length > 0 ? [t('must-after', { question: wordsOf(question), answers: answers.join(', ') })] : [];
  });
  return asked.length > 0 ? asked.join(' ') : t('must-never');
}
