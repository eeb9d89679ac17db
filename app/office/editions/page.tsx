import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { signedEditions } from '#app/_flows/list-editions.ts';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import { classNames } from '#app/_ui/class-names.ts';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { localDayIn } from '#lib/units/time.ts';
import styles from '../office.module.css';
import { OfficePage } from '../office-page.tsx';
import { officeText } from '../office-text.ts';

export const metadata = { title: 'Editions – Office' };

export default async function EditionsPage(): Promise<ReactNode> {
  await connection();
  const { flow } = await staffPage(['formulator', 'manager'], '/office/editions');
  const view = readRulebook(flow);
  const { t, day, time, number } = officeText();
  const nameOf = (accountId: string): string => view.people.get(accountId) ?? t('none');
  return (
    <OfficePage view={view} place="editions" title={t('editions-title')}>
      <section className={styles.section}>
        <DataTable
          caption={t('editions-caption')}
          density="roomy"
          empty={t('editions-none')}
          columns={[
            { id: 'no', head: t('col-no') },
            { id: 'from', head: t('col-from') },
            { id: 'variants', head: t('col-variants'), align: 'end' },
            { id: 'written', head: t('col-written') },
            { id: 'approved', head: t('col-approved') },
            { id: 'signature', head: t('col-signature') },
            { id: 'hash', head: t('col-hash') },
            { id: 'download', head: t('col-download') },
          ]}
          rows={signedEditions(flow).map(({ head, signatures, replacedByNo }) => ({
            id: head.hash,
            look: head.hash === view.inForce?.head.hash ? 'current' : 'plain',
            cells: [
              head.editionNo,
              replacedByNo === null
                ? `${day(localDayIn(view.shop.zone, head.effectiveAtMs))}, ${time(head.effectiveAtMs, view.shop.zone)}`
                : t('edition-replaced', { no: replacedByNo }),
              number(Number(head.variantsCount)),
              nameOf(head.authorAccountId),
              nameOf(head.approverAccountId),
              signatures.map((signature) => signature.meaning).join(' '),
              <bdi key="hash" dir="ltr" className={classNames('type-mono', styles.hash)}>
                {head.hash}
              </bdi>,
              <a key="download" href={`/api/office/export?hash=${head.hash}`} download="">
                {t('edition-download', { no: head.editionNo })}
              </a>,
            ],
          }))}
        />
      </section>
    </OfficePage>
  );
}
