// Up to three masks for one customer: (a) the best, (b) the mildest that still does the job, (c) another colour or a lower price.
// Fewer than three is fine; padding is not.
import type { Person } from '../answers/person.ts';
import type { Book } from '../rulebook/book.ts';
import type { Plan, Variant } from '../rulebook/variant.ts';
import type { MoneyMinor } from '../units/money.ts';
import type { Attempt } from '../verdict/judge.ts';
import { judgeVariant } from '../verdict/judge.ts';
import type { JudgeContext, Verdict } from '../verdict/verdict.ts';
import { mayBeOffered } from './may-be-offered.ts';
import type { Permitted } from './permitted.ts';
import { colourFamily } from './permitted.ts';
import { priceOf } from './price.ts';
import type { Ranked } from './rank.ts';
import { bestFirst, mildestFirst, rankAll } from './rank.ts';

export type MaskRole = 'closest' | 'mildest' | 'other-colour' | 'lower-price';

export interface Mask {
  readonly role: MaskRole;
  readonly variant: Variant;
  readonly plan: Plan;
  readonly verdict: Extract<Verdict, { kind: 'permitted' }>;
  readonly priceMinor: MoneyMinor;
}

export interface MasksFound {
  readonly masks: readonly Mask[];
  /** True when nothing permitted answers any wish: the base with a shade is offered, and said to be so. */
  readonly noActiveFits: boolean;
}

export interface MaskQuery {
  readonly person: Person;
  readonly jarSizeId: string;
  readonly context: Omit<JudgeContext, 'person'>;
  /** Stocks of which the shop has nothing that it may use; none by default. Check 15 stands either way: this only spares asking. */
  readonly absentStockIds?: ReadonlySet<string>;
}

/** Masks for a person among the permitted variants of the edition; each is judged again with the person, bench and shop before it is shown. */
export function threeMasks(book: Book, permitted: readonly Permitted[], query: MaskQuery): MasksFound {
  const isOffered = mayBeOffered(book, query.person, query.absentStockIds ?? new Set());
  const offered = permitted.filter((one) => isOffered(one.variant));
  const ranked = [...rankAll(book, offered, query.person.wishes)].sort(bestFirst);
  const judged = new Map<Variant, Attempt>();
  const offer = (role: MaskRole, candidates: readonly Ranked[]): Mask | null => firstMakeable({ book, query, judged }, role, candidates);
  const closest = offer('closest', ranked);
  if (!closest) return { masks: [], noActiveFits: false };
  const best = ranked.find((one) => one.variant === closest.variant)?.score ?? 0;
  const worthwhile = ranked.filter((one) => 10 * one.score >= 7 * best).sort(mildestFirst);
  const mildest = offer('mildest', worthwhile);
  const shown = mildest && mildest.variant !== closest.variant ? [closest, mildest] : [closest];
  const third = thirdMask(book, ranked, shown, offer);
  return { masks: third ? [...shown, third] : shown, noActiveFits: best === 0 };
}

function thirdMask(
  book: Book,
  ranked: readonly Ranked[],
  shown: readonly Mask[],
  offer: (role: MaskRole, candidates: readonly Ranked[]) => Mask | null,
): Mask | null {
  const families = new Set(shown.map((mask) => colourFamily(book, mask.variant)));
  const fresh = ranked.filter((one) => shown.every((mask) => differs(mask.variant, one.variant)));
  const otherColour = offer(
    'other-colour',
    fresh.filter((one) => !families.has(colourFamily(book, one.variant))),
  );
  if (otherColour) return otherColour;
  const [closest] = shown;
  const jarPriceMinor = closest
    ? closest.priceMinor - (ranked.find((one) => one.variant === closest.variant)?.additionsPriceMinor ?? 0)
    : 0;
  return offer(
    'lower-price',
    fresh.filter((one) => closest && 10 * (jarPriceMinor + one.additionsPriceMinor) <= 9 * closest.priceMinor),
  );
}

/** Another shade, or another set of actives; other levels alone are no other mask. */
const differs = (a: Variant, b: Variant): boolean => a.shadeId !== b.shadeId || activeSet(a) !== activeSet(b);
const activeSet = (variant: Variant): string =>
  variant.actives
    .map((chosen) => chosen.activeId)
    .sort()
    .join('+');

interface Judging {
  readonly book: Book;
  readonly query: MaskQuery;
  /** What was judged for this query: the mildest is often sought among those that the closest was. */
  readonly judged: Map<Variant, Attempt>;
}

function firstMakeable({ book, query, judged }: Judging, role: MaskRole, candidates: readonly Ranked[]): Mask | null {
  for (const { variant } of candidates) {
    const attempt = judged.get(variant) ?? judgeVariant(book, variant, { ...query.context, person: query.person });
    judged.set(variant, attempt);
    const { plan, verdict } = attempt;
    if (plan && verdict.kind === 'permitted') return { role, variant, plan, verdict, priceMinor: priceOf(book, variant, query.jarSizeId) };
  }
  return null;
}
