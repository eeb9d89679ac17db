'use client';
import type { ReactNode } from 'react';
import { Fragment } from 'react';
import type { TableRow } from '#app/_ui/controls/data-table.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import type { Piece } from '#lib/edition/word-diff.ts';
import type { OfficeText } from '../office-text.ts';
import { officeText } from '../office-text.ts';
import styles from './publish.module.css';
import type { ToldChange, ToldLine } from './tell-changes.ts';

/** What the signer reads. Each entry that may widen use has one tick for all its lines. */
export function ChangeList(props: {
  readonly changes: readonly ToldChange[];
  readonly looked: readonly string[];
  readonly toggle: (change: ToldChange) => void;
}): ReactNode {
  const { changes, looked, toggle } = props;
  const text = officeText();
  const { t } = text;
  return (
    <DataTable
      caption={t('diff-caption')}
      showCaption
      columns={[
        { id: 'place', head: t('col-place') },
        { id: 'change', head: t('col-change') },
        { id: 'effect', head: t('col-effect') },
        { id: 'looked', head: t('col-looked') },
      ]}
      rows={changes.map((change) => changeRow(change, looked.includes(change.id), toggle, text))}
    />
  );
}

function changeRow(change: ToldChange, isLooked: boolean, toggle: (change: ToldChange) => void, text: OfficeText): TableRow {
  const { t } = text;
  const name = change.name === '' ? change.section : `${change.section}: ${change.name}`;
  return {
    id: change.id,
    look: change.effect === 'widens' ? 'care' : 'plain',
    cells: [
      <p key="place" className={styles.place}>
        <span className="type-strong">{change.name === '' ? change.section : change.name}</span>
        {change.name !== '' && <span className="type-small type-second">{change.section}</span>}
        {change.kind !== 'changed' && <span className="type-small type-second">{t(`diff-${change.kind}`)}</span>}
      </p>,
      <ul key="change" className={styles.told}>
        {change.lines.map((line) => (
          <li key={line.id}>
            <span className="type-second">{line.label}: </span>
            <Told line={line} kind={change.kind} text={text} />
          </li>
        ))}
      </ul>,
      t(`effect-${change.effect}`),
      change.lookKeys.length === 0 ? (
        t('none')
      ) : (
        <label key="looked" className={styles.look}>
          <input type="checkbox" checked={isLooked} onChange={() => toggle(change)} />
          <span>
            {t('diff-look')}
            <span className="for-readers">: {name}</span>
          </span>
        </label>
      ),
    ],
  };
}

function Told({ line, kind, text }: { readonly line: ToldLine; readonly kind: ToldChange['kind']; readonly text: OfficeText }): ReactNode {
  const { t } = text;
  if (line.pieces) return <Pieces pieces={line.pieces} />;
  if (kind === 'added' && line.was === null) return line.is;
  if (kind === 'removed' && line.is === null) return <del>{line.was}</del>;
  return (
    <>
      <span className="for-readers">{t('told-was')} </span>
      <del>{line.was ?? t('none')}</del>
      <span aria-hidden="true"> → </span>
      <span className="for-readers">, {t('told-is')} </span>
      <ins>{line.is ?? t('none')}</ins>
    </>
  );
}

/** A word that goes at the end of a text has no space behind it; the one that comes in its place is still another word. */
function Pieces({ pieces }: { readonly pieces: readonly Piece[] }): ReactNode {
  return pieces.map(({ kind, text }, index) => {
    if (kind === 'same') return text;
    const Mark = kind === 'gone' ? 'del' : 'ins';
    return (
      // biome-ignore lint/suspicious/noArrayIndexKey: a piece has no name but its place
      <Fragment key={index}>
        <Mark>{text.trimEnd()}</Mark>
        {index < pieces.length - 1 && ' '}
      </Fragment>
    );
  });
}
