import { draftToCount, publishEdition } from '#app/_flows/publish-edition.ts';
import { beginSigning, finishSigning } from '#app/_flows/sign-again.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { isPassword } from '#app/_server/password.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { publishInputSchema, publishOutputSchema } from '#lib/contracts/publish.ts';
import { instantMs } from '#lib/units/time.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['formulator'],
  input: publishInputSchema,
  output: publishOutputSchema,
  refusalStatus: { 'no-draft': 404, 'draft-moved': 409, 'already-published': 409, 'not-counted': 409 },
  handle: async (context, { password, effectiveAtMs, ...order }) => {
    const flow = toFlow(context);
    const attempt = beginSigning(flow);
    const signing = finishSigning(flow, attempt, await isPassword(password, attempt.isLocked ? null : attempt.secretHash));
    if (!signing.ok) return signing;
    const draft = draftToCount(flow);
    if (!draft) return { ok: false, refusal: { kind: 'no-draft' } } as const;
    const count = await context.services.runJob('count-variants', { document: draft.document, day: draft.day });
    if (count.kind !== 'done') return { ok: false, refusal: { kind: 'not-counted' } } as const;
    const published = publishEdition(flow, {
      ...order,
      effectiveAtMs: effectiveAtMs === null ? null : instantMs(effectiveAtMs),
      counted: { sha256: draft.sha256, variantsCount: count.output },
    });
    if (published.ok) return { ok: true, editionNo: published.value.editionNo, hash: published.value.hash } as const;
    const { refusal } = published;
    if (refusal.kind !== 'gate-closed') return { ok: false, refusal } as const;
    return { ok: false, refusal: { kind: 'gate-closed', open: [...refusal.gate.open], notices: [...refusal.gate.notices] } } as const;
  },
});
