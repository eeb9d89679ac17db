// Check 3: every two materials that meet in the jar, carriers and base parts included. What nobody judged acts as never.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { JarPh } from '../chemistry/jar-ph.ts';
import type { Composition } from '../composition/compose.ts';
import { materialPart } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { addParts, exceedsPpm, partToPpm } from '../units/share.ts';
import type { PairRuling } from './pair-verdict.ts';
import { isPairAdded, pairRulings } from './pair-verdict.ts';
import { countsAgainst } from './ph-condition.ts';
import type { CautionOwed } from './verdict.ts';

export interface PairCheck {
  readonly findings: readonly Finding[];
  readonly cautions: readonly CautionOwed[];
}

export function checkPairs(book: Book, jar: Composition, jarPh: JarPh): PairCheck {
  const findings: Finding[] = [];
  const cautions: CautionOwed[] = [];
  for (const [a, b] of meetings(jar)) {
    const rulings = pairRulings(book, a, b, isPairAdded(jar, a, b));
    if (rulings === 'judged-with-the-base') continue;
    if (rulings.length === 0) findings.push(finding('pair-not-judged', 'pairs', { firstMaterialId: a, secondMaterialId: b }));
    for (const ruling of rulings) {
      findings.push(...rulingFindings(jar, jarPh, ruling));
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

function rulingFindings(jar: Composition, jarPh: JarPh, ruling: PairRuling): readonly Finding[] {
  const { ruleId, firstMaterialId, secondMaterialId } = ruling;
  if (ruling.verdict === 'never') return [finding('pair-never', ruleId, { firstMaterialId, secondMaterialId })];
  return ruling.verdict === 'limit' && ruling.limit ? limitFindings(jar, jarPh, ruling) : [];
}

function limitFindings(jar: Composition, jarPh: JarPh, ruling: PairRuling): readonly Finding[] {
  const { ruleId, firstMaterialId, secondMaterialId, limit = {} } = ruling;
  const pair = { firstMaterialId, secondMaterialId };
  const first = materialPart(jar, firstMaterialId);
  const second = materialPart(jar, secondMaterialId);
  const over = (
    code: 'pair-limit-sum' | 'pair-limit-first' | 'pair-limit-second',
    found: typeof first,
    maxPpm: number | undefined,
  ): Finding[] =>
    maxPpm !== undefined && exceedsPpm(found, jar.whole, maxPpm)
      ? [finding(code, ruleId, { ...pair, foundPpm: partToPpm(found, jar.whole), maxPpm })]
      : [];
  const { minPhX100 = null, maxPhX100 = null } = limit;
  return [
    ...over('pair-limit-sum', addParts(first, second), limit.maxSumPpm),
    ...over('pair-limit-first', first, limit.maxFirstPpm),
    ...over('pair-limit-second', second, limit.maxSecondPpm),
    ...(countsAgainst(jarPh, minPhX100, maxPhX100) ? [finding('pair-limit-ph', ruleId, { ...pair, minPhX100, maxPhX100 })] : []),
  ];
}
