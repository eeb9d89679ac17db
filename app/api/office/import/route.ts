import { importDraft } from '#app/_flows/change-draft.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import type { DocumentFault } from '#lib/base/document-fault.ts';
import { importDraftInputSchema, importDraftOutputSchema } from '#lib/contracts/import-draft.ts';
import { parseRulebook } from '#lib/contracts/rulebook.ts';

export const POST = defineRoute({
  method: 'POST',
  roles: ['formulator'],
  input: importDraftInputSchema,
  output: importDraftOutputSchema,
  refusalStatus: { 'draft-moved': 409 },
  handle: (context, { parentRevisionNo, document }) => {
    const rulebook = parseRulebook(document);
    if (!rulebook.ok) return unsound(rulebook.refusal);
    const saved = importDraft(toFlow(context), { parentRevisionNo, rulebook: rulebook.value });
    if (saved.ok) return { ok: true, revisionNo: saved.value.revisionNo } as const;
    return saved.refusal.kind === 'unsound' ? unsound(saved.refusal.faults) : ({ ok: false, refusal: saved.refusal } as const);
  },
});

const unsound = (faults: readonly DocumentFault[]) => ({
  ok: false as const,
  refusal: { kind: 'unsound' as const, faults: faults.map(({ path, code, message }) => ({ place: path.join(' / '), code, message })) },
});
