import { openAccount } from '#app/_flows/open-accounts.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { hashPassword } from '#app/_server/password.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { newAccountInputSchema, newAccountOutputSchema } from '#lib/contracts/account.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['manager'],
  input: newAccountInputSchema,
  output: newAccountOutputSchema,
  refusalStatus: { 'name-taken': 409 },
  handle: async (context, { password, ...account }) => {
    const opened = openAccount(toFlow(context), { ...account, secretHash: await hashPassword(password) });
    return opened.ok ? ({ ok: true } as const) : opened;
  },
});
