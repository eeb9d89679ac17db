// Check 7: what the base tolerates at most, over the whole jar: what it brings itself counts too.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { Composition } from '../composition/compose.ts';
import type { CapName } from '../rulebook/base.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Material } from '../rulebook/material.ts';
import type { Ph } from '../units/chemistry.ts';
import type { Part } from '../units/share.ts';
import { part, partToPpm, sumParts, WHOLE_PPM } from '../units/share.ts';
import type { JarPh } from './jar-ph.ts';
import { phBounds } from './jar-ph.ts';
import { undissociatedShare } from './undissociated.ts';
import { isInsolublePowder } from './wetting.ts';

const PPM = BigInt(WHOLE_PPM);

/** All insoluble powder of the jar, pigments included. */
export const powderPart = (book: Book, jar: Composition): Part => materialsPart(book, jar, isInsolublePowder);

export const swellingClayPart = (book: Book, jar: Composition): Part =>
  materialsPart(book, jar, (material) => material.classes.includes('swelling-clay'));

export const pigmentPart = (book: Book, jar: Composition): Part => materialsPart(book, jar, (material) => material.kind === 'pigment');

/** Σ part × units per ppm; load in units = this × 10^6 / whole. */
export const ionicLoad = (book: Book, jar: Composition): Part => loadPart(book, jar, (material) => material.ionicUnitsPerPpm);

/** Σ part × units per ppm; load in units = this × 10^6 / whole. */
export const irritancyLoad = (book: Book, jar: Composition): Part => loadPart(book, jar, (material) => material.irritancyUnitsPerPpm);

/** Undissociated share of an acid at a pH, in whole ppm rounded up. */
export const freeSharePpm = (at: Ph, pkaX1000: number): number =>
  Math.min(WHOLE_PPM, Math.ceil(undissociatedShare(at, pkaX1000 / 1000) * WHOLE_PPM));

/** Free acid at a pH: Σ part × undissociated share, each share in whole ppm rounded up. A salt counts when its substance carries `acid` too. */
export function freeAcidPart(book: Book, jar: Composition, at: Ph): Part {
  return sumParts(acidParts(book, jar).map(([pkaX1000, held]) => part((held * BigInt(freeSharePpm(at, pkaX1000)) + PPM - 1n) / PPM)));
}

/** Findings of check 7, in the order of the caps. */
export function checkCaps(book: Book, jar: Composition, jarPh: JarPh): readonly Finding[] {
  const caps = book.rulebook.base.caps;
  const over = (cap: CapName, found: Part): readonly Finding[] =>
    found * PPM > BigInt(caps[cap]) * jar.whole
      ? [finding('cap-exceeded', cap, { cap, foundUnits: partToPpm(found, jar.whole), maxUnits: caps[cap] })]
      : [];
  return [
    ...over('powderPpm', powderPart(book, jar)),
    ...over('swellingClayPpm', swellingClayPart(book, jar)),
    ...over('pigmentPpm', pigmentPart(book, jar)),
    ...over('ionicUnits', ionicLoad(book, jar)),
    ...over('irritancyUnits', irritancyLoad(book, jar)),
    ...freeAcidFindings(book, jar, { jarPh, over }),
  ];
}

/** The lowest pH that the jar may have leaves the most free acid. Acid that would pass even undissociated needs no pH. */
function freeAcidFindings(
  book: Book,
  jar: Composition,
  { jarPh, over }: { jarPh: JarPh; over: (cap: CapName, found: Part) => readonly Finding[] },
): readonly Finding[] {
  if (over('freeAcidPpm', acidPart(book, jar)).length === 0) return [];
  const bounds = phBounds(jarPh);
  return bounds.kind === 'unknown' ? bounds.findings : over('freeAcidPpm', freeAcidPart(book, jar, bounds.lowest));
}

/** All acid of the jar, dissociated or not. */
export const acidPart = (book: Book, jar: Composition): Part => sumParts(acidParts(book, jar).map(([, held]) => held));

const acidParts = (book: Book, jar: Composition): readonly (readonly [number, Part])[] =>
  [...jar.substances].flatMap(([substanceId, held]) => {
    const acid = need(book.substances, substanceId).acid;
    return acid ? [[acid.pkaX1000, held] as const] : [];
  });

const materialsPart = (book: Book, jar: Composition, counts: (material: Material) => boolean): Part =>
  sumParts([...jar.materials].filter(([materialId]) => counts(need(book.materials, materialId))).map(([, held]) => held));

const loadPart = (book: Book, jar: Composition, unitsOf: (material: Material) => number): Part =>
  sumParts([...jar.materials].map(([materialId, held]) => part(held * BigInt(unitsOf(need(book.materials, materialId))))));
