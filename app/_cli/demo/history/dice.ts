// Chance for the demonstration's past: the same seed throws the same dice for ever, so that the past is the same on every machine.

export interface Dice {
  /** From 0 up to, not including, 1. */
  readonly roll: () => number;
  readonly chance: (probability: number) => boolean;
  /** A whole number, both ends included. */
  readonly between: (least: number, most: number) => number;
  readonly pick: <T>(from: readonly T[]) => T;
  readonly weighted: <T>(from: readonly (readonly [T, number])[]) => T;
}

/** A linear congruential generator modulo 2^32 with the multiplier and increment of Numerical Recipes (from memory): ample for telling a story. */
export function makeDice(seed: number): Dice {
  let state = seed >>> 0;
  const roll = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  const weighted = <T>(from: readonly (readonly [T, number])[]): T => {
    const [last] = from.slice(-1);
    if (!last) throw new RangeError('nothing to choose from');
    let left = roll() * from.reduce((sum, [, weight]) => sum + weight, 0);
    for (const [item, weight] of from) {
      left -= weight;
      if (left < 0) return item;
    }
    return last[0];
  };
  return {
    roll,
    chance: (probability) => roll() < probability,
    between: (least, most) => least + Math.floor(roll() * (most - least + 1)),
    pick: (from) => weighted(from.map((item) => [item, 1])),
    weighted,
  };
}
