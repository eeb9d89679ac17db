// Three masks by looking at everything: sort the permitted variants, take the first of each kind.
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { isOver, q, sum, times, toNumber } from './fraction.ts';
import { find, plainJar } from './plain-jar.ts';
import type { PlainVariant } from './plain-judge.ts';
import { plainAttempts } from './plain-judge.ts';

interface Candidate {
  readonly variant: PlainVariant;
  readonly key: string;
  readonly codeKey: string;
  readonly score: number;
  readonly irritancySteps: number;
  readonly price: number;
  readonly priceSteps: number;
  readonly family: string;
  readonly set: string;
  /** Still permitted when the customer's exclusions are asked too. */
  readonly mayHave: boolean;
}

/** "role shade|active@level+…" of the masks for these wishes and exclusions. */
export function plainMasks(
  book: Rulebook,
  day: string,
  wishes: Readonly<Record<string, number>>,
  excluded: readonly string[],
): readonly string[] {
  const all = everyVariant(book).flatMap((variant) => candidate(book, day, variant, wishes, excluded));
  const makeable = all.filter((one) => one.mayHave);
  const best = [...makeable].sort(byBest)[0];
  if (!best) return [];
  const mildest = makeable.filter((one) => 10 * one.score >= 7 * best.score).sort(byMildest)[0];
  const shown = [['closest', best] as const, ...(mildest && mildest !== best ? [['mildest', mildest] as const] : [])];
  const rest = makeable.filter((one) => shown.every(([, seen]) => seen.set !== one.set)).sort(byBest);
  const otherColour = rest.find((one) => shown.every(([, seen]) => seen.family !== one.family));
  const cheaper = rest.find((one) => 10 * (one.price + 2500) <= 9 * (best.price + 2500));
  const third = otherColour ? [['other-colour', otherColour] as const] : cheaper ? [['lower-price', cheaper] as const] : [];
  return [...shown, ...third].map(([role, one]) => `${role} ${one.key}`);
}

const less = (...pairs: readonly (readonly [number | string, number | string])[]): number => {
  const decided = pairs.find(([a, b]) => a !== b);
  return decided ? (decided[0] < decided[1] ? -1 : 1) : 0;
};
const byBest = (a: Candidate, b: Candidate): number =>
  less(
    [b.score, a.score],
    [a.variant.actives.length, b.variant.actives.length],
    [a.irritancySteps, b.irritancySteps],
    [a.priceSteps, b.priceSteps],
    [a.codeKey, b.codeKey],
  );
const byMildest = (a: Candidate, b: Candidate): number =>
  less(
    [a.irritancySteps, b.irritancySteps],
    [b.score, a.score],
    [a.variant.actives.length, b.variant.actives.length],
    [a.priceSteps, b.priceSteps],
    [a.codeKey, b.codeKey],
  );

function candidate(
  book: Rulebook,
  day: string,
  variant: PlainVariant,
  wishes: Readonly<Record<string, number>>,
  excluded: readonly string[],
): readonly Candidate[] {
  const lines = plainAttempts(book, variant, day).find((attempt) => attempt.codes.length === 0)?.lines;
  if (!lines) return [];
  const shade = find(book.shades, variant.shadeId);
  const levels = variant.actives.map((one) => find(book.actives, one.activeId).levels.find((level) => level.levelPpm === one.levelPpm));
  const benefit = (concern: string): number =>
    levels
      .flatMap((level) => level?.benefits ?? [])
      .filter((row) => row.concernId === concern)
      .reduce((total, row) => total + row.benefitMilli, 0);
  const score = Object.entries(wishes).reduce((total, [concern, weight]) => total + weight * Math.min(1000, benefit(concern)), 0);
  const load = sum(
    [...plainJar(book, lines).materials].map(([id, share]) => times(share, q(find(book.materials, id).irritancyUnitsPerPpm * 1_000_000))),
  );
  const step = book.house.ranking.irritancyStepUnits;
  const floor = Math.floor(toNumber(load) / step + 1e-9);
  const price = shade.priceMinor + levels.reduce((total, level) => total + (level?.priceMinor ?? 0), 0);
  const padded = (level: number): string => String(level).padStart(7, '0');
  const codes = variant.actives.map((one) => `${find(book.actives, one.activeId).code}@${padded(one.levelPpm)}`).sort();
  return [
    {
      variant,
      key: `${variant.shadeId}|${[...variant.actives]
        .sort((a, b) => (a.activeId < b.activeId ? -1 : 1))
        .map((one) => `${one.activeId}@${one.levelPpm}`)
        .join('+')}`,
      codeKey: `${shade.code}|${codes.join('+')}`,
      score,
      irritancySteps: isOver(load, q(floor * step)) ? floor + 1 : floor,
      price,
      priceSteps: Math.ceil(price / book.house.ranking.priceStepMinor),
      family: shade.colour.family,
      set: `${variant.shadeId}|${variant.actives
        .map((one) => one.activeId)
        .sort()
        .join('+')}`,
      mayHave: plainAttempts(book, variant, day, { excluded }).some((attempt) => attempt.codes.length === 0),
    },
  ];
}

/** Shades × sets of at most k actives × levels, by counting in binary. */
function everyVariant(book: Rulebook): readonly PlainVariant[] {
  const actives = book.actives.filter((active) => active.role === 'active');
  const sets = Array.from({ length: 2 ** actives.length }, (_, bits) =>
    actives.filter((_active, index) => (bits >> index) % 2 === 1),
  ).filter((set) => set.length <= book.base.mostActivesCount);
  const withLevels = sets.flatMap((set) =>
    set.reduce<readonly PlainVariant['actives'][]>(
      (done, active) => done.flatMap((head) => active.levels.map((level) => [...head, { activeId: active.id, levelPpm: level.levelPpm }])),
      [[]],
    ),
  );
  return book.shades.flatMap((shade) => withLevels.map((actives2) => ({ shadeId: shade.id, actives: actives2 })));
}
