import { findMasks } from '#app/_flows/find-masks.ts';
import { maskView } from '#app/_flows/mask-view.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { sealVariant } from '#app/_server/variant-token.ts';
import { masksInputSchema, masksOutputSchema } from '#lib/contracts/kiosk.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['anyone'],
  input: masksInputSchema,
  output: masksOutputSchema,
  refusalStatus: { 'edition-moved': 409 },
  handle: (context, asked) => {
    const found = findMasks(toFlow(context), asked);
    if (!found.ok) return found;
    if (found.value.kind === 'outcome') return { ok: true, ...found.value } as const;
    const { book, person, masks, noActiveFits } = found.value;
    const lang = book.rulebook.languages[0] ?? 'en';
    return {
      ok: true,
      kind: 'masks',
      noActiveFits,
      masks: masks.map((mask) => ({ token: sealVariant(context.services, asked.editionHash, mask.variant), ...maskView(book, lang, person, mask) })),
    } as const;
  },
});
