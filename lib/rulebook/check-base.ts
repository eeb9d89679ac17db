// The base alone must pass everything that its jars must pass: what it breaks by itself, no addition can mend.
// Shares only fall as additions come in, so the base without additions is the worst end of every maximum.

import { WHOLE_PPM } from '../units/share.ts';
import type { Book } from './book.ts';
import { basePhX100, baseSurelyWithin } from './check-acidity.ts';
import { isPowder, loadOf, shareOf, substancesIn } from './held-shares.ts';
import type { ClassRule } from './judgement.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

export function* checkBase(book: Book): Faults {
  const { base } = book.rulebook;
  yield* wettingOil(book);
  if (base.ceilingPpm < base.allowancePpm) {
    yield fault(['base', 'ceilingPpm'], 'ceiling-under-allowance', { ceilingPpm: base.ceilingPpm, allowancePpm: base.allowancePpm });
  }
  if (base.evidenceIds.length === 0) yield fault(['base', 'evidenceIds'], 'no-evidence', { what: 'the base' });
  yield* caps(book);
  yield* persons(book);
  yield* judgedAlone(book);
}

/** The wetting oil is a held-back part of the base's own oil. */
function* wettingOil(book: Book): Faults {
  const { parts, wettingOilPpm, wettingOilParts } = book.rulebook.base;
  for (const [index, { materialId, sharePpm }] of wettingOilParts.entries()) {
    const path = ['base', 'wettingOilParts', index];
    const foundPpm = parts.filter((part) => part.materialId === materialId).reduce((sum, part) => sum + part.sharePpm, 0);
    const needed = wettingOilPpm * sharePpm;
    if (foundPpm * WHOLE_PPM < needed) {
      yield fault(path, 'wetting-oil-outside-base', { materialId, neededPpm: Math.ceil(needed / WHOLE_PPM), foundPpm });
    }
    const material = book.materials.get(materialId);
    if (material && material.kind !== 'oil') yield fault([...path, 'materialId'], 'wetting-oil-not-oil', { materialId });
  }
}

function* caps(book: Book): Faults {
  const { base, house } = book.rulebook;
  const irritancy = loadOf(book, base.parts, (material) => material.irritancyUnitsPerPpm);
  const found = {
    powderPpm: shareOf(book, base.parts, isPowder),
    swellingClayPpm: shareOf(book, base.parts, (material) => material.classes.includes('swelling-clay')),
    pigmentPpm: shareOf(book, base.parts, (material) => material.kind === 'pigment'),
    ionicUnits: loadOf(book, base.parts, (material) => material.ionicUnitsPerPpm),
    irritancyUnits: irritancy,
    freeAcidPpm: freeAcidPpm(book),
  };
  for (const cap of Object.keys(found) as (keyof typeof found)[]) {
    const most: number = base.caps[cap];
    if (found[cap] > most) yield fault(['base', 'caps', cap], 'base-over-cap', { cap, found: found[cap], most });
  }
  if (irritancy > house.gentleIrritancyUnits) {
    yield fault(['house', 'gentleIrritancyUnits'], 'base-over-gentle', { foundUnits: irritancy, mostUnits: house.gentleIrritancyUnits });
  }
}

/**
 * Free acid of the base, in ppm: share / (1 + 10^(pH − pKa)) (Henderson–Hasselbalch), at its predicted pH less the error.
 * A base whose pH its table cannot give is reported for that; no second fault is made of it.
 */
function freeAcidPpm(book: Book): number {
  const predictedX100 = basePhX100(book);
  if (predictedX100 === undefined) return 0;
  const lowest = (predictedX100 - book.rulebook.house.phErrorX100) / 100;
  const held = [...substancesIn(book, book.rulebook.base.parts)].map(([substanceId, share]) => {
    const acid = book.substances.get(substanceId)?.acid;
    return acid ? Number(share) / WHOLE_PPM / (1 + 10 ** (lowest - acid.pkaX1000 / 1000)) : 0;
  });
  return Math.ceil(held.reduce((sum, ppm) => sum + ppm, 0));
}

/** An answer that the base itself cannot meet would leave no mask at all. */
function* persons(book: Book): Faults {
  const { base, questions, personCaps } = book.rulebook;
  for (const [index, question] of questions.entries()) {
    for (const [at, option] of question.options.entries()) {
      for (const [nth, effect] of option.effects.entries()) {
        if (effect.kind !== 'exclude') continue;
        for (const tag of effect.tags) {
          const holder = base.parts.find(({ materialId }) => book.materials.get(materialId)?.tags.includes(tag));
          const path = ['questions', index, 'options', at, 'effects', nth, 'tags'];
          if (holder) yield fault(path, 'base-holds-excluded', { tag, materialId: holder.materialId });
        }
      }
    }
  }
  for (const [index, cap] of personCaps.entries()) {
    const foundPpm = shareOf(book, base.parts, (material) => material.classes.includes(cap.materialClass));
    if (foundPpm > cap.maxPpm)
      yield fault(['personCaps', index, 'maxPpm'], 'base-over-person-cap', { capId: cap.id, foundPpm, maxPpm: cap.maxPpm });
  }
}

/** Pair judgements and class rules asked of the base alone. */
function* judgedAlone(book: Book): Faults {
  const { pairJudgements, classRules } = book.rulebook;
  const heldPpm = (materialId: string): number => shareOf(book, book.rulebook.base.parts, (material) => material.id === materialId);
  for (const [index, judged] of pairJudgements.entries()) {
    const first = heldPpm(judged.firstMaterialId);
    const second = heldPpm(judged.secondMaterialId);
    if (first === 0 || second === 0) continue;
    if (judged.verdict === 'never') yield fault(['pairJudgements', index, 'verdict'], 'base-pair-never', {});
    if (judged.verdict !== 'limit') continue;
    const asked = { maxSumPpm: first + second, maxFirstPpm: first, maxSecondPpm: second };
    for (const key of Object.keys(asked) as (keyof typeof asked)[]) {
      const maxPpm = judged.limit?.[key];
      if (maxPpm !== undefined && asked[key] > maxPpm) {
        yield fault(['pairJudgements', index, 'limit', key], 'base-over-pair-limit', { foundPpm: asked[key], maxPpm });
      }
    }
  }
  for (const [index, rule] of classRules.entries()) {
    if (rule.then.kind === 'refuse' && speaksOfBase(book, rule))
      yield fault(['classRules', index], 'base-breaks-rule', { ruleId: rule.id });
  }
}

function speaksOfBase(book: Book, rule: ClassRule): boolean {
  const sides = rule.second ? [rule.first, rule.second] : [rule.first];
  const held = sides.every(
    ({ materialClass, abovePpm }) => shareOf(book, book.rulebook.base.parts, (one) => one.classes.includes(materialClass)) > abovePpm,
  );
  const window = rule.unlessPhWithin;
  return held && (window === undefined || !baseSurelyWithin(book, window.minPhX100, window.maxPhX100));
}
