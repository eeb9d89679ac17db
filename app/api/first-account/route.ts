import { openFirstAccount } from '#app/_flows/open-accounts.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { hashPassword } from '#app/_server/password.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { firstAccountInputSchema, firstAccountOutputSchema } from '#lib/contracts/sign-in.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['anyone'],
  input: firstAccountInputSchema,
  output: firstAccountOutputSchema,
  refusalStatus: { 'accounts-exist': 409 },
  handle: async (context, { code, name, password }) => {
    const outcome = openFirstAccount(toFlow(context), { code, name, role: 'formulator', secretHash: await hashPassword(password) });
    return outcome.ok ? ({ ok: true } as const) : outcome;
  },
});
