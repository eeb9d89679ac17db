// Check 10: powders go into oil before they meet water; dropped into finished cream they clump. Is there oil enough to wet them?
// Oil absorption (ISO 787-5) ends at a stiff putty, so a spare is multiplied on.

import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import { invariant } from '../base/invariant.ts';
import type { Composition } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Material } from '../rulebook/material.ts';
import type { Part } from '../units/share.ts';
import { part, partToPpm, WHOLE_PPM } from '../units/share.ts';

const MG_PER_100G = 100_000n;

export interface Wetting {
  /** Both in parts of `whole`, which is finer than the jar's own. */
  readonly needed: Part;
  readonly available: Part;
  readonly whole: Part;
}

/** Anything that must be wetted: pigments are powders too, wherever a blend or premix hides them. */
export const isInsolublePowder = (material: Material): boolean => material.kind === 'insoluble-powder' || material.kind === 'pigment';

/** Σ share of insoluble powder in the additions × oil absorption / 100 × spare, against wetting oil and oil-borne stocks, exactly. */
export function wettingOf(book: Book, jar: Composition): Wetting {
  const spare = BigInt(book.rulebook.house.wettingSparePpm);
  const grain = MG_PER_100G * BigInt(WHOLE_PPM);
  const absorbed = [...jar.additionMaterials].reduce(
    (sum, [materialId, held]) => sum + held * absorption(need(book.materials, materialId)),
    0n,
  );
  return { needed: part(absorbed * spare), available: part(jar.pasteOil * grain), whole: part(jar.whole * grain) };
}

function absorption(material: Material): bigint {
  if (!isInsolublePowder(material)) return 0n;
  invariant(material.oilAbsorptionMgPer100g !== undefined, `powder without oil absorption: ${material.id}`);
  return BigInt(material.oilAbsorptionMgPer100g);
}

/** Findings of check 10. */
export function checkWetting(book: Book, jar: Composition): readonly Finding[] {
  const { needed, available, whole } = wettingOf(book, jar);
  if (needed <= available) return [];
  return [finding('wetting-short', 'wetting', { neededPpm: partToPpm(needed, whole), availablePpm: partToPpm(available, whole) })];
}
