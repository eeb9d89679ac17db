import { recordComplaintStep } from '#app/_flows/file-complaint.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { complaintStepInputSchema, complaintStepOutputSchema } from '#lib/contracts/complaints.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['formulator', 'manager'],
  input: complaintStepInputSchema,
  output: complaintStepOutputSchema,
  refusalStatus: { 'no-such-complaint': 404 },
  handle: (context, asked) => {
    const done = recordComplaintStep(toFlow(context), asked);
    return done.ok ? { ok: true as const } : done;
  },
});
