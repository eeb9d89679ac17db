// The scale for jar and lid, empty and full: of those that the card uses, which were checked today, the one that bears most.
import { invariant } from '#lib/base/invariant.ts';
import type { Card } from '#lib/weighing/card.ts';
import type { BenchScale } from '#lib/weighing/scale.ts';

/** One for both weighings, so that what it errs by is the same in both. Equal capacities: the finer. */
export function jarScale({ lines }: Card): BenchScale {
  const [scale] = lines.map((line) => line.scale).sort((a, b) => b.capacityUg - a.capacityUg || a.stepUg - b.stepUg);
  invariant(scale, 'a card has lines');
  return scale;
}
