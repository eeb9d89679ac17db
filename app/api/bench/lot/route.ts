import { checkLotInHand } from '#app/_flows/check-lot-in-hand.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { lotInputSchema } from '#lib/contracts/bench-acts.ts';
import { BENCH_STATUSES } from '#lib/contracts/bench-refusal.ts';
import { lotOutputSchema } from '#lib/contracts/bench-view.ts';

export const GET = defineRoute({
  method: 'GET',
  roles: ['mixer', 'checker'],
  input: lotInputSchema,
  output: lotOutputSchema,
  refusalStatus: BENCH_STATUSES,
  handle: (context, { orderId, lotCode }) => {
    const checked = checkLotInHand(toFlow(context), orderId, lotCode);
    return checked.ok ? ({ ok: true } as const) : checked;
  },
});
