import { recordFitness } from '#app/_flows/record-fitness.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { fitnessInputSchema } from '#lib/contracts/bench-acts.ts';
import { BENCH_STATUSES } from '#lib/contracts/bench-refusal.ts';
import { fitnessOutputSchema } from '#lib/contracts/bench-view.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['mixer', 'checker'],
  input: fitnessInputSchema,
  output: fitnessOutputSchema,
  refusalStatus: BENCH_STATUSES,
  handle: (context, asked) => {
    const checked = recordFitness(toFlow(context), asked);
    return checked.ok ? ({ ok: true, ...checked.value } as const) : checked;
  },
});
