import { cardReply } from '#app/_flows/card-reply.ts';
import { benchVersion } from '#app/_flows/show-queue.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { BENCH_STATUSES } from '#lib/contracts/bench-refusal.ts';
import { benchOutputSchema, orderInputSchema } from '#lib/contracts/bench-view.ts';

export const GET = defineRoute({
  method: 'GET',
  roles: ['mixer', 'checker'],
  input: orderInputSchema,
  output: benchOutputSchema,
  refusalStatus: BENCH_STATUSES,
  etag: (context, { orderId }) => `${orderId}-${benchVersion(toFlow(context))}`,
  handle: (context, { orderId }) => cardReply(toFlow(context), orderId, { ok: true, value: null }),
});
