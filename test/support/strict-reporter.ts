// Counts what vitest ran and writes it where run-all.ts reads it. A skipped or retried test is counted apart, since neither may be.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Reporter, TestCase } from 'vitest/node';

export type Totals = { passed: number; failed: number; skipped: number; retried: number };

export default class StrictReporter implements Reporter {
  private readonly totals: Totals = { passed: 0, failed: 0, skipped: 0, retried: 0 };

  onTestCaseResult(test: TestCase): void {
    const { state } = test.result();
    if (state === 'passed' || state === 'failed' || state === 'skipped') this.totals[state] += 1;
    if ((test.diagnostic()?.retryCount ?? 0) > 0) this.totals.retried += 1;
  }

  /** A file that could not be loaded, or an error outside any test, counts as a failure. */
  onTestRunEnd(modules: Parameters<NonNullable<Reporter['onTestRunEnd']>>[0], errors: readonly unknown[]): void {
    const broken = modules.filter((module) => module.errors().length > 0).length;
    this.totals.failed += broken + errors.length;
    const file = process.env.JARWRIGHT_TOTALS;
    if (!file) return;
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, JSON.stringify(this.totals));
  }
}
