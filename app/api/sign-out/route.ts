import { signOut } from '#app/_flows/sign-in.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { endedCookie, tokenSha256Of } from '#app/_server/session.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { noInputSchema } from '#lib/contracts/no-input.ts';
import { signOutOutputSchema } from '#lib/contracts/sign-in.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['anyone'],
  input: noInputSchema,
  output: signOutOutputSchema,
  handle: (context) => {
    const tokenSha256 = tokenSha256Of(context.request.headers.get('cookie'));
    if (tokenSha256 !== null) signOut(toFlow(context), tokenSha256);
    context.setCookie(endedCookie);
    return { ok: true } as const;
  },
});
