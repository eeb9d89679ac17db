// Half a year of one shop, day by day, through the same flows that people use: nothing here writes a row.

import { editionInForce } from '#app/_flows/edition-in-force.ts';
import { lapseOrders } from '#app/_flows/lapse-orders.ts';
import type { Services } from '#app/_server/services.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import type { InstantMs, LocalDay } from '#lib/units/time.ts';
import { addDays, daysBetween, localDayIn } from '#lib/units/time.ts';
import { permittedVariants } from '#lib/variants/permitted.ts';
import type { Fetched } from './afterwards.ts';
import { ANSWERED, complain, handOver, SMALL_COMPLAINTS, variantOf } from './afterwards.ts';
import { orderNamed, visit } from './customers.ts';
import { oddLots, restock } from './deliveries.ts';
import type { Dice } from './dice.ts';
import { makeDice } from './dice.ts';
import { callOff, leaveOnHold, plain, WAYS, WAYS_OF_PH } from './mishaps.ts';
import { benchOrder, claim, makeFit, mixUntil } from './mixer.ts';
import type { Stage } from './stage.ts';
import { as, clockOf, clockUpTo, DEMO_ZONE } from './stage.ts';
import type { Told } from './stories.ts';
import { STORIES } from './stories.ts';

export interface Past {
  readonly services: Services;
  readonly firstDay: LocalDay;
  readonly today: LocalDay;
  readonly now: InstantMs;
  readonly rulebook: Rulebook;
  readonly accountId: Stage['accountId'];
  readonly benchId: string;
  /** Where somebody is at work when the demonstration begins. */
  readonly backBenchId: string;
  /** Puts the rules of today in the place of those that the shop began with. */
  readonly publishAgain: (stage: Stage) => Promise<void>;
}

const SEED = 20_260_525;
export const PAST_DAYS = 182;
const SECOND_EDITION_DAYS_AGO = 60;
const OPENS_AT = 9 * 60;
/** How many people come for a jar that they saw, how many of them for its very colour, and how many colours the others ask for. */
const OF_A_JAR_SEEN = 0.6;
const SAME_COLOUR = 0.25;
const SHADES_ASKED = 4;

/** Tuesday to Saturday. */
const isOpen = (day: LocalDay): boolean => {
  const weekday = new Date(`${day}T12:00:00Z`).getUTCDay();
  return weekday >= 2 && weekday <= 6;
};

const isSaturday = (day: LocalDay): boolean => new Date(`${day}T12:00:00Z`).getUTCDay() === 6;

export async function tellPast(past: Past): Promise<void> {
  const { services, firstDay, today, accountId, benchId } = past;
  const dice = makeDice(SEED);
  const common = { services, dice, accountId, benchId, hands: 'mixer', lotNos: new Map<string, number>() } as const;
  const book = openBook(past.rulebook);
  const fetched: Fetched[] = [];
  const days = Array.from({ length: daysBetween(firstDay, today) }, (_, index) => addDays(firstDay, index));
  const open = days.filter(isOpen);
  const lastOpen = open.at(-1);
  const newRulesOn = open.find((day) => daysBetween(day, today) <= SECOND_EDITION_DAYS_AGO);
  for (const day of days) {
    const daysAgo = daysBetween(day, today);
    const stage: Stage = { ...common, day, clock: clockOf(day, OPENS_AT) };
    for (const story of STORIES.filter((one) => one.daysAgo === daysAgo)) story.tell(stage, { book, fetched });
    if (!open.includes(day)) continue;
    openUp(stage, book);
    if (day === newRulesOn) {
      const before = ordersBefore(stage, book);
      await past.publishAgain(stage);
      fetched.push(...ordersAfter(stage, before));
    }
    if (day === lastOpen) jarOnHold(stage);
    fetched.push(...trade(stage, { book, fetched }));
    complainNow(stage, fetched);
    if (day === lastOpen) jarToFetch(stage);
  }
  thisMorning({ ...common, day: today, clock: clockUpTo(past.now, (at) => localDayIn(DEMO_ZONE, at) === today) }, book, past.backBenchId);
}

function openUp(stage: Stage, book: Book): void {
  lapseOrders(as(stage, 'nobody'));
  restock(stage, book);
  makeFit(stage);
}

/** What is liked is asked for again, by those who had it and by those who saw it. @returns the jars that went out */
function trade(stage: Stage, told: Told): readonly Fetched[] {
  const { dice, clock } = stage;
  return Array.from({ length: customersOn(stage.day, dice, told.fetched.length) }, (_, index) => index).flatMap((index) => {
    clock.pass(dice.between(4, 25));
    const orderId = orderLiked(stage, told) ?? visit(stage, dice.pick(['CN', 'CS']));
    if (orderId === null || dice.chance(0.02) || !claim(stage, orderId)) return [];
    // The first jar of a base lot and day is always measured.
    dice.weighted(index === 0 ? [...WAYS, ...WAYS_OF_PH] : WAYS)(stage, orderId);
    return handOver(stage);
  });
}

