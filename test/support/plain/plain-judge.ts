// Checks 1 to 13, as few words as possible and no index: what the program must agree with. Checks 14 and 15 belong to benches and shops and stay out.

import type { PairLimit } from '#lib/rulebook/judgement.ts';
import type { MaterialClass } from '#lib/rulebook/material.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { Fraction } from './fraction.ts';
import { isOver, isUnder, plus, q, sum, times, toNumber, ZERO } from './fraction.ts';
import type { PlainChoice, PlainJar, PlainLine } from './plain-jar.ts';
import { find, plainJar, plainPlans } from './plain-jar.ts';
import type { End, PlainPh } from './plain-ph.ts';
import { aboveMin, belowMax, plainPh, roots } from './plain-ph.ts';

const PPM = 1_000_000;
const ppm = (value: number): Fraction => q(value, PPM);

export interface PlainVariant {
  readonly shadeId: string;
  readonly actives: readonly PlainChoice[];
}

export interface PlainAsked {
  readonly variant: PlainVariant;
  readonly adjuster: PlainChoice | null;
  readonly day: string;
  readonly person?: PlainPerson;
}

/** What check 13 asks of one customer. */
export interface PlainPerson {
  readonly excluded: readonly string[];
  readonly capIds?: readonly string[];
  readonly isMildest?: boolean;
}

export interface PlainAttempt {
  readonly lines: readonly PlainLine[] | null;
  readonly codes: readonly string[];
}

/** Every attempt to make a variant: no adjuster first, then their levels upward; plans with fewest lines, smallest additions, first codes. */
export function plainAttempts(book: Rulebook, variant: PlainVariant, day: string, person?: PlainPerson): readonly PlainAttempt[] {
  const adjusters = [...book.actives].filter((active) => active.role === 'adjuster').sort((a, b) => (a.code < b.code ? -1 : 1));
  const wanted = new Set([
    ...find(book.shades, variant.shadeId).parts.map((part) => part.materialId),
    ...variant.actives.map((one) => find(book.actives, one.activeId).materialId),
  ]);
  const choices = adjusters
    .filter((active) => !wanted.has(active.materialId))
    .flatMap((active) =>
      active.levels.map((level) => ({ activeId: active.id, levelPpm: level.levelPpm as number })).sort((a, b) => a.levelPpm - b.levelPpm),
    );
  return [null, ...choices].flatMap((adjuster): PlainAttempt[] => {
    const plans = plainPlans(book, variant.shadeId, [...variant.actives, ...(adjuster ? [adjuster] : [])]);
    if (plans.length === 0) return [{ lines: null, codes: ['no plan'] }];
    const additions = (lines: readonly PlainLine[]): number => lines.reduce((all, line) => all + toNumber(line.share), 0);
    const codes = (lines: readonly PlainLine[]): string => lines.map((line) => find(book.stocks, line.stockId).code).join('+');
    const sorted = [...plans].sort(
      (a, b) => a.length - b.length || Math.round((additions(a) - additions(b)) * 1e6) || (codes(a) < codes(b) ? -1 : 1),
    );
    return sorted.map((lines) => ({ lines, codes: plainCodes(book, { variant, adjuster, day, person }, lines) }));
  });
}

/** Codes of all findings, sorted, each once. */
export function plainCodes(book: Rulebook, asked: PlainAsked, lines: readonly PlainLine[]): readonly string[] {
  const jar = plainJar(book, lines);
  const ph = plainPh(book, jar);
  const codes = [
    ...approval(book, asked),
    ...meetings(book, jar, ph),
    ...levels(book, asked),
    ...amounts(book, jar, ph),
    ...phCodes(book, jar, ph),
    ...preservation(book, jar, ph),
    ...law(book, jar, asked.day),
    ...exposure(book, jar),
    ...(asked.person ? personal(book, jar, asked.person) : []),
  ];
  return [...new Set(codes)].sort();
}

const chosen = ({ variant, adjuster }: PlainAsked): readonly PlainChoice[] => [...variant.actives, ...(adjuster ? [adjuster] : [])];

function approval(book: Rulebook, asked: PlainAsked): readonly string[] {
  const shade = asked.variant.shadeId;
  const all = chosen(asked);
  const refused = book.scopes.some(
    (scope) =>
      scope.kind === 'refuse' &&
      (scope.shadeIds.length === 0 || scope.shadeIds.includes(shade)) &&
      scope.actives.every((named) => all.some((one) => one.activeId === named.activeId && one.levelPpm >= named.levelPpm)),
  );
  if (refused) return ['approval-refused'];
  const approved = book.scopes.some(
    (scope) =>
      scope.kind === 'approve' &&
      scope.shadeIds.includes(shade) &&
      asked.variant.actives.length <= scope.mostActivesCount &&
      all.every((one) => scope.actives.some((named) => named.activeId === one.activeId && one.levelPpm <= named.levelPpm)),
  );
  return approved ? [] : ['not-approved'];
}

