import { whyNotOthers } from '#app/_flows/why-not.ts';
import { whyNotRows } from '#app/_flows/why-not-rows.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { openVariant } from '#app/_server/variant-token.ts';
import { whyNotInputSchema, whyNotOutputSchema } from '#lib/contracts/kiosk.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['anyone'],
  input: whyNotInputSchema,
  output: whyNotOutputSchema,
  refusalStatus: { 'edition-moved': 409 },
  handle: (context, { token, ...asked }) => {
    const variant = openVariant(context.services, asked.editionHash, token);
    if (!variant) return { ok: false, refusal: { kind: 'bad-token' } } as const;
    const found = whyNotOthers(toFlow(context), { ...asked, variant });
    return found.ok ? ({ ok: true, rows: whyNotRows(found.value.book, 'en', found.value.fits) } as const) : found;
  },
});
