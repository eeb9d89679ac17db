// Who a request speaks for, as far as the server knows: a counter's kiosk, a signed-in member of staff, or nobody.

import { assertNever } from '#lib/base/invariant.ts';

export const STAFF_ROLES = ['mixer', 'checker', 'formulator', 'manager'] as const;
export type StaffRole = (typeof STAFF_ROLES)[number];

export type Actor =
  | { readonly kind: 'kiosk'; readonly stationId: string }
  | { readonly kind: 'staff'; readonly accountId: string; readonly role: StaffRole; readonly stationId: string | null }
  | { readonly kind: 'nobody' };

/** Who may call a route. `anyone` includes people who are not signed in. */
export type RouteRole = 'anyone' | 'kiosk' | StaffRole;

export type Admission = 'admitted' | 'signed-out' | 'wrong-role';

/** Whether a route's roles admit an actor; someone unknown is told to sign in, someone known that it is not theirs. */
export function admit(roles: readonly RouteRole[], actor: Actor): Admission {
  if (roles.includes('anyone')) return 'admitted';
  switch (actor.kind) {
    case 'nobody':
      return 'signed-out';
    case 'kiosk':
      return roles.includes('kiosk') ? 'admitted' : 'wrong-role';
    case 'staff':
      return roles.includes(actor.role) ? 'admitted' : 'wrong-role';
    default:
      return assertNever(actor);
  }
}