const classesOf = (book: Rulebook, id: string): readonly string[] => find(book.materials, id).classes;
const held = (jar: PlainJar, id: string): Fraction => jar.materials.get(id) ?? ZERO;
const outside = (ph: PlainPh, min: number | undefined, max: number | undefined): boolean =>
  ph.need !== null && ((min !== undefined && aboveMin(ph, min) !== 'held') || (max !== undefined && belowMax(ph, max) !== 'held'));

function meetings(book: Rulebook, jar: PlainJar, ph: PlainPh): readonly string[] {
  const codes: string[] = [];
  const ids = [...jar.materials.keys()];
  const inBase = (id: string): boolean => book.base.parts.some((part) => part.materialId === id);
  for (const [index, a] of ids.entries()) {
    for (const b of ids.slice(index + 1)) {
      const own = book.pairJudgements.find(
        (judged) =>
          (judged.firstMaterialId === a && judged.secondMaterialId === b) ||
          (judged.firstMaterialId === b && judged.secondMaterialId === a),
      );
      if (!own && inBase(a) && inBase(b) && !jar.added.has(a) && !jar.added.has(b)) continue;
      const classes = book.classJudgements.flatMap((judged) => [
        ...(classesOf(book, a).includes(judged.firstClass) && classesOf(book, b).includes(judged.secondClass)
          ? [{ ...judged, one: a, two: b }]
          : []),
        ...(judged.firstClass !== judged.secondClass &&
        classesOf(book, b).includes(judged.firstClass) &&
        classesOf(book, a).includes(judged.secondClass)
          ? [{ ...judged, one: b, two: a }]
          : []),
      ]);
      if (!own && inBase(a) && inBase(b) && classes.length === 0) continue;
      const rulings = own ? [{ ...own, one: own.firstMaterialId, two: own.secondMaterialId }] : classes;
      const worst = (['never', 'limit', 'caution', 'fine'] as const).find((verdict) =>
        rulings.some((ruling) => ruling.verdict === verdict),
      );
      if (!worst) codes.push('pair-not-judged');
      if (worst === 'never') codes.push('pair-never');
      if (worst === 'limit')
        for (const ruling of rulings)
          if (ruling.verdict === 'limit') codes.push(...limited(jar, ph, ruling.one, ruling.two, ruling.limit ?? {}));
    }
  }
  for (const rule of book.classRules) {
    const counts = [rule.first, ...(rule.second ? [rule.second] : [])].every((side) =>
      isOver(classShare(book, jar, side.materialClass), ppm(side.abovePpm)),
    );
    const window = rule.unlessPhWithin;
    if (counts && rule.then.kind === 'refuse' && (!window || outside(ph, window.minPhX100, window.maxPhX100))) codes.push('class-rule');
  }
  return codes;
}

const classShare = (book: Rulebook, jar: PlainJar, materialClass: MaterialClass): Fraction =>
  sum([...jar.materials].filter(([id]) => classesOf(book, id).includes(materialClass)).map(([, share]) => share));

function limited(jar: PlainJar, ph: PlainPh, one: string, two: string, limit: PairLimit): readonly string[] {
  const over = (share: Fraction, max: number | undefined): boolean => max !== undefined && isOver(share, ppm(max));
  return [
    ...(over(plus(held(jar, one), held(jar, two)), limit.maxSumPpm) ? ['pair-limit-sum'] : []),
    ...(over(held(jar, one), limit.maxFirstPpm) ? ['pair-limit-first'] : []),
    ...(over(held(jar, two), limit.maxSecondPpm) ? ['pair-limit-second'] : []),
    ...(outside(ph, limit.minPhX100, limit.maxPhX100) ? ['pair-limit-ph'] : []),
  ];
}

const levels = (book: Rulebook, asked: PlainAsked): readonly string[] =>
  chosen(asked).some((one) => !find(book.actives, one.activeId).levels.find((level) => level.levelPpm === one.levelPpm)?.permitted)
    ? ['level-not-permitted']
    : [];

const isPowder = (book: Rulebook, id: string): boolean => ['insoluble-powder', 'pigment'].includes(find(book.materials, id).kind);
const sumOf = (shares: ReadonlyMap<string, Fraction>, keep: (id: string) => boolean): Fraction =>
  sum([...shares].filter(([id]) => keep(id)).map(([, share]) => share));
const powder = (book: Rulebook, jar: PlainJar): Fraction => sumOf(jar.materials, (id) => isPowder(book, id));
const swelling = (book: Rulebook, jar: PlainJar): Fraction => sumOf(jar.materials, (id) => classesOf(book, id).includes('swelling-clay'));

