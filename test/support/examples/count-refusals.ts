// How many variants each check refuses, by asking the verdict of every variant that the rulebook's structure allows: slow, and beyond doubt.

import type { RefusalCount } from '#app/office/examples/example-table.ts';
import type { FindingCode } from '#lib/base/finding.ts';
import { FINDING_CODES } from '#lib/base/finding.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { findingsOf, judgeVariant } from '#lib/verdict/judge.ts';
import { TEST_DAY } from '../a-demo-book.ts';
import { allVariants } from '../all-variants.ts';

/** The variant that a code speaks of with the fewest other reasons, the first of equals. */
export interface Provoked {
  readonly variant: string;
  readonly reasonsCount: number;
}

export interface Counted {
  readonly counts: readonly RefusalCount[];
  readonly provoked: ReadonlyMap<FindingCode, Provoked>;
}

interface Tally {
  variantsCount: number;
  permittedCount: number;
  readonly byCode: Partial<Record<FindingCode, number>>;
  readonly byCheck: Record<string, number>;
  readonly aloneByCheck: Record<string, number>;
}

/** Counts by number of actives, 0 up to the most that are asked for; what stood nearest to a permitted jar says why not. */
export function countRefusals(book: Book, mostActivesCount: number): Counted {
  const tallies = new Map<number, Tally>();
  const provoked = new Map<FindingCode, Provoked>();
  for (const variant of allVariants(book)) {
    const activesCount = variant.actives.length;
    if (activesCount > mostActivesCount) continue;
    const tally = tallies.get(activesCount) ?? { variantsCount: 0, permittedCount: 0, byCode: {}, byCheck: {}, aloneByCheck: {} };
    tallies.set(activesCount, tally);
    add(tally, book, variant, provoked);
  }
  return { counts: [...tallies].map(([activesCount, tally]) => ({ activesCount, ...tally })), provoked };
}

function add(tally: Tally, book: Book, variant: Variant, provoked: Map<FindingCode, Provoked>): void {
  tally.variantsCount += 1;
  const { verdict } = judgeVariant(book, variant, { day: TEST_DAY });
  if (verdict.kind === 'permitted') tally.permittedCount += 1;
  const findings = findingsOf(verdict);
  const codes = new Set(findings.map((found) => found.code));
  const checks = new Set([...codes].map((code) => String(FINDING_CODES[code].check)));
  for (const code of codes) {
    tally.byCode[code] = (tally.byCode[code] ?? 0) + 1;
    const before = provoked.get(code);
    if (!before || findings.length < before.reasonsCount)
      provoked.set(code, { variant: variantKey(variant), reasonsCount: findings.length });
  }
  for (const check of checks) {
    tally.byCheck[check] = (tally.byCheck[check] ?? 0) + 1;
    if (checks.size === 1) tally.aloneByCheck[check] = (tally.aloneByCheck[check] ?? 0) + 1;
  }
}
