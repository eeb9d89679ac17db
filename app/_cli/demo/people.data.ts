// The people of the demonstration shop: roles, not persons. Their passwords are public, since the start prints them.
import type { NewAccount } from '#app/_flows/open-accounts.ts';

export type DemoPerson = Pick<NewAccount, 'code' | 'name' | 'role'> & { readonly password: string };

export const DEMO_PEOPLE: readonly DemoPerson[] = [
  { code: 'formulator', name: 'Formulator', role: 'formulator', password: 'white-clay-one' },
  { code: 'formulator2', name: 'Second formulator', role: 'formulator', password: 'white-clay-two' },
  { code: 'mixer', name: 'Mixer', role: 'mixer', password: 'green-clay-one' },
  { code: 'checker', name: 'Checker', role: 'checker', password: 'green-clay-two' },
  { code: 'manager', name: 'Manager', role: 'manager', password: 'red-clay-one' },
];
