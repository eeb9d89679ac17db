import { placeOrder } from '#app/_flows/place-order.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { openVariant } from '#app/_server/variant-token.ts';
import { orderInputSchema, orderOutputSchema } from '#lib/contracts/kiosk.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['anyone'],
  input: orderInputSchema,
  output: orderOutputSchema,
  refusalStatus: { 'edition-moved': 409, 'other-content': 409, 'no-longer-permitted': 409 },
  handle: (context, { token, ...asked }) => {
    const variant = openVariant(context.services, asked.editionHash, token);
    if (!variant) return { ok: false, refusal: { kind: 'bad-token' } } as const;
    const placed = placeOrder(toFlow(context), { ...asked, variant, lang: 'en' });
    return placed.ok ? ({ ok: true, ...placed.value } as const) : placed;
  },
});
