import { cardReply } from '#app/_flows/card-reply.ts';
import { decideHeldJar } from '#app/_flows/decide-held-jar.ts';
import { admitSecond } from '#app/_flows/second-person.ts';
import { beginSignIn } from '#app/_flows/sign-in.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { isPassword } from '#app/_server/password.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { heldJarInputSchema } from '#lib/contracts/bench-acts.ts';
import { BENCH_STATUSES } from '#lib/contracts/bench-refusal.ts';
import { benchOutputSchema } from '#lib/contracts/bench-view.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['mixer', 'checker'],
  input: heldJarInputSchema,
  output: benchOutputSchema,
  refusalStatus: BENCH_STATUSES,
  handle: async (context, { second, wantsAnother, ...asked }) => {
    const flow = toFlow(context);
    const attempt = beginSignIn(flow, second.code);
    const admitted = admitSecond(flow, attempt, await isPassword(second.password, attempt.isLocked ? null : attempt.secretHash));
    if (!admitted.ok) return admitted;
    const decision = { secondAccountId: admitted.value.accountId, remakeOrderId: wantsAnother ? context.newId() : null };
    return cardReply(flow, asked.orderId, decideHeldJar(flow, { ...asked, ...decision }));
  },
});
