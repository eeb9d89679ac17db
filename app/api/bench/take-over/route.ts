import { cardReply } from '#app/_flows/card-reply.ts';
import { takeOverOrder } from '#app/_flows/take-over-order.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { reasonInputSchema } from '#lib/contracts/bench-acts.ts';
import { BENCH_STATUSES } from '#lib/contracts/bench-refusal.ts';
import { benchOutputSchema } from '#lib/contracts/bench-view.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['mixer', 'checker'],
  input: reasonInputSchema,
  output: benchOutputSchema,
  refusalStatus: BENCH_STATUSES,
  handle: (context, asked) => {
    const flow = toFlow(context);
    return cardReply(flow, asked.orderId, takeOverOrder(flow, asked));
  },
});
