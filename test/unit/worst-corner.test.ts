// Which limit decides first and which line gives way, worked out by hand in steps of the scale. The rule is the house's own.
import { describe, expect, it } from 'vitest';
import { massUg } from '#lib/units/mass.ts';
import type { MassLimit } from '#lib/weighing/mass-limit.ts';
import type { CornerLine } from '#lib/weighing/worst-corner.ts';
import { narrowBands } from '#lib/weighing/worst-corner.ts';

const STEP_UG = 10_000;
const steps = (count: number) => massUg(count * STEP_UG);
const line = (lineId: string, lo: number, hi: number): CornerLine => ({
  lineId,
  stepUg: steps(1),
  targetUg: steps(10),
  band: { loUg: steps(lo), hiUg: steps(hi) },
});

/** a + b ≤ most steps, written over any whole: `keel` is a line of one step that makes the room. */
function together(id: string, code: MassLimit['code'], [a, b]: readonly [string, string], most: number, whole = 1n): MassLimit {
  const share = (content: bigint, allowed: bigint) => ({ content: content * whole, allowed: allowed * whole });
  const shares = new Map([
    [a, share(1n, 0n)],
    [b, share(1n, 0n)],
    ['keel', share(0n, BigInt(most))],
  ]);
  return { id, code, basis: 'cap', direction: 'at-most', whole, shares };
}

/** Seven readings each for A and B, five for C. */
const LINES = [line('A', 7, 13), line('B', 7, 13), line('C', 8, 12), { ...line('keel', 1, 1), targetUg: steps(1) }];
const AB = together('z-ab', 'cap-exceeded', ['A', 'B'], 23);
const BC = together('bc', 'law-limit', ['B', 'C'], 23);

const upperEnds = (limits: readonly MassLimit[], lines = LINES): readonly number[] | string => {
  const narrowed = narrowBands(lines, limits);
  return narrowed.ok ? narrowed.value.slice(0, 3).map(({ band }) => band.hiUg / STEP_UG) : narrowed.refusal.limit.id;
};

describe('two limits that share a line', () => {
  // A 13, B 13, C 12: AB is 3 over, BC 2. AB decides; A and B have seven readings each, so A, first on the card: 12.
  // AB 2, BC 2: cap-exceeded comes before law-limit. A six, B seven: B 12.
  // AB 1, BC 1: AB again. Six each: A 11. AB holds.
  // BC 1: B six, C five: B 11. Both hold.
  const BY_HAND = [11, 11, 12];

  it('the most broken first, equals by code; the line with the most readings gives, equals by the card', () => {
    expect(upperEnds([AB, BC])).toEqual(BY_HAND);
  });
  it('whatever order the limits come in', () => expect(upperEnds([BC, AB])).toEqual(BY_HAND));
  it('whatever whole they are written over', () => {
    expect(upperEnds([AB, together('bc', 'law-limit', ['B', 'C'], 23, 1000n)])).toEqual(BY_HAND);
    expect(upperEnds([together('z-ab', 'cap-exceeded', ['A', 'B'], 23, 1000n), BC])).toEqual(BY_HAND);
  });
  it('equals of one code go by id', () => {
    const same = (id: string, pair: readonly [string, string]) => together(id, 'cap-exceeded', pair, 23);
    expect(upperEnds([same('1-ab', ['A', 'B']), same('2-bc', ['B', 'C'])])).toEqual(BY_HAND);
    // Now BC wins the ties. AB 3, BC 2: A 12. Both 2: BC; B seven, C five: B 12. Both 1: BC; B six: B 11. Both hold.
    expect(upperEnds([same('2-ab', ['A', 'B']), same('1-bc', ['B', 'C'])])).toEqual([12, 11, 12]);
  });
});

describe('how far a line gives', () => {
  it('down to three readings with the target among them, and no further', () => {
    // 9 to 13 is five readings; the target is 10. C 11 leaves three: 9, 10, 11.
    const narrow = [line('A', 10, 10), line('B', 10, 10), line('C', 9, 13)];
    const alone = (most: number) => together('c', 'cap-exceeded', ['C', 'none'], most);
    const keel = LINES.slice(3);
    expect(upperEnds([alone(11)], [...narrow, ...keel])).toEqual([10, 10, 11]);
    expect(upperEnds([alone(10)], [...narrow, ...keel])).toBe('c');
  });
});
