// What a customer of the demonstration shop had to tick, or is asked to try first, goes home on the jar.
import { expect, test } from 'vitest';
import { demoRulebook } from '#app/_cli/demo/rulebook/demo-rulebook.ts';
import { TEST_DAY } from '#test/support/a-demo-book.ts';

const { cautions, texts } = demoRulebook(TEST_DAY);

test('every caution that must be ticked, and to try a little first, is printed on labels', () => {
  const owed = cautions.filter((caution) => caution.mustTick || caution.id === 'try-first');
  expect(owed.map((caution) => caution.id)).toContain('try-first');
  expect(owed.length).toBeGreaterThan(2);
  for (const { id, places, labelTextId } of owed) {
    expect(places, id).toContain('label');
    expect(texts.en?.[labelTextId ?? ''], id).toMatch(/\S/);
  }
});
