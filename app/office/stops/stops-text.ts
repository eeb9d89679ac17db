// Words of the stops, bound to their language.
import type { Text } from '#app/_ui/text/create-text.ts';
import { createText } from '#app/_ui/text/create-text.ts';
import type { StopsKey } from '#app/_ui/text/stops/en.ts';
import { en } from '#app/_ui/text/stops/en.ts';

export const stopsText = (): Text<StopsKey> => createText('en', { en });
