// The kiosk's words, bound to its language.
import type { Text } from '#app/_ui/text/create-text.ts';
import { createText } from '#app/_ui/text/create-text.ts';
import type { KioskKey } from '#app/_ui/text/kiosk/en.ts';
import { en } from '#app/_ui/text/kiosk/en.ts';
import type { KioskReasonKey } from '#app/_ui/text/kiosk-reasons/en.ts';
import { en as reasonsEn } from '#app/_ui/text/kiosk-reasons/en.ts';

export type KioskText = Text<KioskKey>;

/** One object for good, so that it can stand in the dependencies of an effect. */
const text: KioskText = createText('en', { en });
const reasons: Text<KioskReasonKey> = createText('en', { en: reasonsEn });

export const kioskText = (): KioskText => text;
export const kioskReasonsText = (): Text<KioskReasonKey> => reasons;
