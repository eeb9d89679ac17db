// Calls of the kiosk. Plain requests without a cache: nothing of a visit may outlive it.
import type { MasksInput, MasksOutput, OrderInput, OrderOutput, WhyNotInput, WhyNotOutput } from '#lib/contracts/kiosk.ts';
import type { Reply } from './send.ts';
import { send } from './send.ts';

export const findMasks = (input: MasksInput): Promise<Reply<MasksOutput>> => send('/api/kiosk/masks', input);
export const whyNot = (input: WhyNotInput): Promise<Reply<WhyNotOutput>> => send('/api/kiosk/why-not', input);
export const placeOrder = (input: OrderInput): Promise<Reply<OrderOutput>> => send('/api/kiosk/order', input);

/** Whether the shop's server answers again. */
export async function isServerBack(): Promise<boolean> {
  try {
    return (await fetch('/api/health', { cache: 'no-store' })).ok;
  } catch {
    return false;
  }
}
