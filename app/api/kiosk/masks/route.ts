import { findMasks } from '#app/_flows/find-masks.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { sealVariant } from '#app/_server/variant-token.ts';
import { masksInputSchema, masksOutputSchema } from '#lib/contracts/kiosk-masks.ts';
import { visitRefusalStatus } from '#lib/contracts/kiosk-visit.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['anyone'],
  input: masksInputSchema,
  output: masksOutputSchema,
  refusalStatus: visitRefusalStatus,
  handle: (context, asked) => {
    const found = findMasks(toFlow(context), asked);
    if (!found.ok) return found;
    if (found.value.kind === 'outcome') return { ok: true, ...found.value } as const;
    const { masks, noActiveFits } = found.value;
    const tokenOf = (variant: (typeof masks)[number]['variant']): string => sealVariant(context.services, asked.editionHash, variant);
    return {
      ok: true,
      kind: 'masks',
      noActiveFits,
      masks: masks.map(({ variant, shown }) => ({ token: tokenOf(variant), ...shown })),
    } as const;
  },
});
