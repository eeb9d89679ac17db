import { whyNotOthers } from '#app/_flows/why-not.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { openVariant, sealVariant } from '#app/_server/variant-token.ts';
import { whyNotInputSchema, whyNotOutputSchema } from '#lib/contracts/kiosk-choices.ts';
import { visitRefusalStatus } from '#lib/contracts/kiosk-visit.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['anyone'],
  input: whyNotInputSchema,
  output: whyNotOutputSchema,
  refusalStatus: { ...visitRefusalStatus, 'bad-token': 404 },
  handle: (context, { shownTokens, ...asked }) => {
    const shown = shownTokens.flatMap((token) => openVariant(context.services, asked.editionHash, token) ?? []);
    if (shown.length < shownTokens.length) return { ok: false, refusal: { kind: 'bad-token' } } as const;
    const found = whyNotOthers(toFlow(context), { ...asked, shown });
    if (!found.ok) return found;
    const tokenOf = (variant: (typeof shown)[number]): string => sealVariant(context.services, asked.editionHash, variant);
    return {
      ok: true,
      choices: found.value.map(({ variant, shown: mask, ...choice }) => ({
        ...choice,
        mask: variant && mask && { token: tokenOf(variant), ...mask },
      })),
    } as const;
  },
});
