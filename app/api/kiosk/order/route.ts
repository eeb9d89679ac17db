import { placeOrder } from '#app/_flows/place-order.ts';
import { codeSymbol } from '#app/_server/code-symbol.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { openVariant } from '#app/_server/variant-token.ts';
import { orderInputSchema, orderOutputSchema } from '#lib/contracts/kiosk-order.ts';
import { visitRefusalStatus } from '#lib/contracts/kiosk-visit.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['anyone'],
  input: orderInputSchema,
  output: orderOutputSchema,
  refusalStatus: { ...visitRefusalStatus, 'bad-token': 404, 'other-content': 409, 'no-longer-offered': 409, 'no-counter': 404 },
  handle: (context, { token, ...asked }) => {
    const variant = openVariant(context.services, asked.editionHash, token);
    if (!variant) return { ok: false, refusal: { kind: 'bad-token' } } as const;
    const placed = placeOrder(toFlow(context), { ...asked, variant });
    return placed.ok ? ({ ok: true, ...placed.value, symbol: codeSymbol(placed.value.code) } as const) : placed;
  },
});