function amounts(book: Rulebook, jar: PlainJar, ph: PlainPh): readonly string[] {
  const codes: string[] = [];
  const { caps, allowancePpm } = book.base;
  if (isOver(jar.additions, ppm(allowancePpm))) codes.push('allowance-exceeded');
  const load = (of: 'ionicUnitsPerPpm' | 'irritancyUnitsPerPpm'): Fraction =>
    sum([...jar.materials].map(([id, share]) => times(share, q(find(book.materials, id)[of] * PPM))));
  const over = [
    isOver(powder(book, jar), ppm(caps.powderPpm)),
    isOver(swelling(book, jar), ppm(caps.swellingClayPpm)),
    isOver(
      sumOf(jar.materials, (id) => find(book.materials, id).kind === 'pigment'),
      ppm(caps.pigmentPpm),
    ),
    isOver(load('ionicUnitsPerPpm'), q(caps.ionicUnits)),
    isOver(load('irritancyUnitsPerPpm'), q(caps.irritancyUnits)),
  ];
  if (over.includes(true)) codes.push('cap-exceeded');
  codes.push(...freeAcid(book, jar, ph), ...solubility(book, jar, ph));
  const oil = sum(
    [...jar.added]
      .filter(([id]) => isPowder(book, id))
      .map(([id, share]) =>
        times(share, q((find(book.materials, id).oilAbsorptionMgPer100g ?? 0) * book.house.wettingSparePpm, 100_000 * PPM)),
      ),
  );
  if (isOver(oil, jar.oilForPowders)) codes.push('wetting-short');
  return codes;
}

/** Lowest or highest pH that the jar may have; what is missing where none is known. */
function reach(ph: PlainPh): { readonly low: number; readonly high: number } | string {
  const found = roots(ph);
  if (!ph.need) return 'acidity-missing';
  return found ? { low: Math.max(0, found.low - ph.e / 100), high: Math.min(14, found.high + ph.e / 100) } : 'ph-outside-table';
}

const free = (at: number, pka: number): number => 1 / (1 + 10 ** (at - pka));

function freeAcid(book: Rulebook, jar: PlainJar, ph: PlainPh): readonly string[] {
  const acids = [...jar.substances].flatMap(([id, share]) => {
    const acid = find(book.substances, id).acid;
    return acid ? [{ pka: acid.pkaX1000 / 1000, share: toNumber(share) }] : [];
  });
  const cap = book.base.caps.freeAcidPpm / PPM;
  if (acids.reduce((all, acid) => all + acid.share, 0) <= cap) return [];
  const at = reach(ph);
  if (typeof at === 'string') return [at];
  return acids.reduce((all, acid) => all + acid.share * free(at.low, acid.pka), 0) > cap ? ['cap-exceeded'] : [];
}

function solubility(book: Rulebook, jar: PlainJar, ph: PlainPh): readonly string[] {
  const water = sumOf(jar.substances, (id) => find(book.substances, id).isWater === true);
  return [...jar.substances].flatMap(([id, share]): string[] => {
    const data = find(book.substances, id).solubility;
    if (!data || data.suspendedEvidence !== undefined) return [];
    const fits = (mg: number): boolean => toNumber(share) <= (mg / 100_000) * toNumber(water) + 1e-15;
    if (fits(data.neutralMgPer100g)) return [];
    if (data.pkaX1000 === undefined) return ['solubility-exceeded'];
    const at = reach(ph);
    if (typeof at === 'string') return [at];
    return fits(data.neutralMgPer100g * (1 + 10 ** (at.low - data.pkaX1000 / 1000))) ? [] : ['solubility-exceeded'];
  });
}

function phCodes(book: Rulebook, jar: PlainJar, ph: PlainPh): readonly string[] {
  const windows = [
    book.base.ph,
    ...[...jar.added.keys()].flatMap((id) =>
      [find(book.materials, id).phFresh, find(book.materials, id).phShelf].filter((one) => one !== undefined),
    ),
  ];
  const min = Math.max(...windows.map((window) => window.minPhX100));
  const max = Math.min(...windows.map((window) => window.maxPhX100));
  const missing = ph.need ? [] : ['acidity-missing'];
  if (min > max) return ['ph-windows-apart', ...missing];
  if (!ph.need) return missing;
  const say = (end: End, code: string): readonly string[] => (end === 'held' ? [] : [end === 'broken' ? code : 'ph-outside-table']);
  return [...say(aboveMin(ph, min), 'ph-too-low'), ...say(belowMax(ph, max), 'ph-too-high')];
}

