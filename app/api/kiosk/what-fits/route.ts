import { whatElseFits } from '#app/_flows/what-fits.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { openVariant, sealVariant } from '#app/_server/variant-token.ts';
import { whatFitsInputSchema, whatFitsOutputSchema } from '#lib/contracts/kiosk-choices.ts';
import { visitRefusalStatus } from '#lib/contracts/kiosk-visit.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['anyone'],
  input: whatFitsInputSchema,
  output: whatFitsOutputSchema,
  refusalStatus: { ...visitRefusalStatus, 'bad-token': 404 },
  handle: (context, { token, ...asked }) => {
    const variant = openVariant(context.services, asked.editionHash, token);
    if (!variant) return { ok: false, refusal: { kind: 'bad-token' } } as const;
    const found = whatElseFits(toFlow(context), { ...asked, variant });
    if (!found.ok) return found;
    const tokenOf = (fitting: typeof variant | null): string | null => fitting && sealVariant(context.services, asked.editionHash, fitting);
    return { ok: true, choices: found.value.map(({ variant: fitting, ...choice }) => ({ ...choice, token: tokenOf(fitting) })) } as const;
  },
});
