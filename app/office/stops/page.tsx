import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import type { StopRow } from '#app/_flows/show-stops.ts';
import { showStops } from '#app/_flows/show-stops.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import type { TableRow } from '#app/_ui/controls/data-table.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { localDayIn } from '#lib/units/time.ts';
import styles from '../office.module.css';
import { OfficePage } from '../office-page.tsx';
import { LiftForm } from './lift-form.tsx';
import { StopForm } from './stop-form.tsx';
import { stopsText } from './stops-text.ts';

export const metadata = { title: 'Stops – Office' };

type Search = Promise<Readonly<Record<string, string | string[] | undefined>>>;

export default async function StopsPage({ searchParams }: { readonly searchParams: Search }): Promise<ReactNode> {
  await connection();
  const { flow } = await staffPage(['formulator', 'manager'], '/office/stops');
  const view = readRulebook(flow);
  const stops = showStops(flow);
  const { t } = stopsText();
  const { lift, waiting } = await searchParams;
  const lifting = stops.rows.find((row) => row.stop.id === lift && row.lifted === null);
  const panel = lifting
    ? {
        label: t('lift-title'),
        body: <LiftForm key={lifting.stop.id} stopId={lifting.stop.id} what={lifting.subject} why={lifting.stop.reason} />,
      }
    : { label: t('place-title'), body: <StopForm subjects={stops.subjects} /> };
  return (
    <OfficePage view={view} place="stops" title={t('title')} panel={panel}>
      <section className={styles.section}>
        <p className="type-second">{t('intro')}</p>
        {typeof waiting === 'string' && <Placed codes={waiting.split(',').filter((code) => code !== '')} />}
        <DataTable
          caption={t('caption')}
          columns={[
            { id: 'what', head: t('col-what') },
            { id: 'why', head: t('col-why') },
            { id: 'by', head: t('col-by') },
            { id: 'since', head: t('col-since') },
            { id: 'state', head: t('col-state') },
          ]}
          rows={stops.rows.map((row) => stopRow(row, view.shop.zone))}
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

function Placed({ codes }: { readonly codes: readonly string[] }): ReactNode {
  const { t } = stopsText();
  return <Notice tone="ok" title={t('placed', { count: codes.length, codes: codes.join(', ') })} />;
}

function stopRow({ stop, lifted, subject, by, liftedBy }: StopRow, zone: string): TableRow {
  const { t, day } = stopsText();
  return {
    id: stop.id,
    look: lifted ? 'plain' : 'strong',
    cells: [
      <>
        <span className="type-small type-second">{t(`kind-${stop.subjectKind}`)}</span>
        <br />
        {subject}
      </>,
      stop.reason,
      by,
      day(localDayIn(zone, stop.atMs)),
      lifted ? (
        t('lifted', { day: day(localDayIn(zone, lifted.atMs)), people: liftedBy.join(', '), reason: lifted.reason })
      ) : (
        <>
          {t('in-force')} ·{' '}
          <a href={`/office/stops?lift=${stop.id}`} aria-label={t('lift-named', { what: subject })}>
            {t('lift')}
          </a>
        </>
      ),
    ],
  };
}
