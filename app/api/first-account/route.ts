import { openShop } from '#app/_flows/open-shop.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { hashPassword } from '#app/_server/password.ts';
import { newToken } from '#app/_server/session.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { firstAccountInputSchema, firstAccountOutputSchema } from '#lib/contracts/sign-in.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['anyone'],
  input: firstAccountInputSchema,
  output: firstAccountOutputSchema,
  refusalStatus: { 'accounts-exist': 409, 'shop-exists': 409 },
  handle: async (context, { code, name, password, shop }) => {
    const account = { code, name, role: 'manager', secretHash: await hashPassword(password) } as const;
    const outcome = openShop(toFlow(context), { ...shop, sealingSecret: newToken(), isDemo: false, notice: '' }, account);
    return outcome.ok ? ({ ok: true } as const) : outcome;
  },
});
