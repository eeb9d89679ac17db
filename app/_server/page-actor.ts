// Who looks at a page, and where a page sends whoever may not see it.
import { cookies } from 'next/headers';
import { redirect } from 'next/navigation';
import type { Flow } from '#app/_flows/flow.ts';
import type { Actor, StaffRole } from './actor.ts';
import { services } from './services.ts';
import { actorOf } from './session.ts';
import { toFlow } from './to-flow.ts';

export interface StaffPage {
  readonly flow: Flow;
  readonly actor: Extract<Actor, { kind: 'staff' }>;
}

/** The flow frame of a page for these roles; anybody else goes to sign in first. */
export async function staffPage(roles: readonly StaffRole[], path: string): Promise<StaffPage> {
  const { flow, actor } = await openPage();
  if (actor.kind !== 'staff' || !roles.includes(actor.role)) redirect(`/sign-in?next=${encodeURIComponent(path)}`);
  return { flow, actor };
}

/** The flow frame of a page that anyone may see. */
export async function openPage(): Promise<{ readonly flow: Flow; readonly actor: Actor }> {
  const found = services();
  const actor = actorOf(found, (await cookies()).toString());
  return { flow: toFlow({ services: found, now: found.now(), newId: found.newId, actor }), actor };
}
