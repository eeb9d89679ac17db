// Who is signed in, and the way out: a shared laptop must not sign for somebody else.
import type { ReactNode } from 'react';
import { personName } from '#app/_flows/person-name.ts';
import { openPage } from '#app/_server/page-actor.ts';
import { officeText } from './office-text.ts';
import { SignOutButton } from './sign-out-button.tsx';

export async function SignedIn(): Promise<ReactNode> {
  const { flow, actor } = await openPage();
  const { t } = officeText();
  return (
    <>
      {actor.kind === 'staff' && <span className="type-small type-second">{t('signed-in', { name: personName(flow) })}</span>}
      <SignOutButton word={t('sign-out')} />
    </>
  );
}
