// Somebody is signed in already and stands here all the same: most often because a page is not for their role. Say so, and where they may go.
import type { ReactNode } from 'react';
import { ButtonLink } from '#app/_ui/controls/button.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { createText } from '#app/_ui/text/create-text.ts';
import { en } from '#app/_ui/text/sign-in/en.ts';
import { HOME } from './home.ts';
import styles from './sign-in.module.css';

export function SignedInAs({
  name,
  role,
  next,
}: {
  readonly name: string;
  readonly role: keyof typeof HOME;
  readonly next: string | null;
}): ReactNode {
  const { t } = createText('en', { en });
  const home = HOME[role];
  const asked = next === null ? null : next.startsWith('/bench') ? 'bench' : 'office';
  return (
    <div className={styles.already}>
      <Notice tone="care" title={t('already', { name, role: t(`role-${role}`) })}>
        {asked !== null && t(`not-for-role-${asked}`)} {t('already-what-now')}
      </Notice>
      <ButtonLink href={home} kind="primary">
        {t(home === '/bench' ? 'to-bench' : 'to-office')}
      </ButtonLink>
    </div>
  );
}
