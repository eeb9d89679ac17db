// The demonstration is a shop that could trade: sound, varied, and refused for every reason that a choice can meet.
import { describe, expect, it } from 'vitest';
import { demoRulebook } from '#app/_cli/demo/rulebook/demo-rulebook.ts';
import { missingRows } from '#lib/law/missing-rows.ts';
import { openBook } from '#lib/rulebook/book.ts';
import { checkRulebook } from '#lib/rulebook/check-rulebook.ts';
import { countVariants } from '#lib/variants/permitted.ts';
import { TEST_DAY } from '#test/support/a-demo-book.ts';

const rulebook = demoRulebook(TEST_DAY);

describe('the demonstration', () => {
  it('is sound, and its warnings are known: what one market restricts and the other does not', () => {
    const faults = checkRulebook(rulebook, TEST_DAY);
    expect(faults.filter((fault) => fault.weight === 'error')).toEqual([]);
    expect(faults.map(({ code, facts }) => [code, ...Object.values(facts)].join(' ')).sort()).toEqual([
      'no-limit-row phenoxyethanol US',
      'no-limit-row salicylic-acid US',
      'no-limit-row zinc-pca US',
    ]);
  });

  it('has a row for everything that the law restricts in its markets', () => expect(missingRows(rulebook, TEST_DAY)).toEqual([]));

  it('is as large as a real house', () => {
    expect(rulebook.materials.length).toBeGreaterThanOrEqual(30);
    expect(rulebook.shades.length).toBe(14);
    expect(rulebook.actives.filter(({ role }) => role === 'active').length).toBe(18);
    expect(rulebook.jarSizes.length).toBe(3);
  });

  it('permits thousands of variants', () => {
    expect(countVariants(openBook(rulebook), TEST_DAY)).toBeGreaterThanOrEqual(3000);
  });
});
