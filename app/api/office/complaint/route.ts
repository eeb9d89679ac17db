import { fileComplaint } from '#app/_flows/file-complaint.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { complaintInputSchema, complaintOutputSchema } from '#lib/contracts/complaints.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['formulator', 'manager'],
  input: complaintInputSchema,
  output: complaintOutputSchema,
  handle: (context, asked) => {
    const filed = fileComplaint(toFlow(context), asked);
    return filed.ok ? { ok: true as const, ...filed.value } : filed;
  },
});
