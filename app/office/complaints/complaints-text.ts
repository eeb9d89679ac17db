// Words of the complaints, bound to their language.

import type { ComplaintsKey } from '#app/_ui/text/complaints/en.ts';
import { en } from '#app/_ui/text/complaints/en.ts';
import type { Text } from '#app/_ui/text/create-text.ts';
import { createText } from '#app/_ui/text/create-text.ts';

export type ComplaintsText = Text<ComplaintsKey>;

export const complaintsText = (): ComplaintsText => createText('en', { en });
