// Signing in, signing out, and the first account of an empty shop.
import type { FirstAccountOutput, SignInOutput } from '#lib/contracts/sign-in.ts';
import type { Reply } from './send.ts';
import { send } from './send.ts';

export const signIn = (input: {
  readonly code: string;
  readonly password: string;
  readonly stationId: string | null;
}): Promise<Reply<SignInOutput>> => send('/api/sign-in', input);

export const signOut = (): Promise<Reply<{ readonly ok: true }>> => send('/api/sign-out', {});

export interface FirstAccount {
  readonly code: string;
  readonly name: string;
  readonly password: string;
  readonly shop: { readonly shopCode: string; readonly name: string; readonly zone: string };
}

export const openFirstAccount = (input: FirstAccount): Promise<Reply<FirstAccountOutput>> => send('/api/first-account', input);
