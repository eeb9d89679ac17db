// The small rulebook on a fixed day, for tests that want a book with something in it.
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import { sharePpm } from '#lib/units/share.ts';
import { localDay } from '#lib/units/time.ts';
import { smallRulebook } from './small-shop/small-rulebook.ts';

export const TEST_DAY = localDay('2026-11-25');

/** A new document each time: bending it cannot reach another test. */
export const aDemoRulebook = (): Rulebook => smallRulebook(TEST_DAY);

export const aDemoBook = (): Book => openBook(aDemoRulebook());

/** "chalk-down|niacinamide@10000+panthenol@3000" as a variant. */
export function variantFrom(key: string): Variant {
  const [shadeId = '', actives = ''] = key.split('|');
  const chosen = actives === '' ? [] : actives.split('+');
  return {
    shadeId,
    actives: chosen.map((one) => {
      const [activeId = '', level = ''] = one.split('@');
      return { activeId, levelPpm: sharePpm(Number(level)) };
    }),
  };
}
