'use client';
import type { ReactNode } from 'react';
import { signOut } from '#app/_client/sign-in.ts';
import { Button } from '#app/_ui/controls/button.tsx';

export function SignOutButton({ word }: { readonly word: string }): ReactNode {
  return (
    <Button kind="quiet" onClick={() => void signOut().then(() => window.location.assign('/sign-in'))}>
      {word}
    </Button>
  );
}
