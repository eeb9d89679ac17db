import { placeStop } from '#app/_flows/place-stop.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { stopInputSchema, stopOutputSchema } from '#lib/contracts/stops.ts';

/** Anybody of the staff may stop a thing: what is wrong is often seen at the bench first. */
export const POST = defineRoute({
  method: 'POST',
  roles: ['mixer', 'checker', 'formulator', 'manager'],
  input: stopInputSchema,
  output: stopOutputSchema,
  refusalStatus: { 'no-such-subject': 404, 'stopped-already': 409, 'not-open': 409 },
  handle: (context, asked) => {
    const stopped = placeStop(toFlow(context), asked);
    if (!stopped.ok) return stopped;
    return { ok: true as const, waitingCodes: [...stopped.value.waitingCodes] };
  },
});
