// Check 9: does the jar still stand inside what the challenge test proved (ISO 11930 or another method named in the evidence)?
// Additions dilute the preservative, shift the pH and bring powders that adsorb it.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { Composition } from '../composition/compose.ts';
import { substancePart } from '../composition/compose.ts';
import type { Preservative } from '../rulebook/base.ts';
import type { Book } from '../rulebook/book.ts';
import { belowPpm, exceedsPpm, part, partToPpm, WHOLE_PPM } from '../units/share.ts';
import { powderPart, swellingClayPart } from './caps.ts';
import type { JarPh } from './jar-ph.ts';
import { lowerEnd, phBounds, upperEnd } from './jar-ph.ts';
import { undissociatedShare } from './undissociated.ts';

/** Findings of check 9; undecided ones where an acid preservative's pH is not known. */
export function checkPreservation(book: Book, jar: Composition, jarPh: JarPh): readonly Finding[] {
  const { preservatives, testedPowderPpm, testedSwellingClayPpm, evidenceId } = book.rulebook.base.preservation;
  const beyond = (
    code: 'powder-beyond-challenge' | 'swelling-clay-beyond-challenge',
    found: ReturnType<typeof powderPart>,
    maxPpm: number,
  ): readonly Finding[] =>
    exceedsPpm(found, jar.whole, maxPpm) ? [finding(code, evidenceId, { foundPpm: partToPpm(found, jar.whole), maxPpm })] : [];
  return [
    ...preservatives.flatMap((preservative) => [
      ...checkDilution(jar, preservative),
      ...checkPhWindow(preservative, jarPh),
      ...checkUndissociated(jar, preservative, jarPh),
    ]),
    ...beyond('powder-beyond-challenge', powderPart(book, jar), testedPowderPpm),
    ...beyond('swelling-clay-beyond-challenge', swellingClayPart(book, jar), testedSwellingClayPpm),
  ];
}

function checkDilution(jar: Composition, { substanceId, provenMinPpm }: Preservative): readonly Finding[] {
  const found = substancePart(jar, substanceId);
  if (!belowPpm(found, jar.whole, provenMinPpm)) return [];
  return [finding('preservative-too-low', substanceId, { substanceId, foundPpm: partToPpm(found, jar.whole), minPpm: provenMinPpm })];
}

/** A window end that the need tables cannot reach is reported as undecided, not as broken. */
function checkPhWindow({ substanceId, ph }: Preservative, jarPh: JarPh): readonly Finding[] {
  const ends = [lowerEnd(jarPh, ph.minPhX100), upperEnd(jarPh, ph.maxPhX100)];
  if (ends.includes('broken'))
    return [finding('preservative-ph', substanceId, { substanceId, minPhX100: ph.minPhX100, maxPhX100: ph.maxPhX100 })];
  if (!ends.includes('unknown')) return [];
  const bounds = phBounds(jarPh);
  const atPhX100 = ends[0] === 'unknown' ? ph.minPhX100 + jarPh.errorX100 : ph.maxPhX100 - jarPh.errorX100;
  return bounds.kind === 'unknown' ? bounds.findings : [finding('ph-outside-table', 'acidity', { atPhX100 })];
}

/** Only the undissociated acid works; the highest pH that the jar may have leaves the least of it. The share is rounded down to whole ppm. */
function checkUndissociated(jar: Composition, { substanceId, weakAcid }: Preservative, jarPh: JarPh): readonly Finding[] {
  if (!weakAcid) return [];
  const bounds = phBounds(jarPh);
  if (bounds.kind === 'unknown') return bounds.findings;
  const share = BigInt(Math.floor(undissociatedShare(bounds.highest, weakAcid.apparentPkaX1000 / 1000) * WHOLE_PPM));
  const working = part(substancePart(jar, substanceId) * share);
  const whole = part(jar.whole * BigInt(WHOLE_PPM));
  if (!belowPpm(working, whole, weakAcid.minUndissociatedPpm)) return [];
  const facts = { substanceId, foundPpm: partToPpm(working, whole), minPpm: weakAcid.minUndissociatedPpm };
  return [finding('preservative-undissociated', substanceId, facts)];
}
