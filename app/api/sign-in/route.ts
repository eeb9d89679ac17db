import { beginSignIn, finishSignIn, STAFF_SESSION_MS } from '#app/_flows/sign-in.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { isPassword } from '#app/_server/password.ts';
import { newToken, sessionCookie } from '#app/_server/session.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { signInInputSchema, signInOutputSchema } from '#lib/contracts/sign-in.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['anyone'],
  input: signInInputSchema,
  output: signInOutputSchema,
  handle: async (context, { code, password, stationId }) => {
    const flow = toFlow(context);
    const attempt = beginSignIn(flow, code);
    const isRight = await isPassword(password, attempt.isLocked ? null : attempt.secretHash);
    const token = newToken();
    const outcome = finishSignIn(flow, attempt, { tokenSha256: flow.sha256(token), isRight, stationId });
    if (!outcome.ok) return outcome;
    context.setCookie(sessionCookie(token, STAFF_SESSION_MS / 1000));
    return { ok: true, role: outcome.value.role } as const;
  },
});
