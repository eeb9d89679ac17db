import { changeDraft } from '#app/_flows/change-draft.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { changeDraftInputSchema, changeDraftOutputSchema } from '#lib/contracts/draft.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['formulator'],
  input: changeDraftInputSchema,
  output: changeDraftOutputSchema,
  refusalStatus: { 'draft-moved': 409, 'nothing-to-change': 404, 'no-draft': 404 },
  handle: (context, order) => {
    const saved = changeDraft(toFlow(context), order);
    return saved.ok ? ({ ok: true, revisionNo: saved.value.revisionNo } as const) : saved;
  },
});
