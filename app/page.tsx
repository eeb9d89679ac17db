import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { isFounded } from '#app/_flows/found-shop.ts';
import { shopOf } from '#app/_flows/read-shop.ts';
import { openPage } from '#app/_server/page-actor.ts';
import { ButtonLink } from '#app/_ui/controls/button.tsx';
import { BrandMark } from '#app/_ui/drawing/brand-mark.tsx';
import { createText } from '#app/_ui/text/create-text.ts';
import { en } from '#app/_ui/text/front-door/en.ts';
import styles from './front-door.module.css';

/** The front door: which of the three faces do you want? */
export default async function FrontDoor(): Promise<ReactNode> {
  await connection();
  const { flow } = await openPage();
  const { t } = createText('en', { en });
  const shop = isFounded(flow) ? shopOf(flow) : null;
  return (
    <main data-face="office" className={styles.page}>
      <div className={styles.sheet}>
        <p className={styles.brand}>
          <BrandMark heightEm={2.4} />
          <span>{shop?.name ?? 'Jarwright'}</span>
        </p>
        <h1 className="type-title">{t('title')}</h1>
        {shop && shop.notice !== '' && <p className="type-second">{shop.notice}</p>}
        <nav aria-label={t('title')} className={styles.doors}>
          <ButtonLink href="/kiosk" kind="primary" iconEnd="arrow-end" wide spread>
            {t('kiosk')}
          </ButtonLink>
          <ButtonLink href="/bench" icon="scale" iconEnd="arrow-end" wide spread>
            {t('bench')}
          </ButtonLink>
          <ButtonLink href="/office" icon="book" iconEnd="arrow-end" wide spread>
            {t('office')}
          </ButtonLink>
        </nav>
        <p className="type-small type-second">{t('aid')}</p>
      </div>
    </main>
  );
}
