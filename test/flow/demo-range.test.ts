// Nothing on the demonstration's shelf is dead: every shade and every active sells, on the shop's coarse scale too.
import { describe, expect, it } from 'vitest';
import { openBook } from '#lib/rulebook/book.ts';
import { permittedVariants } from '#lib/variants/permitted.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import { TEST_DAY } from '#test/support/a-demo-book.ts';
import { contextOf, DEMO_RULEBOOK } from '#test/support/examples/ask-example.ts';

const book = openBook(DEMO_RULEBOOK);
const found = permittedVariants(book, TEST_DAY);
const permitted = found.map(({ variant }) => variant);
const { bench } = contextOf(book, { bench: 'coarse', jarSizeId: 'jar-50' });
type Variant = (typeof permitted)[number];
const isMakeable = (variant: Variant): boolean =>
  judgeVariant(book, variant, { day: TEST_DAY, ...(bench ? { bench } : {}) }).verdict.kind === 'permitted';

const actives = DEMO_RULEBOOK.actives.filter(({ role }) => role === 'active').map(({ id }) => id);
const acids = DEMO_RULEBOOK.actives
  .filter(({ role, materialId }) => role === 'active' && book.materials.get(materialId)?.tags.includes('acid'))
  .map(({ id }) => id);
const alone = permitted.filter((variant) => variant.actives.length === 1 && isMakeable(variant));
const shadesWith = (activeId: string): number =>
  new Set(alone.filter((variant) => variant.actives[0]?.activeId === activeId).map(({ shadeId }) => shadeId)).size;
const activesIn = (shadeId: string): number =>
  new Set(alone.filter((variant) => variant.shadeId === shadeId).map((variant) => variant.actives[0]?.activeId)).size;

describe('on the scale of a hundredth of a gram, in 50 g', () => {
  it.each(DEMO_RULEBOOK.shades.map(({ id }) => id))('%s is made plain, and with three or more actives, one at a time', (shadeId) => {
    expect(permitted.some((variant) => variant.shadeId === shadeId && variant.actives.length === 0 && isMakeable(variant))).toBe(true);
    expect(activesIn(shadeId)).toBeGreaterThanOrEqual(3);
  });

  it('the acids are lactic, mandelic and salicylic', () => {
    expect([...acids].sort()).toEqual(['lactic-acid', 'mandelic-acid', 'salicylic-acid']);
  });

  it.each(actives)('%s goes alone into three or more shades', (activeId) => {
    expect(shadesWith(activeId)).toBeGreaterThanOrEqual(3);
  });

  it('every level that is not held back sells in some shade, but for the oatmeal that leaves no powder to a shade: a refusal to show', () => {
    const sold = new Set(permitted.flatMap((variant) => variant.actives.map(({ activeId, levelPpm }) => `${activeId} ${levelPpm}`)));
    const dead = DEMO_RULEBOOK.actives.flatMap(({ id, role, levels }) =>
      role === 'active'
        ? levels.filter((one) => one.permitted && !sold.has(`${id} ${one.levelPpm}`)).map((one) => `${id} ${one.levelPpm}`)
        : [],
    );
    expect(dead).toEqual(['oatmeal 20000']);
  });

  it('three thousand masks or more can be made', () => {
    let makeableCount = 0;
    // By its first plan alone, and no further than is asked: counting all takes long, and more can only be more.
    for (const { plan } of found) {
      if (bench?.(plan).length === 0) makeableCount += 1;
      if (makeableCount === 3_000) break;
    }
    expect(makeableCount).toBe(3_000);
  });
});

it('no clay, colour or active stands among the materials without a stock at the bench', () => {
  const held = new Set(DEMO_RULEBOOK.stocks.flatMap(({ parts }) => parts.map(({ materialId }) => materialId)));
  const base = new Set(DEMO_RULEBOOK.base.parts.map(({ materialId }) => materialId));
  expect(DEMO_RULEBOOK.materials.map(({ id }) => id).filter((id) => !held.has(id) && !base.has(id))).toEqual([]);
});
