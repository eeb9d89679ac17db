// A column takes and gives only what its unit allows.

import type { Column } from 'drizzle-orm';
import { describe, expect, test } from 'vitest';
import { jar, lotUse } from '#db/schema-bench.ts';
import { edition } from '#db/schema-editions.ts';
import { lot } from '#db/schema-lots.ts';
import { customerOrder } from '#db/schema-orders.ts';
import { benchCheck } from '#db/schema-release.ts';

const given = (column: Column, value: unknown) => () => column.mapToDriverValue(value);
const found = (column: Column, value: unknown) => () => column.mapFromDriverValue(value);

describe.each([
  ['a mass', jar.tareUg, [1.5, -1, Number.NaN, 2 ** 53]],
  ['a difference of masses', lotUse.leftMassUg, [0.5, Number.POSITIVE_INFINITY]],
  ['a pH', benchCheck.phX100, [1401, -1, 7.25]],
  ['a price', customerOrder.priceMinor, [-1, 0.01]],
  ['a week', customerOrder.isoWeek, [202_600, 202_654, 48.5]],
  ['a day', customerOrder.localDay, ['2026-02-29', '26-02-01', 'today']],
  ['an instant', customerOrder.placedAtMs, [-1, 0.5]],
  ['an id', customerOrder.id, ['', '01930000-0000-4000-8000-000000000001', '01930000-0000-7000-8000-00000000000G']],
  ['a hash', customerOrder.editionHash, ['', 'A'.repeat(64), 'a'.repeat(63)]],
  ['a kind', lot.kind, ['', 'lid']],
  ['a plan', customerOrder.plan, ['{}', '{"variant":{"shadeId":"a","actives":[]},"adjuster":null,"lines":[],"extra":1}']],
  ['an exact count', edition.variantsCount, ['-1', '1.5', '', '01']],
] as const)('%s', (_, column, wrongs) => {
  test.each(wrongs.map((wrong) => [wrong]))('%s does not come out', (wrong) => {
    expect(found(column, wrong)).toThrow();
  });
});

describe.each([
  ['a mass', jar.tareUg, 1.5],
  ['a pH', benchCheck.phX100, 1401],
  ['a day', customerOrder.localDay, '2026-02-29'],
  ['an id', customerOrder.id, 'seven'],
  ['a plan', customerOrder.plan, { variant: {} }],
] as const)('%s', (_, column, wrong) => {
  test('does not go in either', () => expect(given(column, wrong)).toThrow());
});

test('a flag is 0 or 1 at rest', () => {
  const { wasPersonalCautionShown } = customerOrder;
  expect([true, false].map((value) => given(wasPersonalCautionShown, value)())).toEqual([1, 0]);
  expect(found(wasPersonalCautionShown, 2)).toThrow(/flag/);
});

test('a plan is stored as canonical JSON', () => {
  const plan = { lines: [], adjuster: null, variant: { shadeId: 'chalk', actives: [] } };
  expect(given(customerOrder.plan, plan)()).toBe('{"adjuster":null,"lines":[],"variant":{"actives":[],"shadeId":"chalk"}}');
});

test('an exact count passes 2^53 unharmed', () => {
  expect(found(edition.variantsCount, '12345678901234567890')()).toBe(12_345_678_901_234_567_890n);
  expect(given(edition.variantsCount, 12_345_678_901_234_567_890n)()).toBe('12345678901234567890');
});
