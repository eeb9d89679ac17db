'use client';
import type { ReactNode } from 'react';
import { useState } from 'react';
import type { TableRow } from '#app/_ui/controls/data-table.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { SectionHead } from '#app/_ui/controls/section-head.tsx';
import type { DiffLine } from '#lib/edition/diff.ts';
import styles from '../office.module.css';
import type { OfficeText } from '../office-text.ts';
import { officeText } from '../office-text.ts';
import { placeInWords, valueInWords } from './change-words.ts';
import { SignForm } from './sign-form.tsx';

export function PublishForm(props: {
  readonly revisionNo: number;
  readonly nextNo: number;
  readonly diff: readonly DiffLine[];
  readonly isOwn: boolean;
  readonly isFirst: boolean;
}): ReactNode {
  const { revisionNo, nextNo, diff, isOwn, isFirst } = props;
  const text = officeText();
  const { t } = text;
  const [looked, setLooked] = useState<readonly string[]>([]);
  const toggle = (key: string): void => setLooked((seen) => (seen.includes(key) ? seen.filter((one) => one !== key) : [...seen, key]));

  return (
    <>
      {isFirst ? (
        <Notice tone="plain" title={t('publish-first')} />
      ) : (
        <section className={styles.section}>
          <DataTable
            caption={t('diff-caption')}
            showCaption
            columns={[
              { id: 'place', head: t('col-place') },
              { id: 'effect', head: t('col-effect') },
              { id: 'before', head: t('col-before') },
              { id: 'after', head: t('col-after') },
              { id: 'looked', head: t('col-looked') },
            ]}
            rows={diff.map((line) => diffRow(line, text, looked.includes(line.key), toggle))}
          />
        </section>
      )}
      <section className={styles.section} aria-labelledby="sign">
        <SectionHead id="sign" title={t('publish-sign')} />
        {isOwn ? <Notice tone="care" title={t('publish-own')} /> : <SignForm revisionNo={revisionNo} nextNo={nextNo} lookedAt={looked} />}
      </section>
    </>
  );
}

function diffRow(line: DiffLine, text: OfficeText, isLooked: boolean, toggle: (key: string) => void): TableRow {
  const { t } = text;
  return {
    id: line.key,
    look: line.effect === 'widens' ? 'care' : 'plain',
    cells: [
      placeInWords(line.key),
      t(`effect-${line.effect}`),
      line.before === null ? (
        t(line.kind === 'added' ? 'diff-added' : 'none')
      ) : (
        <del key="before" className={styles.was}>
          {valueInWords(line.field, line.before, text)}
        </del>
      ),
      line.after === null ? (
        t(line.kind === 'removed' ? 'diff-removed' : 'none')
      ) : (
        <ins key="after" className={styles.now}>
          {valueInWords(line.field, line.after, text)}
        </ins>
      ),
      line.effect === 'widens' ? (
        <label key="looked" className={styles.look}>
          <input type="checkbox" checked={isLooked} onChange={() => toggle(line.key)} />
          {t('diff-look')}
        </label>
      ) : (
        t('none')
      ),
    ],
  };
}
