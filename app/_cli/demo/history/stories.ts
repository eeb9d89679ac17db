// The turning points of the half year, by days before today: stops and how they ended, a lot that was recalled, a second edition, two grave calls.

import { liftStop } from '#app/_flows/lift-stop.ts';
import { placeStop } from '#app/_flows/place-stop.ts';
import { decideLot } from '#app/_flows/receive-lot.ts';
import { showStops } from '#app/_flows/show-stops.ts';
import { listStandingLots } from '#db/lots.ts';
import { listJarsOfLot } from '#db/trace.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { Fetched } from './afterwards.ts';
import { ANSWERED, complain, variantOf } from './afterwards.ts';
import type { Stage } from './stage.ts';
import { as, went } from './stage.ts';

export interface Told {
  readonly book: Book;
  /** Jars that went out, oldest first. */
  readonly fetched: readonly Fetched[];
}

export interface Story {
  readonly daysAgo: number;
  readonly tell: (stage: Stage, told: Told) => void;
}

type Subject = Parameters<typeof placeStop>[1]['subjectKind'];

/** Set by the formulator, lifted some days later by her and the manager. */
const stopped = (
  daysAgo: number,
  days: number,
  subjectKind: Subject,
  why: { readonly id: (told: Told, stage: Stage) => string; readonly set: string; readonly lifted: string },
): readonly Story[] => [
  {
    daysAgo,
    tell: (stage, told) =>
      void went(placeStop(as(stage, 'formulator'), { subjectKind, subjectId: why.id(told, stage), reason: why.set }), 'a stop is set'),
  },
  { daysAgo: daysAgo - days, tell: (stage) => liftAll(stage, why.set, why.lifted) },
];

function liftAll(stage: Stage, setFor: string, reason: string): void {
  for (const { stop, lifted } of showStops(as(stage, 'formulator')).rows) {
    if (lifted || stop.reason !== setFor) continue;
    const asked = { stopId: stop.id, reason, secondAccountId: stage.accountId('manager') };
    went(liftStop(as(stage, 'formulator'), asked), 'a stop is lifted');
  }
}

const orFirst = (wanted: string, known: ReadonlyMap<string, unknown>): string =>
  known.has(wanted) ? wanted : ([...known.keys()][0] ?? wanted);

/** The opened lot of a stock turns out bad: stopped at once, its jars looked up and their owners told, the rest sent back. */
function recall(stage: Stage): void {
  const { services } = stage;
  const lots = services.db
    .read(listStandingLots)
    .filter(({ lot, status, openedAtMs }) => lot.kind === 'stock' && status === 'released' && openedAtMs !== null);
  const used = lots
    .map((state) => ({ state, jars: services.db.read((tx) => listJarsOfLot(tx, state.lot.id)) }))
    .filter(({ jars }) => jars.length > 0);
  const [worst] = used.sort(
    (a, b) => Number(b.state.lot.refId.startsWith('panthenol')) - Number(a.state.lot.refId.startsWith('panthenol')),
  );
  if (!worst) return;
  const { lot } = worst.state;
  const reason = `Recalled by the supplier: too many germs in lot ${lot.code}`;
  went(placeStop(as(stage, 'formulator'), { subjectKind: 'lot', subjectId: lot.id, reason }), 'a lot is recalled');
  stage.clock.pass(20);
  for (const { jarCode } of worst.jars.slice(-2)) {
    complain(stage, jarCode, { kind: 'other', seriousness: 'not-serious', said: `Called by the shop: the jar holds lot ${lot.code}.` }, [
      ['manager', 'jar-returned', 'Kept apart with the lot'],
      ['manager', 'closed', 'Money back'],
    ]);
  }
  went(
    decideLot(as(stage, 'formulator'), { lotId: lot.id, kind: 'rejected', reason: 'Recalled; the rest went back' }),
    'the recalled lot goes back',
  );
}

const lastOf = ({ fetched }: Told, back = 0): string | undefined => fetched.at(-1 - back)?.jarCode;

const called = (daysAgo: number, told: Parameters<typeof complain>[2], answered: Parameters<typeof complain>[3]): Story => ({
  daysAgo,
  tell: (stage, all) => {
    const jarCode = lastOf(all, 3);
    if (jarCode !== undefined) complain(stage, jarCode, told, answered);
  },
});

export const STORIES: readonly Story[] = [
  ...stopped(152, 4, 'shade', {
    id: ({ book: { shades } }) => orFirst('rust-seam', shades),
    set: 'Two jars came out darker than the drawdown',
    lifted: 'The blend was mixed again and drawn down',
  }),
  ...stopped(121, 3, 'active', {
    id: ({ book: { actives } }) => orFirst('urea', actives),
    set: 'The supplier asked to wait for a new analysis',
    lifted: 'The analysis is in order',
  }),
  called(101, { kind: 'look', seriousness: 'not-serious', said: 'Grey instead of green at the rim.' }, ANSWERED),
  ...stopped(84, 6, 'pair', {
    id: ({ book: { materials } }) => [orFirst('caffeine', materials), 'zinc-pca'].join('|'),
    set: 'Grains in one jar: is it the two together?',
    lifted: 'It was not: the caffeine had not been dissolved',
  }),
  ...stopped(47, 5, 'material', {
    id: ({ book: { materials } }) => orFirst('ultramarines', materials),
    set: 'A smell in one blue jar',
    lifted: 'The jar had been left with its lid off; the lot is sound',
  }),
  { daysAgo: 34, tell: recall },
  ...stopped(22, 4, 'variant', {
    id: ({ fetched }, stage) => fetched.slice(-1).map((jar) => variantOf(stage, jar))[0] ?? 'dune-grass|green-tea@1000',
    set: 'Browner than it should be after a month',
    lifted: 'Within what the test jars showed',
  }),
  called(16, { kind: 'reaction', seriousness: 'not-serious', said: 'Red cheeks for an hour. Had used a peel the day before.' }, [
    ['manager', 'jar-returned', ''],
    ['formulator', 'answered', 'Asked to leave the mask off and to see a pharmacist if it comes back'],
    ['manager', 'closed', ''],
  ]),
  called(5, { kind: 'reaction', seriousness: 'serious', said: 'Swollen eyelids, was seen at a hospital the same evening.' }, [
    ['manager', 'jar-returned', 'Kept cold'],
    ['formulator', 'sample-kept', ''],
    ['manager', 'told-responsible-person', 'By telephone and in writing'],
  ]),
];
