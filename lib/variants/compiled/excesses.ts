// Every check of a plan that adds up over its stocks, as an excess. Each is the very sum that its check compares, so that an index built
// on these cannot mean anything else than the verdict.

import { invariant } from '../../base/invariant.ts';
import { TABLE_END_X100, TABLE_START_X100 } from '../../chemistry/acidity-table.ts';
import { acidPart, ionicLoad, irritancyLoad, pigmentPart, powderPart, swellingClayPart } from '../../chemistry/caps.ts';
import { jarNeeds, needAt, needErrorAt } from '../../chemistry/need.ts';
import { waterPart } from '../../chemistry/solubility.ts';
import { wettingOf } from '../../chemistry/wetting.ts';
import type { Composition } from '../../composition/compose.ts';
import { materialPart, substancePart } from '../../composition/compose.ts';
import { exposureExcess } from '../../law/exposure.ts';
import { expressedPart, limitsInForce } from '../../law/limits.ts';
import type { Book } from '../../rulebook/book.ts';
import type { PairLimit } from '../../rulebook/judgement.ts';
import type { MaterialClass } from '../../rulebook/material.ts';
import { WHOLE_PPM } from '../../units/share.ts';
import type { LocalDay } from '../../units/time.ts';
import { classPart } from '../../verdict/check-classes.ts';
import type { Excess } from './linear.ts';

const PPM = BigInt(WHOLE_PPM);
const MG_PER_100G = 100_000n;

const atMost =
  (found: (jar: Composition) => bigint, mostPpm: number): Excess =>
  (jar) =>
    found(jar) * PPM - BigInt(mostPpm) * jar.whole;

const atLeast =
  (found: (jar: Composition) => bigint, leastPpm: number): Excess =>
  (jar) =>
    BigInt(leastPpm) * jar.whole - found(jar) * PPM;

/** Checks 5, 7, 9, 10, 11 and 12, and what dissolves at any pH (6): a jar that breaks one is refused. */
export function refusingExcesses(book: Book, day: LocalDay): readonly Excess[] {
  const { base, house, markets } = book.rulebook;
  const { preservatives, testedPowderPpm, testedSwellingClayPpm } = base.preservation;
  return [
    atMost((jar) => jar.additions, base.allowancePpm),
    atMost((jar) => powderPart(book, jar), Math.min(base.caps.powderPpm, testedPowderPpm)),
    atMost((jar) => swellingClayPart(book, jar), Math.min(base.caps.swellingClayPpm, testedSwellingClayPpm)),
    atMost((jar) => pigmentPart(book, jar), base.caps.pigmentPpm),
    atMost((jar) => ionicLoad(book, jar), base.caps.ionicUnits),
    atMost((jar) => irritancyLoad(book, jar), base.caps.irritancyUnits),
    ...preservatives.map(({ substanceId, provenMinPpm }) => atLeast((jar) => substancePart(jar, substanceId), provenMinPpm)),
    (jar) => wettingExcess(book, jar),
    ...markets.flatMap((market) =>
      limitsInForce(book, market, day).map(
        (row): Excess =>
          (jar) =>
            expressedPart(jar, row) - BigInt(row.maxPpm) * jar.whole,
      ),
    ),
    ...book.rulebook.substances.flatMap(({ id, exposure, solubility }): Excess[] => [
      ...(exposure
        ? [(jar: Composition) => exposureExcess(house.exposure, exposure, { found: substancePart(jar, id), whole: jar.whole })]
        : []),
      ...(solubility && solubility.suspendedEvidence === undefined && solubility.pkaX1000 === undefined
        ? [neutralSolubilityExcess(book, id, solubility.neutralMgPer100g)]
        : []),
    ]),
  ];
}

/** What holds whatever the pH when the excess is at most 0; over it the pH decides, along a curve. */
export const curvedExcesses = (book: Book): readonly Excess[] => [
  atMost((jar) => acidPart(book, jar), book.rulebook.base.caps.freeAcidPpm),
  ...book.rulebook.substances.flatMap(({ id, solubility }) =>
    solubility && solubility.suspendedEvidence === undefined && solubility.pkaX1000 !== undefined
      ? [neutralSolubilityExcess(book, id, solubility.neutralMgPer100g)]
      : [],
  ),
  // The undissociated part of an acid preservative always needs the pH.
  ...book.rulebook.base.preservation.preservatives.flatMap(({ weakAcid }): Excess[] => (weakAcid ? [(jar) => jar.whole] : [])),
];

function wettingExcess(book: Book, jar: Composition): bigint {
  const { needed, available } = wettingOf(book, jar);
  return needed - available;
}

const neutralSolubilityExcess =
  (book: Book, substanceId: string, mgPer100g: number): Excess =>
  (jar) =>
    substancePart(jar, substanceId) * MG_PER_100G - BigInt(mgPer100g) * waterPart(book, jar);

/** pH ≥ min, errors included; 'never' where the tables cannot show it. */
export function lowerEndExcess(book: Book, minX100: number): Excess | 'never' {
  const asked = minX100 + book.rulebook.house.phErrorX100;
  return asked > TABLE_END_X100 ? 'never' : needExcess(book, Math.max(asked, TABLE_START_X100), 1n);
}

/** pH ≤ max, errors included. */
export function upperEndExcess(book: Book, maxX100: number): Excess | 'never' {
  const asked = maxX100 - book.rulebook.house.phErrorX100;
  return asked < TABLE_START_X100 ? 'never' : needExcess(book, Math.min(asked, TABLE_END_X100), -1n);
}

const needExcess =
  (book: Book, atX100: number, sign: bigint): Excess =>
  (jar) => {
    const needs = jarNeeds(book, jar);
    invariant(needs.kind === 'known', 'a stock without a need table is in no plan that is asked for its pH');
    return sign * needAt(needs, atX100) + needErrorAt(needs, atX100);
  };

export const pairLimitExcesses = (first: string, second: string, limit: PairLimit): readonly Excess[] => [
  ...(limit.maxSumPpm === undefined ? [] : [atMost((jar) => materialPart(jar, first) + materialPart(jar, second), limit.maxSumPpm)]),
  ...(limit.maxFirstPpm === undefined ? [] : [atMost((jar) => materialPart(jar, first), limit.maxFirstPpm)]),
  ...(limit.maxSecondPpm === undefined ? [] : [atMost((jar) => materialPart(jar, second), limit.maxSecondPpm)]),
];

/** Over 0 where a side of a class rule counts. */
export const classExcess = (book: Book, materialClass: MaterialClass, abovePpm: number): Excess =>
  atMost((jar) => classPart(book, jar, materialClass), abovePpm);
