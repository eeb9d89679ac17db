import { cardReply } from '#app/_flows/card-reply.ts';
import { mendJar } from '#app/_flows/mend-jar.ts';
import { admitSecond } from '#app/_flows/second-person.ts';
import { beginSignIn } from '#app/_flows/sign-in.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { isPassword } from '#app/_server/password.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { mendInputSchema } from '#lib/contracts/bench-acts.ts';
import { BENCH_STATUSES } from '#lib/contracts/bench-refusal.ts';
import { benchOutputSchema } from '#lib/contracts/bench-view.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['mixer', 'checker'],
  input: mendInputSchema,
  output: benchOutputSchema,
  refusalStatus: BENCH_STATUSES,
  handle: async (context, { mend, ...asked }) => {
    const flow = toFlow(context);
    if (mend.kind === 'take-out') return cardReply(flow, asked.orderId, mendJar(flow, { ...asked, mend }));
    if (mend.kind === 'discard')
      return cardReply(flow, asked.orderId, mendJar(flow, { ...asked, mend: { ...mend, remakeOrderId: context.newId() } }));
    const attempt = beginSignIn(flow, mend.second.code);
    const admitted = admitSecond(flow, attempt, await isPassword(mend.second.password, attempt.isLocked ? null : attempt.secretHash));
    if (!admitted.ok) return admitted;
    return cardReply(flow, asked.orderId, mendJar(flow, { ...asked, mend: { kind: 'grow', secondAccountId: admitted.value.accountId } }));
  },
});
