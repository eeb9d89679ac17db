// Words of the examples, bound to their language.
import type { Text } from '#app/_ui/text/create-text.ts';
import { createText } from '#app/_ui/text/create-text.ts';
import type { ExamplesKey } from '#app/_ui/text/examples/en.ts';
import { en } from '#app/_ui/text/examples/en.ts';

export type ExamplesText = Text<ExamplesKey>;

export const examplesText = (): ExamplesText => createText('en', { en });