/** Somebody who saw a jar, and wants the same or the same in another colour. @returns null where nobody asks, or none of it is offered */
function orderLiked(stage: Stage, { book, fetched }: Told): string | null {
  const { dice } = stage;
  if (fetched.length === 0 || !dice.chance(OF_A_JAR_SEEN)) return null;
  const seen = variantOf(stage, dice.pick(fetched));
  if (dice.chance(SAME_COLOUR)) return orderNamed(stage, seen);
  const [, actives = ''] = seen.split('|');
  const shades = book.rulebook.shades.map(({ id }, index) => [id, 1 / (index + 3)] as const);
  for (let asked = 0; asked < SHADES_ASKED; asked += 1) {
    const orderId = orderNamed(stage, `${dice.weighted(shades)}|${actives}`);
    if (orderId !== null) return orderId;
  }
  return null;
}

/** Open orders on the morning of the new rules: one that they no longer permit, and one that they do. */
function ordersBefore(stage: Stage, next: Book): readonly string[] {
  const withdrawn = withdrawnBy(stage, next).reduce<string | null>((found, key) => found ?? orderNamed(stage, key), null);
  return [withdrawn, someOrder(stage)].flatMap((id) => id ?? []);
}

/** What the edition in force permits and the next one will not. */
function withdrawnBy(stage: Stage, next: Book): readonly string[] {
  const { services, day } = stage;
  const flow = as(stage, 'nobody');
  const edition = services.db.read((tx) => editionInForce(tx, flow));
  if (!edition) return [];
  const kept = new Set(permittedVariants(next, day).map(({ variant }) => variantKey(variant)));
  const now = services.editions.permitted(edition.head.hash, edition.book, day);
  return now.map(({ variant }) => variantKey(variant)).filter((key) => !kept.has(key));
}

/** What the new rules hold is called off by its customer; the other is made. */
function ordersAfter(stage: Stage, orderIds: readonly string[]): readonly Fetched[] {
  for (const orderId of orderIds) {
    const { stage: at } = benchOrder(stage, orderId);
    if (at === 'held') callOff(stage, orderId);
    else if (claim(stage, orderId)) plain(stage, orderId);
  }
  return handOver(stage);
}

function complainNow(stage: Stage, fetched: readonly Fetched[]): void {
  const { dice } = stage;
  const old = fetched.at(-dice.between(4, 12));
  if (old && dice.chance(0.06)) complain(stage, old.jarCode, dice.pick(SMALL_COMPLAINTS), ANSWERED);
}

/** The shop fills up with the months; Saturdays are twice as busy. */
function customersOn(day: LocalDay, dice: Dice, jarsSoFar: number): number {
  const usual = Math.min(2.2, 1.2 + jarsSoFar / 120);
  return Math.round(usual * (isSaturday(day) ? 2 : 1) + dice.roll() - 0.5);
}

/** Somebody who takes a mask; a few visits may end without. */
function someOrder(stage: Stage): string | null {
  for (let visits = 0; visits < 6; visits += 1) {
    const orderId = visit(stage, 'CS');
    if (orderId !== null) return orderId;
  }
  return null;
}

/** Left from the last open day: a jar on hold that nobody has decided. Only the first jar of a day has its pH measured for certain. */
function jarOnHold(stage: Stage): void {
  const orderId = someOrder(stage);
  if (orderId !== null && claim(stage, orderId)) leaveOnHold(stage, orderId);
}

/** Left from the last open day: a jar that is ready and not fetched. */
function jarToFetch(stage: Stage): void {
  const orderId = someOrder(stage);
  if (orderId !== null && claim(stage, orderId)) plain(stage, orderId);
}

/** Four people were at the counter today: one order is at its paste, three wait. A delivery waits for somebody to look at its papers. */
function thisMorning(stage: Stage, book: Book, backBenchId: string): void {
  const atBack: Stage = { ...stage, benchId: backBenchId, hands: 'checker' };
  lapseOrders(as(stage, 'nobody'));
  restock(stage, book);
  oddLots(stage, book);
  const [first] = [1, 2, 3, 4].map(() => someOrder(stage));
  if (!first) return;
  makeFit(atBack);
  if (claim(atBack, first)) mixUntil(atBack, first, ({ step }) => step.kind === 'paste');
}
