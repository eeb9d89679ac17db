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
  return line.kind === 'stock' ? joined(line.lookAlikeName ?? line.name) : spokenName(line);
}

/** A number and its percent sign stay on one line. */
const joined = (name: string): string => name.replaceAll(' %', '\u00a0%');

/** As it is said. */
export function spokenName(line: BenchLineName): string {
  switch (line.kind) {
    case 'stock':
      return joined(line.name);
    case 'cream':
      return text.t('line-cream', { code: line.baseCode });
    case 'wetting-oil':
      return text.t('line-oil');
    default:
      return assertNever(line);
  }
}

/** A pH with both decimals, as the meter shows it. */
export const phDigits = (phX100: number): string => (phX100 / 100).toFixed(2).replace('.', text.decimalSign);
