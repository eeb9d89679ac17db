import { benchVersion, showQueue } from '#app/_flows/show-queue.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { queueInputSchema, queueOutputSchema } from '#lib/contracts/bench-queue.ts';

export const GET = defineRoute({
  method: 'GET',
  roles: ['mixer', 'checker'],
  input: queueInputSchema,
  output: queueOutputSchema,
  etag: (context) => benchVersion(toFlow(context)),
  handle: (context) => showQueue(toFlow(context)),
});
