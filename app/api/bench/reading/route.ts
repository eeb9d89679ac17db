import { cardReply } from '#app/_flows/card-reply.ts';
import { recordReading } from '#app/_flows/record-reading.ts';
import { admitSecond } from '#app/_flows/second-person.ts';
import { beginSignIn } from '#app/_flows/sign-in.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { isPassword } from '#app/_server/password.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { readingInputSchema } from '#lib/contracts/bench-acts.ts';
import { BENCH_STATUSES } from '#lib/contracts/bench-refusal.ts';
import { benchOutputSchema } from '#lib/contracts/bench-view.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['mixer', 'checker'],
  input: readingInputSchema,
  output: benchOutputSchema,
  refusalStatus: BENCH_STATUSES,
  handle: async (context, { second, ...asked }) => {
    const flow = toFlow(context);
    if (!second) return cardReply(flow, asked.orderId, recordReading(flow, { ...asked, second: null }));
    const { code, password, ...seen } = second;
    const attempt = beginSignIn(flow, code);
    const admitted = admitSecond(flow, attempt, await isPassword(password, attempt.isLocked ? null : attempt.secretHash));
    if (!admitted.ok) return admitted;
    return cardReply(flow, asked.orderId, recordReading(flow, { ...asked, second: { ...seen, ...admitted.value } }));
  },
});
