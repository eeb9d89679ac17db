// Words for the ways out of an order, bound to the bench's language.
import type { BenchWaysKey } from '#app/_ui/text/bench-ways/en.ts';
import { en } from '#app/_ui/text/bench-ways/en.ts';
import type { Text } from '#app/_ui/text/create-text.ts';
import { createText } from '#app/_ui/text/create-text.ts';

const text: Text<BenchWaysKey> = createText('en', { en });

export const waysText = (): Text<BenchWaysKey> => text;
