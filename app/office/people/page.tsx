import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { listStaff } from '#app/_flows/open-accounts.ts';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { localDayIn } from '#lib/units/time.ts';
import styles from '../office.module.css';
import { OfficePage } from '../office-page.tsx';
import { officeText } from '../office-text.ts';
import { PersonForm } from './person-form.tsx';

export const metadata = { title: 'People – Office' };

export default async function PeoplePage(): Promise<ReactNode> {
  await connection();
  const { flow, actor } = await staffPage(['formulator', 'manager'], '/office/people');
  const view = readRulebook(flow);
  const { t, day } = officeText();
  const add = { label: t('people-add'), body: <PersonForm /> };
  return (
    <OfficePage view={view} place="people" title={t('people-title')} {...(actor.role === 'manager' && { panel: add })}>
      <section className={styles.section}>
        <DataTable
          caption={t('people-caption')}
          columns={[
            { id: 'name', head: t('col-name') },
            { id: 'code', head: t('col-sign-in-name') },
            { id: 'role', head: t('col-role') },
            { id: 'since', head: t('col-since') },
          ]}
          rows={listStaff(flow).map((account) => ({
            id: account.id,
            cells: [account.name, account.code, t(`role-${account.role}`), day(localDayIn(view.shop.zone, account.createdAtMs))],
          }))}
        />
        {actor.role !== 'manager' && <p className="type-second">{t('people-by-manager')}</p>}
      </section>
    </OfficePage>
  );
}
