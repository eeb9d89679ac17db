import { liftStop } from '#app/_flows/lift-stop.ts';
import { admitSecond } from '#app/_flows/second-person.ts';
import { beginSignIn } from '#app/_flows/sign-in.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { isPassword } from '#app/_server/password.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { liftStopInputSchema, liftStopOutputSchema } from '#lib/contracts/stops.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['formulator', 'manager'],
  input: liftStopInputSchema,
  output: liftStopOutputSchema,
  refusalStatus: { 'no-such-stop': 404, 'lifted-already': 409 },
  handle: async (context, { second, ...asked }) => {
    const flow = toFlow(context);
    const attempt = beginSignIn(flow, second.code);
    const isRight = await isPassword(second.password, attempt.isLocked ? null : attempt.secretHash);
    const admitted = admitSecond(flow, attempt, isRight, ['formulator', 'manager']);
    if (!admitted.ok) return admitted;
    const lifted = liftStop(flow, { ...asked, secondAccountId: admitted.value.accountId });
    return lifted.ok ? ({ ok: true } as const) : lifted;
  },
});