function preservation(book: Rulebook, jar: PlainJar, ph: PlainPh): readonly string[] {
  const { preservatives, testedPowderPpm, testedSwellingClayPpm } = book.base.preservation;
  return [
    ...preservatives.flatMap((one): string[] => {
      const share = jar.substances.get(one.substanceId) ?? ZERO;
      const ends = [aboveMin(ph, one.ph.minPhX100), belowMax(ph, one.ph.maxPhX100)];
      const at = reach(ph);
      const window = ends.includes('broken')
        ? ['preservative-ph']
        : ends.includes('unknown')
          ? [typeof at === 'string' ? at : 'ph-outside-table']
          : [];
      const acid = one.weakAcid;
      const weak = !acid
        ? []
        : typeof at === 'string'
          ? [at]
          : toNumber(share) * free(at.high, acid.apparentPkaX1000 / 1000) < acid.minUndissociatedPpm / PPM
            ? ['preservative-undissociated']
            : [];
      return [...(isUnder(share, ppm(one.provenMinPpm)) ? ['preservative-too-low'] : []), ...window, ...weak];
    }),
    ...(isOver(powder(book, jar), ppm(testedPowderPpm)) ? ['powder-beyond-challenge'] : []),
    ...(isOver(swelling(book, jar), ppm(testedSwellingClayPpm)) ? ['swelling-clay-beyond-challenge'] : []),
  ];
}

function law(book: Rulebook, jar: PlainJar, day: string): readonly string[] {
  const inForce = (row: { readonly fromDay?: string; readonly untilDay?: string }): boolean =>
    (row.fromDay ?? '') <= day && day < (row.untilDay ?? '9');
  return book.markets.flatMap((market) => {
    const rows = book.limits.filter((row) => row.marketId === market.id && inForce(row));
    const over = rows.some(
      (row) =>
        row.kind === 'substance' &&
        row.productKinds.includes(market.productKind) &&
        isOver(sum(row.substances.map((one) => times(jar.substances.get(one.substanceId) ?? ZERO, ppm(one.factorPpm)))), ppm(row.maxPpm)),
    );
    const listed = (id: string): boolean => rows.some((row) => row.kind === 'colourant' && row.substanceId === id);
    const colours = [...jar.materials.keys()]
      .map((id) => find(book.materials, id))
      .filter((material) => material.kind === 'pigment' || (market.colourantsListed === 'all-colouring' && material.colours));
    const unlisted = colours.some((material) =>
      material.substances.some((one) => !listed(one.substanceId) && !find(book.substances, one.substanceId).isWater),
    );
    return [...(over ? ['law-limit'] : []), ...(unlisted ? ['law-colourant'] : [])];
  });
}

function exposure(book: Rulebook, jar: PlainJar): readonly string[] {
  const use = book.house.exposure;
  return [...jar.substances].flatMap(([id, share]): string[] => {
    const substance = find(book.substances, id);
    if (!substance.exposure) return substance.exposureDemanded ? ['exposure-no-figure'] : [];
    const mgPerKg =
      (use.amountPerUseMg *
        use.usesPerDayCount *
        (use.retentionPpm / PPM) *
        toNumber(share) *
        (substance.exposure.dermalAbsorptionPpm / PPM)) /
      (use.bodyWeightG / 1000);
    return substance.exposure.systemicPodUgPerKgDay / 1000 / mgPerKg < use.marginFloorCount ? ['exposure-margin'] : [];
  });
}

function personal(book: Rulebook, jar: PlainJar, { excluded, capIds = [], isMildest = false }: PlainPerson): readonly string[] {
  const tagsOf = (ids: readonly string[]): ReadonlySet<string> => new Set(ids.flatMap((id) => find(book.materials, id).tags));
  const inJar = tagsOf([...jar.materials.keys()]);
  const atBench = tagsOf(book.stocks.flatMap((stock) => stock.parts.map((part) => part.materialId)));
  const beside = excluded.filter((tag) => atBench.has(tag) && !inJar.has(tag));
  const policyOf = (tag: string): string => book.crossContacts.find((row) => row.tag === tag)?.policy.kind ?? 'ask-staff';
  const caps = capIds.map((id) => find(book.personCaps, id));
  const irritancy = sum([...jar.materials].map(([id, share]) => times(share, q(find(book.materials, id).irritancyUnitsPerPpm * PPM))));
  return [
    ...(excluded.some((tag) => inJar.has(tag)) ? ['person-excluded'] : []),
    ...(caps.some((cap) => isOver(classShare(book, jar, cap.materialClass), ppm(cap.maxPpm))) ? ['person-cap'] : []),
    ...(isMildest && isOver(irritancy, q(book.house.gentleIrritancyUnits)) ? ['person-mildest'] : []),
    ...(beside.some((tag) => policyOf(tag) === 'ask-staff') ? ['cross-contact'] : []),
  ];
}
