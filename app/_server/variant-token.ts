// A variant as the kiosk names it: sealed, and worth nothing under another edition.

import { variantSchema } from '#lib/contracts/variant.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import { sealerOf } from './sealer-of.ts';
import type { Services } from './services.ts';

export const sealVariant = (services: Services, editionHash: string, variant: Variant): string =>
  sealerOf(services).seal(editionHash, JSON.stringify(variant));

/** Null for a token that this shop did not make for this edition. */
export function openVariant(services: Services, editionHash: string, token: string): Variant | null {
  const text = sealerOf(services).open(editionHash, token);
  return text === null ? null : variantSchema.parse(JSON.parse(text));
}
