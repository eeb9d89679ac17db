// Every limit that a jar must hold wherever its weighings fall inside their bands: law, caps, judgements, solubility, preservation,
// exposure and the ceiling of the allowance. What runs along the pH counts as at the lowest pH of the plan; the jar as weighed is asked again.
import { freeSharePpm } from '../chemistry/caps.ts';
import { phBounds, predictedJarPh } from '../chemistry/jar-ph.ts';
import { solubilityAt } from '../chemistry/solubility.ts';
import { isInsolublePowder } from '../chemistry/wetting.ts';
import type { Composition } from '../composition/compose.ts';
import { composePlan } from '../composition/compose.ts';
import { exposureBound } from '../law/exposure.ts';
import { limitsInForce } from '../law/limits.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Market } from '../rulebook/limit.ts';
import type { Material, Substance } from '../rulebook/material.ts';
import type { Plan } from '../rulebook/variant.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';
import { benchLines } from './bench-line.ts';
import { judgementLimits } from './judgement-limits.ts';
import type { LineContent } from './line-content.ts';
import { boundLimit, byAddition, byMaterial, bySubstance, lineContents, ratioLimit, shareLimit } from './line-content.ts';
import type { MassLimit } from './mass-limit.ts';

export interface LimitAsk {
  readonly book: Book;
  readonly plan: Pick<Plan, 'lines'>;
  readonly markets: readonly Market[];
  readonly day: LocalDay;
}

/** The limits of one plan's jar; those of which no line brings anything are left out. */
export function massLimits({ book, plan, markets, day }: LimitAsk): readonly MassLimit[] {
  const contents = lineContents(book, benchLines(book, plan));
  const jar = composePlan(book, plan);
  const all = [
    ...lawLimits(book, contents, markets, day),
    ...capLimits(book, contents),
    freeAcidLimit(book, contents, jar),
    ...judgementLimits(book, contents, jar),
    ...solubilityLimits(book, contents, jar),
    ...preservationLimits(book, contents),
    ...exposureLimits(book, contents),
    ceilingLimit(book, contents),
  ];
  return all.filter((limit) => limit.direction === 'at-least' || [...limit.shares.values()].some(({ content }) => content > 0n));
}

const lawLimits = (book: Book, contents: readonly LineContent[], markets: readonly Market[], day: LocalDay): readonly MassLimit[] =>
  markets.flatMap((market) =>
    limitsInForce(book, market, day).map((row) => {
      const factors = new Map(row.substances.map(({ substanceId, factorPpm }) => [substanceId, factorPpm as number]));
      const head = { id: `law:${row.id}`, code: 'law-limit', basis: 'law', direction: 'at-most' } as const;
      return shareLimit(book, contents, head, { weight: bySubstance((id) => factors.get(id) ?? 0), limitPpm: row.maxPpm });
    }),
  );

const wholeIf = (counts: boolean): number => (counts ? WHOLE_PPM : 0);
const isSwellingClay = (material: Material): boolean => material.classes.includes('swelling-clay');

/** A load counts units per ppm of share: as a weight, units × 10^6 against the cap in units. */
function capLimits(book: Book, contents: readonly LineContent[]): readonly MassLimit[] {
  const { caps } = book.rulebook.base;
  const cap = (name: keyof typeof caps, weightPpm: (material: Material) => number): MassLimit => {
    const head = { id: `cap:${name}`, code: 'cap-exceeded', basis: 'cap', direction: 'at-most' } as const;
    return shareLimit(book, contents, head, { weight: byMaterial(book, weightPpm), limitPpm: caps[name] });
  };
  return [
    cap('powderPpm', (material) => wholeIf(isInsolublePowder(material))),
    cap('swellingClayPpm', (material) => wholeIf(isSwellingClay(material))),
    cap('pigmentPpm', (material) => wholeIf(material.kind === 'pigment')),
    cap('ionicUnits', (material) => material.ionicUnitsPerPpm * WHOLE_PPM),
    cap('irritancyUnits', (material) => material.irritancyUnitsPerPpm * WHOLE_PPM),
  ];
}

