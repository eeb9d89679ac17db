import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import type { ComplaintRow } from '#app/_flows/show-complaints.ts';
import { showComplaints } from '#app/_flows/show-complaints.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import type { TableRow } from '#app/_ui/controls/data-table.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { localDayIn } from '#lib/units/time.ts';
import styles from '../office.module.css';
import { OfficePage } from '../office-page.tsx';
import { ComplaintForm } from './complaint-form.tsx';
import { complaintsText } from './complaints-text.ts';
import { StepForm } from './step-form.tsx';

export const metadata = { title: 'Complaints – Office' };

type Search = Promise<Readonly<Record<string, string | string[] | undefined>>>;

export default async function ComplaintsPage({ searchParams }: { readonly searchParams: Search }): Promise<ReactNode> {
  await connection();
  const { flow } = await staffPage(['formulator', 'manager'], '/office/complaints');
  const view = readRulebook(flow);
  const rows = showComplaints(flow);
  const { t } = complaintsText();
  const { about, filed } = await searchParams;
  const chosen = rows.find((row) => row.complaint.id === about);
  const panel = chosen
    ? {
        label: t('step-title', { jar: chosen.complaint.jarCode }),
        body: <StepForm key={chosen.complaint.id} complaintId={chosen.complaint.id} jarCode={chosen.complaint.jarCode} />,
      }
    : { label: t('file-title'), body: <ComplaintForm /> };
  return (
    <OfficePage view={view} place="complaints" title={t('title')} panel={panel}>
      <section className={styles.section}>
        <p className="type-second">{t('intro')}</p>
        {filed !== undefined && <Notice tone="ok" role="status" title={t('filed')} />}
        <DataTable
          caption={t('caption')}
          columns={[
            { id: 'jar', head: t('col-jar') },
            { id: 'day', head: t('col-day') },
            { id: 'what', head: t('col-what') },
            { id: 'said', head: t('col-said') },
            { id: 'done', head: t('col-done') },
          ]}
          rows={rows.map((row) => complaintRow(row, view.shop.zone))}
          empty={
            <Notice tone="plain" title={t('empty')}>
              {t('empty-note')}
            </Notice>
          }
        />
      </section>
    </OfficePage>
  );
}

function complaintRow(row: ComplaintRow, zone: string): TableRow {
  const { t, day } = complaintsText();
  const { complaint, said, contact, maskName } = row;
  const isSerious = complaint.seriousness === 'serious' || row.steps.some((step) => step.kind === 'reclassified-serious');
  return {
    id: complaint.id,
    look: row.steps.some((step) => step.kind === 'closed') ? 'plain' : isSerious ? 'care' : 'strong',
    cells: [
      <>
        <bdi dir="ltr" className="type-mono">
          {complaint.jarCode}
        </bdi>
        <span className={styles.detail}>{maskName}</span>
      </>,
      <span key="day" className={styles.together}>
        {day(complaint.localDay)}
      </span>,
      <>
        {t(`kind-${complaint.kind}`)}
        <span className={styles.detail}>{t(`serious-${isSerious ? 'serious' : 'not-serious'}`)}</span>
      </>,
      <>
        {said ?? t('erased')}
        {contact !== null && contact !== '' && <span className={styles.detail}>{contact}</span>}
      </>,
      <Done key="done" row={row} zone={zone} />,
    ],
  };
}

function Done({ row, zone }: { readonly row: ComplaintRow; readonly zone: string }): ReactNode {
  const { t, day } = complaintsText();
  const { complaint, steps } = row;
  return (
    <>
      {steps.length === 0 && <span className={styles.detail}>{t('nothing-done')}</span>}
      {steps.map(({ stepNo, kind, note, by, atMs }) => (
        <span key={stepNo} className={styles.detail}>
          {t(note === '' ? 'step' : 'step-note', { day: day(localDayIn(zone, atMs)), what: t(`step-${kind}`), note, by })}
        </span>
      ))}
      <a href={`/office/complaints?about=${complaint.id}`} aria-label={t('add-named', { jar: complaint.jarCode })}>
        {t('add')}
      </a>
    </>
  );
}
