'use client';
import type { ReactNode } from 'react';
import { useState } from 'react';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { SectionHead } from '#app/_ui/controls/section-head.tsx';
import styles from '../office.module.css';
import { officeText } from '../office-text.ts';
import { ChangeList } from './change-list.tsx';
import { SignForm } from './sign-form.tsx';
import type { ToldChange } from './tell-changes.ts';

export function PublishForm(props: {
  readonly revisionNo: number;
  readonly nextNo: number;
  readonly zone: string;
  readonly changes: readonly ToldChange[];
  readonly isOwn: boolean;
  readonly isFirst: boolean;
}): ReactNode {
  const { revisionNo, nextNo, zone, changes, isOwn, isFirst } = props;
  const { t } = officeText();
  const [looked, setLooked] = useState<readonly string[]>([]);
  const toggle = ({ id }: ToldChange): void => setLooked((seen) => (seen.includes(id) ? seen.filter((one) => one !== id) : [...seen, id]));
  return (
    <>
      {isFirst ? (
        <Notice tone="plain" title={t('publish-first')} />
      ) : (
        <section className={styles.section}>
          <ChangeList changes={changes} looked={looked} toggle={toggle} />
        </section>
      )}
      <section className={styles.section} aria-labelledby="sign">
        <SectionHead id="sign" title={t('publish-sign')} />
        {isOwn ? (
          <Notice tone="care" title={t('publish-own')} />
        ) : (
          <SignForm revisionNo={revisionNo} nextNo={nextNo} zone={zone} changes={changes} looked={looked} />
        )}
      </section>
    </>
  );
}
