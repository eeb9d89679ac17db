// Check 3: every two materials that meet in the jar, carriers and base parts included. What nobody judged acts as never.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import { phMayTouch } from '../chemistry/ph-check.ts';
import type { Composition } from '../composition/compose.ts';
import { materialPart } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { addParts, exceedsPpm, partToPpm } from '../units/share.ts';
import type { PairRuling } from './pair-verdict.ts';
import { pairRulings } from './pair-verdict.ts';
import type { CautionOwed } from './verdict.ts';

export interface PairCheck {
  readonly findings: readonly Finding[];
  readonly cautions: readonly CautionOwed[];
}

export function checkPairs(book: Book, jar: Composition): PairCheck {
  const findings: Finding[] = [];
  const cautions: CautionOwed[] = [];
  for (const [a, b] of meetings(jar)) {
    const rulings = pairRulings(book, a, b);
    if (rulings === 'judged-with-the-base') continue;
    if (rulings.length === 0) findings.push(finding('pair-not-judged', 'pairs', { firstMaterialId: a, secondMaterialId: b }));
    for (const ruling of rulings) {
      findings.push(...rulingFindings(book, jar, ruling));
      if (ruling.verdict === 'caution' && ruling.cautionId) cautions.push({ cautionId: ruling.cautionId, ruleId: ruling.ruleId });
    }
  }
  return { findings, cautions };
}

/** Unordered pairs of materials, in text order, so that findings come in one order whatever the plan's. */
function meetings(jar: Composition): readonly (readonly [string, string])[] {
  const ids = [...jar.materials.keys()].sort();
  return ids.flatMap((a, index) => ids.slice(index + 1).map((b) => [a, b] as const));
}

function rulingFindings(book: Book, jar: Composition, ruling: PairRuling): readonly Finding[] {
  const { ruleId, firstMaterialId, secondMaterialId } = ruling;
  if (ruling.verdict === 'never') return [finding('pair-never', ruleId, { firstMaterialId, secondMaterialId })];
  return ruling.verdict === 'limit' && ruling.limit ? limitFindings(book, jar, ruling) : [];
}

/** The limits of a judged pair; asked again of the jar as weighed. */
export function limitFindings(book: Book, jar: Composition, ruling: PairRuling): readonly Finding[] {
  const { ruleId, firstMaterialId, secondMaterialId, limit = {} } = ruling;
  const pair = { firstMaterialId, secondMaterialId };
  const first = materialPart(jar, firstMaterialId);
  const second = materialPart(jar, secondMaterialId);
  const over = (code: 'pair-limit-sum' | 'pair-limit-first' | 'pair-limit-second', found: typeof first, maxPpm: number | undefined): Finding[] =>
    maxPpm !== undefined && exceedsPpm(found, jar.whole, maxPpm)
      ? [finding(code, ruleId, { ...pair, foundPpm: partToPpm(found, jar.whole), maxPpm })]
      : [];
  const { minPhX100 = null, maxPhX100 = null } = limit;
  const asksPh = minPhX100 !== null || maxPhX100 !== null;
  return [
    ...over('pair-limit-sum', addParts(first, second), limit.maxSumPpm),
    ...over('pair-limit-first', first, limit.maxFirstPpm),
    ...over('pair-limit-second', second, limit.maxSecondPpm),
    ...(asksPh && phMayTouch(book, jar, minPhX100, maxPhX100) ? [finding('pair-limit-ph', ruleId, { ...pair, minPhX100, maxPhX100 })] : []),
  ];
}
