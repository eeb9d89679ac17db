import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import { ButtonLink } from '#app/_ui/controls/button.tsx';
import type { TableRow } from '#app/_ui/controls/data-table.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import type { SelectOption } from '#app/_ui/controls/field.tsx';
import type { JudgementKind } from '#app/_ui/marks/judgement-mark.tsx';
import { JudgementMark } from '#app/_ui/marks/judgement-mark.tsx';
import { compareBy } from '#lib/base/compare.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need, pairKey } from '#lib/rulebook/book.ts';
import type { Grounds, PairJudgement } from '#lib/rulebook/judgement.ts';
import styles from '../office.module.css';
import { NoRulebook, OfficePage } from '../office-page.tsx';
import type { OfficeText } from '../office-text.ts';
import { officeText } from '../office-text.ts';
import { pairsNotJudged } from '../pairs-not-judged.ts';
import { plainName } from '../plain-name.ts';
import { limitWords } from './limit-words.ts';
import { PairForm } from './pair-form.tsx';

export const metadata = { title: 'Judgements – Office' };

type Search = Readonly<Record<string, string | string[] | undefined>>;

export default async function PairsPage({ searchParams }: { readonly searchParams: Promise<Search> }): Promise<ReactNode> {
  await connection();
  const { flow, actor } = await staffPage(['formulator', 'manager'], '/office/pairs');
  const view = readRulebook(flow);
  const text = officeText();
  const { draft } = view;
  const search = await searchParams;
  const panel = draft && actor.role === 'formulator' ? pairPanel(draft.book, draft.head.revisionNo, search, text) : null;
  return (
    <OfficePage
      view={view}
      place="pairs"
      title={text.t('pairs-title')}
      saved={search.saved}
      {...(draft &&
        actor.role === 'formulator' && { actions: <ButtonLink href="/office/pairs?judge=new#panel">{text.t('judge-title')}</ButtonLink> })}
      {...(panel && { panel })}
    >
      {draft ? <Tables book={draft.book} text={text} /> : <NoRulebook />}
    </OfficePage>
  );
}

function Tables({ book, text }: { readonly book: Book; readonly text: OfficeText }): ReactNode {
  const { t } = text;
  const columns = ['first', 'second', 'verdict', 'reason', 'source', 'by'].map((id) => ({ id, head: t(`col-${id as 'first'}`) }));
  return (
    <>
      <section className={styles.section} id="not-judged">
        <DataTable
          caption={t('not-judged-caption')}
          showCaption
          columns={columns.slice(0, 3)}
          rows={openRows(book, text)}
          empty={t('not-judged-none')}
        />
      </section>
      <section className={styles.section}>
        <DataTable
          caption={t('pairs-caption')}
          showCaption
          columns={columns}
          rows={book.rulebook.pairJudgements.map((judged) =>
            judgedRow(
              text,
              judged,
              [nameOf(book, judged.firstMaterialId), nameOf(book, judged.secondMaterialId)],
              `/office/pairs?first=${judged.firstMaterialId}&second=${judged.secondMaterialId}#panel`,
            ),
          )}
        />
      </section>
      <section className={styles.section}>
        <DataTable
          caption={t('classes-caption')}
          showCaption
          columns={columns}
          rows={book.rulebook.classJudgements.map((judged) =>
            judgedRow(text, judged, [plainName(judged.firstClass), plainName(judged.secondClass)], null),
          )}
        />
      </section>
    </>
  );
}

const nameOf = (book: Book, materialId: string): string => need(book.materials, materialId).name.en ?? materialId;

/** Mark and word together: neither alone. */
const verdictCell = ({ t }: OfficeText, verdict: JudgementKind): ReactNode => (
  <span className={styles.mark}>
    <JudgementMark kind={verdict} />
    {t(`verdict-${verdict}`)}
  </span>
);

const openRows = (book: Book, text: OfficeText): readonly TableRow[] =>
  pairsNotJudged(book).map(({ firstMaterialId, secondMaterialId }) => ({
    id: pairKey(firstMaterialId, secondMaterialId),
    look: 'care',
    cells: [
      <a key="first" href={`/office/pairs?first=${firstMaterialId}&second=${secondMaterialId}#panel`}>
        {nameOf(book, firstMaterialId)}
      </a>,
      nameOf(book, secondMaterialId),
      verdictCell(text, 'not-judged'),
    ],
  }));

type Judged = Grounds & Pick<PairJudgement, 'id' | 'verdict' | 'limit' | 'cautionId'>;

/** What the verdict comes to: the bounds of a limit, the caution that is owed. */
function detailOf({ limit, cautionId }: Judged, text: OfficeText): string {
  return [...(limit ? limitWords(limit, text) : []), ...(cautionId === undefined ? [] : [plainName(cautionId)])].join(', ');
}

function judgedRow(text: OfficeText, judged: Judged, names: readonly [string, string], href: string | null): TableRow {
  const [first, second] = names;
  return {
    id: judged.id,
    cells: [
      href ? (
        <a key="first" href={href}>
          {first}
        </a>
      ) : (
        first
      ),
      second,
      <>
        {verdictCell(text, judged.verdict)}
        <span className={`${styles.detail} type-small type-second`}>{detailOf(judged, text)}</span>
      </>,
      judged.reason,
      judged.source,
      <>
        {judged.by}
        <span className={`${styles.detail} ${styles.together} type-small type-second`}>{text.day(judged.on)}</span>
      </>,
    ],
  };
}

const byLabel = compareBy<SelectOption>((option) => option.label);

function pairPanel(
  book: Book,
  revisionNo: number,
  search: Search,
  { t }: OfficeText,
): { readonly label: string; readonly body: ReactNode } | null {
  const first = typeof search.first === 'string' ? search.first : '';
  const second = typeof search.second === 'string' ? search.second : '';
  if (search.judge === undefined && (!book.materials.has(first) || !book.materials.has(second))) return null;
  const judged = book.pairJudgements.get(pairKey(first, second)) ?? null;
  const materials = [...book.materials.values()]
    .map((material) => ({ value: material.id, label: material.name.en ?? material.code }))
    .sort(byLabel);
  const cautions = book.rulebook.cautions.map((caution) => ({ value: caution.id, label: plainName(caution.id) })).sort(byLabel);
  return {
    label: t('judge-title'),
    body: (
      <PairForm
        key={`${first}|${second}`}
        revisionNo={revisionNo}
        materials={materials}
        cautions={cautions}
        first={first}
        second={second}
        judged={judged}
      />
    ),
  };
}
