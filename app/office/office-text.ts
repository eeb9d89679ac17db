// The office's words, bound to its language.
import type { Text } from '#app/_ui/text/create-text.ts';
import { createText } from '#app/_ui/text/create-text.ts';
import type { OfficeKey } from '#app/_ui/text/office/en.ts';
import { en } from '#app/_ui/text/office/en.ts';

export type OfficeText = Text<OfficeKey>;

export const officeText = (): OfficeText => createText('en', { en });
