import type { ReactNode } from 'react';
import { ButtonLink } from '#app/_ui/controls/button.tsx';
import { createText } from '#app/_ui/text/create-text.ts';
import { en } from '#app/_ui/text/front-door/en.ts';
import styles from './front-door.module.css';

export default function NotFound(): ReactNode {
  const { t } = createText('en', { en });
  return (
    <main data-face="office" className={styles.page}>
      <div className={styles.sheet}>
        <h1 className="type-title">{t('not-found')}</h1>
        <p>{t('not-found-text')}</p>
        <ButtonLink href="/" kind="primary">
          {t('front-door')}
        </ButtonLink>
      </div>
    </main>
  );
}
