// Whatever can happen happens in the demonstration: every reason for a no, every end of a visit, every caution and every kind of card has a
// request in the table that the office opens, and each request still brings it about.
import { describe, expect, it } from 'vitest';
import { EXAMPLES } from '#app/office/examples/examples.data.ts';
import type { FindingCode } from '#lib/base/finding.ts';
import { FINDING_CODES } from '#lib/base/finding.ts';
import { openBook } from '#lib/rulebook/book.ts';
import { OUTCOMES } from '#lib/rulebook/questionnaire.ts';
import { countVariants } from '#lib/variants/permitted.ts';
import { findingsOf } from '#lib/verdict/judge.ts';
import { TEST_DAY } from '#test/support/a-demo-book.ts';
import { bookOf, cardOf, DEMO_RULEBOOK, personOf, verdictOf } from '#test/support/examples/ask-example.ts';
import { CARD_BRANCHES } from '#test/support/examples/card-branches.ts';
import { countRefusals } from '#test/support/examples/count-refusals.ts';
import { masksFor, rulebookSha256 } from '#test/support/examples/make-examples.ts';

const book = openBook(DEMO_RULEBOOK);
const ids = (rows: readonly { readonly id: string }[]): readonly string[] => rows.map(({ id }) => id).sort();

it('the table was made from the rules as they are; else run test/support/examples/write-examples.ts', () => {
  expect(EXAMPLES.rulebookSha256).toBe(rulebookSha256());
});

describe('reasons for a no', () => {
  it('each has an example', () => expect(ids(EXAMPLES.findings)).toEqual(Object.keys(FINDING_CODES).sort()));

  it.each(EXAMPLES.findings.map((example) => [example.id, example] as const))('%s', (code, { request, facts }) => {
    const found = findingsOf(verdictOf(request).verdict).filter((one) => one.code === code);
    expect(found.map((one) => one.facts)).toContainEqual(facts);
  });
});

describe('ends of a visit', () => {
  it('each has an example', () => expect(ids(EXAMPLES.outcomes)).toEqual([...OUTCOMES, 'one', 'no-active'].sort()));

  it.each(EXAMPLES.outcomes.map((example) => [example.id, example] as const))('%s', (id, { request }) => {
    if (id === 'one') expect(masksFor(request)).toEqual({ count: 1, noActiveFits: true });
    else if (id === 'none') expect(masksFor(request).count).toBe(0);
    else if (id === 'no-active') expect(masksFor(request).noActiveFits).toBe(true);
    else expect(personOf(DEMO_RULEBOOK, request).outcomes[0]).toBe(id);
  });
});

describe('cautions', () => {
  it('each has an example', () => expect(ids(EXAMPLES.cautions)).toEqual(ids(DEMO_RULEBOOK.cautions)));

  it.each(EXAMPLES.cautions.map((example) => [example.id, example] as const))('%s', (id, { request, text }) => {
    const { verdict } = verdictOf(request);
    const owed = [...(verdict.kind === 'permitted' ? verdict.cautions : []), ...personOf(DEMO_RULEBOOK, request).cautions];
    expect(owed.map(({ cautionId }) => cautionId)).toContain(id);
    expect(text).toMatch(/\w/);
  });
});

describe('mixing cards', () => {
  it('each way in which they differ has an example', () => expect(ids(EXAMPLES.card)).toEqual(ids(CARD_BRANCHES)));

  it.each(EXAMPLES.card.map((example) => [example.id, example] as const))('%s', (id, { request }) => {
    const { plan, verdict } = verdictOf(request);
    expect(verdict.kind).toBe('permitted');
    if (plan) expect(CARD_BRANCHES.find((branch) => branch.id === id)?.holds(cardOf(request, plan), bookOf(request))).toBe(true);
    expect(plan).not.toBeNull();
  });
});

describe('counts', () => {
  const { counts } = EXAMPLES;
  const sum = (of: (count: (typeof counts)[number]) => number): number => counts.reduce((total, one) => total + of(one), 0);
  /** Checks that a mask of the rulebook's own parts can fail. Its exposure (12) is too much only for whoever uses it on a larger area. */
  const ofTheRules = ['2', '3', '4', '5', '6', '7', '8', '9', '10', '11'];

  it('with none and with one active are as counted again', () => {
    expect(counts.slice(0, 2)).toEqual(countRefusals(book, 1).counts);
  });

  it('a larger area is refused by the exposure alone', () => {
    const example = EXAMPLES.findings.find(({ id }) => id === 'exposure-margin');
    expect(example?.request.says?.where).toHaveLength(1);
    expect(findingsOf(verdictOf({ ...example?.request, says: {} }).verdict)).toEqual([]);
  });

  it('cover every set of actives at every level, for every shade', () => {
    const levels = DEMO_RULEBOOK.actives.filter(({ role }) => role === 'active').map((active) => active.levels.length);
    // Σ over sets of k actives of the product of their numbers of levels: the elementary symmetric sums.
    const sets = levels.reduce<readonly number[]>(
      (sums, count) => sums.map((value, k) => value + (k === 0 ? 0 : (sums[k - 1] ?? 0) * count)),
      [1, ...Array<number>(DEMO_RULEBOOK.base.mostActivesCount).fill(0)],
    );
    expect(counts.map(({ variantsCount }) => variantsCount)).toEqual(sets.map((count) => count * DEMO_RULEBOOK.shades.length));
  });

  it('permit as many as the index counts, at least three thousand', () => {
    const permitted = sum(({ permittedCount }) => permittedCount);
    expect(permitted).toBe(countVariants(book, TEST_DAY));
    expect(permitted).toBeGreaterThanOrEqual(3_000);
  });

  it.each(ofTheRules)('check %s refuses some and not all', (check) => {
    const refused = sum(({ byCheck }) => byCheck[check] ?? 0);
    expect(refused).toBeGreaterThan(0);
    expect(refused).toBeLessThan(sum(({ variantsCount }) => variantsCount));
  });

  it('every code that stands on the mask alone is met by some mask of the rules as they are', () => {
    const met = new Set(counts.flatMap(({ byCode }) => Object.keys(byCode)));
    const plain = EXAMPLES.findings.filter(({ id, request }) => FINDING_CODES[id].check <= 12 && !request.changes && !request.says);
    const foreign: readonly FindingCode[] = ['unknown-shade', 'unknown-active', 'unknown-level', 'too-many-actives', 'repeated-part'];
    expect(plain.filter(({ id }) => !met.has(id)).map(({ id }) => id)).toEqual(foreign);
  });
});
