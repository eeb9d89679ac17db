// Check 6, second half: what is meant to dissolve must stay dissolved at the lowest storage temperature, or it grows into grains.
// Weak acids dissolve better as the pH rises: S = S₀ (1 + 10^(pH − pKa)); the lowest pH that the jar may have decides.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { Composition } from '../composition/compose.ts';
import { substancePart } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import type { Solubility, Substance } from '../rulebook/material.ts';
import type { Part } from '../units/share.ts';
import { part, partToPpm, sumParts } from '../units/share.ts';
import type { JarPh } from './jar-ph.ts';
import { phBounds } from './jar-ph.ts';

const MG_PER_100G = 100_000n;
/** More of anything than a hundred times its water never dissolves; a bound that keeps 10^(pH − pKa) finite. */
const MOST_MG_PER_100G = 10_000_000;

/** Findings of check 6 on solubility; undecided ones where a weak acid's pH is not known. */
export function checkSolubility(book: Book, jar: Composition, jarPh: JarPh): readonly Finding[] {
  const water = waterPart(book, jar);
  return [...jar.substances].flatMap(([substanceId, found]): readonly Finding[] => {
    const substance = book.substances.get(substanceId);
    const data = substance?.solubility;
    if (!substance || !data || found === 0n || data.suspendedEvidence !== undefined) return [];
    // Even the neutral form alone would dissolve: no need to know the pH.
    if (dissolves(found, water, data.neutralMgPer100g)) return [];
    if (data.pkaX1000 === undefined) return [exceeded({ jar, substance, water }, data.neutralMgPer100g)];
    const bounds = phBounds(jarPh);
    if (bounds.kind === 'unknown') return bounds.findings;
    const mgPer100g = solubilityAt(data, bounds.lowest);
    return dissolves(found, water, mgPer100g) ? [] : [exceeded({ jar, substance, water }, mgPer100g)];
  });
}

/** All substances that are water itself. */
export const waterPart = (book: Book, jar: Composition): Part =>
  sumParts([...jar.substances].filter(([substanceId]) => book.substances.get(substanceId)?.isWater).map(([, held]) => held));

/** Whole mg per 100 g of water at a pH, rounded down: S₀ (1 + 10^(pH − pKa)) for a weak acid, S₀ for all else. */
export function solubilityAt(data: Solubility, at: number): number {
  if (data.pkaX1000 === undefined) return data.neutralMgPer100g;
  return Math.min(MOST_MG_PER_100G, Math.floor(data.neutralMgPer100g * (1 + 10 ** (at - data.pkaX1000 / 1000))));
}

/** found ≤ S × water, exactly. */
const dissolves = (found: Part, water: Part, mgPer100g: number): boolean => found * MG_PER_100G <= BigInt(mgPer100g) * water;

function exceeded(where: { jar: Composition; substance: Substance; water: Part }, mgPer100g: number): Finding {
  const { jar, substance, water } = where;
  const most = part((BigInt(mgPer100g) * water) / MG_PER_100G);
  return finding('solubility-exceeded', substance.id, {
    substanceId: substance.id,
    foundPpm: partToPpm(substancePart(jar, substance.id), jar.whole),
    maxPpm: partToPpm(most, jar.whole),
  });
}