/** Each acid at its undissociated share, in whole ppm rounded up; wholly where nobody knows the pH. */
function freeAcidLimit(book: Book, contents: readonly LineContent[], jar: Composition): MassLimit {
  const bounds = phBounds(predictedJarPh(book, jar));
  const head = { id: 'cap:freeAcidPpm', code: 'cap-exceeded', basis: 'cap', direction: 'at-most' } as const;
  const weight = bySubstance((id) => {
    const { acid } = need(book.substances, id);
    if (!acid) return 0;
    return bounds.kind === 'known' ? freeSharePpm(bounds.lowest, acid.pkaX1000) : WHOLE_PPM;
  });
  return shareLimit(book, contents, head, { weight, limitPpm: book.rulebook.base.caps.freeAcidPpm });
}

function exposureLimits(book: Book, contents: readonly LineContent[]): readonly MassLimit[] {
  return book.rulebook.substances.flatMap(({ id, exposure }): MassLimit[] => {
    if (!exposure) return [];
    const head = { id: `exposure:${id}`, code: 'exposure-margin', basis: 'exposure', direction: 'at-most' } as const;
    return [
      boundLimit(book, contents, head, {
        weight: bySubstance((other) => (other === id ? 1 : 0)),
        bound: exposureBound(book.rulebook.house.exposure, exposure),
      }),
    ];
  });
}

/** Dissolved substance against S × the jar's water. A weak acid whose pH nobody knows dissolves no better than its neutral form. */
function solubilityLimits(book: Book, contents: readonly LineContent[], jar: Composition): readonly MassLimit[] {
  const bounds = phBounds(predictedJarPh(book, jar));
  const water = bySubstance((id) => wholeIf(need(book.substances, id).isWater === true));
  return [...jar.substances.keys()].flatMap((substanceId): MassLimit[] => {
    const { solubility }: Substance = need(book.substances, substanceId);
    if (!solubility || solubility.suspendedEvidence !== undefined) return [];
    const mgPer100g = bounds.kind === 'known' ? solubilityAt(solubility, bounds.lowest) : solubility.neutralMgPer100g;
    const head = { id: `solubility:${substanceId}`, code: 'solubility-exceeded', basis: 'solubility', direction: 'at-most' } as const;
    return [ratioLimit(book, contents, head, { weight: bySubstance((id) => wholeIf(id === substanceId)), of: water, mgPer100g })];
  });
}

/** Least preservative, and the most powder and swelling clay, that the challenge test covered. */
function preservationLimits(book: Book, contents: readonly LineContent[]): readonly MassLimit[] {
  const { preservatives, testedPowderPpm, testedSwellingClayPpm } = book.rulebook.base.preservation;
  const most = { basis: 'preservation', direction: 'at-most' } as const;
  const powder = byMaterial(book, (material) => wholeIf(isInsolublePowder(material)));
  const swelling = byMaterial(book, (material) => wholeIf(isSwellingClay(material)));
  return [
    ...preservatives.map(({ substanceId, provenMinPpm }) => {
      const head = {
        id: `preservative:${substanceId}`,
        code: 'preservative-too-low',
        basis: 'preservation',
        direction: 'at-least',
      } as const;
      return shareLimit(book, contents, head, { weight: bySubstance((id) => wholeIf(id === substanceId)), limitPpm: provenMinPpm });
    }),
    shareLimit(
      book,
      contents,
      { ...most, id: 'challenge:powder', code: 'powder-beyond-challenge' },
      { weight: powder, limitPpm: testedPowderPpm },
    ),
    shareLimit(
      book,
      contents,
      { ...most, id: 'challenge:swelling-clay', code: 'swelling-clay-beyond-challenge' },
      { weight: swelling, limitPpm: testedSwellingClayPpm },
    ),
  ];
}

/** The allowance holds for the recipe; what a jar may hold as made is the ceiling. */
function ceilingLimit(book: Book, contents: readonly LineContent[]): MassLimit {
  const head = { id: 'ceiling', code: 'allowance-exceeded', basis: 'allowance', direction: 'at-most' } as const;
  return shareLimit(book, contents, head, { weight: byAddition, limitPpm: book.rulebook.base.ceilingPpm });
}
