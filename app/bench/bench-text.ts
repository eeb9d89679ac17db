// The bench's words, bound to its language, and the names of what is weighed.

import type { BenchKey } from '#app/_ui/text/bench/en.ts';
import { en } from '#app/_ui/text/bench/en.ts';
import type { Text } from '#app/_ui/text/create-text.ts';
import { createText } from '#app/_ui/text/create-text.ts';
import { assertNever } from '#lib/base/invariant.ts';
import type { BenchLineName } from '#lib/contracts/bench-view.ts';

export type BenchText = Text<BenchKey>;

/** One object for good, so that it can stand in the dependencies of an effect. */
const text: BenchText = createText('en', { en });

export const benchText = (): BenchText => text;

/** As the bench writes it, with raised letters where two stocks look alike. */
export function shownName(line: BenchLineName): string {
  return line.kind === 'stock' ? (line.lookAlikeName ?? line.name) : spokenName(line);
}

/** As it is said. */
export function spokenName(line: BenchLineName): string {
  switch (line.kind) {
    case 'stock':
      return line.name;
    case 'cream':
      return text.t('line-cream', { code: line.baseCode });
    case 'wetting-oil':
      return text.t('line-oil');
    default:
      return assertNever(line);
  }
}
