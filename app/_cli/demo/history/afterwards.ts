// What happens after a jar is released: it is labelled, fetched or not, and now and then somebody comes back with it.

import { closeOrder } from '#app/_flows/close-order.ts';
import { collectOrder } from '#app/_flows/collect-order.ts';
import type { ComplaintAsked, ComplaintStepAsked } from '#app/_flows/file-complaint.ts';
import { fileComplaint, recordComplaintStep } from '#app/_flows/file-complaint.ts';
import { printLabel } from '#app/_flows/print-label.ts';
import { showQueue } from '#app/_flows/show-queue.ts';
import { findOrder } from '#db/orders.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { daysBetween, localDayIn } from '#lib/units/time.ts';
import { ask } from './mixer.ts';
import type { Cast, Stage } from './stage.ts';
import { as, DEMO_ZONE, went } from './stage.ts';

export interface Fetched {
  readonly jarCode: string;
  readonly orderId: string;
  readonly day: LocalDay;
}

const NEVER_FETCHED_AFTER_DAYS = 12;

/** Labels every jar that is ready; most are fetched at once, and who never comes loses theirs. @returns the jars that went out */
export function handOver(stage: Stage): readonly Fetched[] {
  const { services, dice, day, clock } = stage;
  const ready = showQueue(as(stage, 'mixer')).rows.filter((row) => row.stage === 'ready');
  return ready.flatMap(({ orderId, placedAtMs }): readonly Fetched[] => {
    const jarCode = services.db.read((tx) => findOrder(tx, orderId)?.jar?.batchCode);
    if (jarCode === undefined) return [];
    const age = daysBetween(localDayIn(DEMO_ZONE, placedAtMs), day);
    if (age > NEVER_FETCHED_AFTER_DAYS) {
      went(closeOrder(as(stage, 'mixer'), { ...ask(stage, orderId), reason: 'Never fetched' }), 'a jar is given up');
      return [];
    }
    clock.pass(4);
    if (age === 0) went(printLabel(as(stage, 'mixer'), ask(stage, orderId)), 'a label is printed');
    if (age === 0 ? dice.chance(0.08) : dice.chance(0.6)) return [];
    clock.pass(6);
    went(collectOrder(as(stage, 'mixer'), { ...ask(stage, orderId), labelCode: jarCode }), 'a jar is fetched');
    return [{ jarCode, orderId, day }];
  });
}

export const variantOf = ({ services }: Stage, { orderId }: Fetched): string => {
  const found = services.db.read((tx) => findOrder(tx, orderId));
  return found ? variantKey(found.order.plan.variant) : '';
};

type Told = Pick<ComplaintAsked, 'kind' | 'seriousness' | 'said'>;
export type Answered = readonly (readonly [Cast, ComplaintStepAsked['kind'], string])[];

export function complain(stage: Stage, jarCode: string, told: Told, answered: Answered): void {
  const filed = fileComplaint(as(stage, 'manager'), { jarCode, contact: '', ...told });
  const { complaintId } = went(filed, 'a complaint is written down');
  for (const [who, kind, note] of answered) {
    stage.clock.pass(15);
    went(recordComplaintStep(as(stage, who), { complaintId, kind, note }), 'something is done about a complaint');
  }
}

/** What people say now and then; none of it is grave. */
export const SMALL_COMPLAINTS: readonly Told[] = [
  { kind: 'look', seriousness: 'not-serious', said: 'Paler than on the screen.' },
  { kind: 'packaging', seriousness: 'not-serious', said: 'The lid was not tight and a little ran out in the bag.' },
  { kind: 'smell', seriousness: 'not-serious', said: 'Smells of clay, stronger than the last one.' },
  { kind: 'separation', seriousness: 'not-serious', said: 'A little water stands on top after two weeks.' },
  { kind: 'reaction', seriousness: 'not-serious', said: 'Tingled for a minute, then nothing.' },
];

export const ANSWERED: Answered = [
  ['manager', 'answered', 'Offered a new jar'],
  ['manager', 'closed', ''],
];
