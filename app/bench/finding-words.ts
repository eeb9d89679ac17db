// A finding in words for the bench. Every code has a sentence, or this does not compile.

import type { BenchFindingKey } from '#app/_ui/text/bench-findings/en.ts';
import { en } from '#app/_ui/text/bench-findings/en.ts';
import { createText } from '#app/_ui/text/create-text.ts';
import type { FindingCode } from '#lib/base/finding.ts';

const text = createText<BenchFindingKey, 'en'>('en', { en });

export const findingWords = (code: FindingCode): string => text.t(code);
