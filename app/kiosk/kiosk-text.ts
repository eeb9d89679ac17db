// The kiosk's words, bound to its language.
import type { Text } from '#app/_ui/text/create-text.ts';
import { createText } from '#app/_ui/text/create-text.ts';
import type { KioskKey } from '#app/_ui/text/kiosk/en.ts';
import { en } from '#app/_ui/text/kiosk/en.ts';

export type KioskText = Text<KioskKey>;

export const kioskText = (): KioskText => createText('en', { en });
