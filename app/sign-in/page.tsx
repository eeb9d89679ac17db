import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { isFounded } from '#app/_flows/found-shop.ts';
import { listPlaces } from '#app/_flows/list-places.ts';
import { hasAccounts } from '#app/_flows/open-accounts.ts';
import { personName } from '#app/_flows/person-name.ts';
import { shopOf } from '#app/_flows/read-shop.ts';
import { openPage } from '#app/_server/page-actor.ts';
import { BrandMark } from '#app/_ui/drawing/brand-mark.tsx';
import { createText } from '#app/_ui/text/create-text.ts';
import { en } from '#app/_ui/text/sign-in/en.ts';
import { FirstAccountForm } from './first-account-form.tsx';
import styles from './sign-in.module.css';
import { SignInForm } from './sign-in-form.tsx';
import { SignedInAs } from './signed-in-as.tsx';

export const metadata = { title: 'Sign in – Jarwright' };

export default async function SignInPage({
  searchParams,
}: {
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}): Promise<ReactNode> {
  await connection();
  const { flow, actor } = await openPage();
  const { t } = createText('en', { en });
  const isNew = !isFounded(flow) || !hasAccounts(flow);
  const { next } = await searchParams;
  return (
    <main data-face="office" className={styles.page}>
      <div className={styles.sheet}>
        <p className={styles.brand}>
          <BrandMark heightEm={2} />
          <span>{isNew ? 'Jarwright' : shopOf(flow).name}</span>
        </p>
        <h1 className="type-title">{t(isNew ? 'title-first' : 'title')}</h1>
        {isNew ? (
          <>
            <p className="type-body type-second">{t('first-why')}</p>
            <FirstAccountForm zones={['UTC', ...Intl.supportedValuesOf('timeZone')]} />
          </>
        ) : (
          <>
            {actor.kind === 'staff' && <SignedInAs name={personName(flow)} role={actor.role} next={localPath(next)} />}
            <SignInForm next={localPath(next)} places={listPlaces(flow)} />
          </>
        )}
      </div>
    </main>
  );
}

/** Only a path of this server; anything else leads to the front door. */
const localPath = (next: string | string[] | undefined): string | null =>
  typeof next === 'string' && /^\/(?![/\\])/.test(next) ? next : null;
