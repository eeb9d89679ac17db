// Axis of a plot that begins at 0: round whole ticks, and places as percentages so that a figure can be any width.

/** Round whole steps (1, 2, 4, 5 × 10ⁿ) that reach the greatest value in at most five. There is no half a jar. */
export function axisTicks(greatest: number): readonly number[] {
  if (greatest <= 0) return [0, 1];
  const rough = Math.max(1, greatest / 4);
  const magnitude = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 4, 5, 10].map((factor) => factor * magnitude).find((candidate) => candidate >= rough) ?? magnitude * 10;
  const count = Math.ceil(greatest / step - 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => Number((index * step).toPrecision(12)));
}

/** Place of a value on an axis that ends at `end`, with room for the number behind the longest bar. */
export const placePercent = (value: number, end: number, room = 100): string => `${((value / end) * room).toFixed(3)}%`;
