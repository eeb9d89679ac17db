import { exportEdition } from '#app/_flows/export-edition.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { exportEditionInputSchema, exportEditionOutputSchema } from '#lib/contracts/export-edition.ts';

export const GET = defineRoute({
  method: 'GET',
  roles: ['formulator', 'manager'],
  input: exportEditionInputSchema,
  output: exportEditionOutputSchema,
  refusalStatus: { 'no-edition': 404 },
  handle: (context, { hash }) => {
    const found = exportEdition(toFlow(context), hash);
    return found.ok ? ({ ok: true, ...found.value } as const) : found;
  },
  download: (output) =>
    output.ok
      ? { mediaType: 'application/json', fileName: `edition-${output.editionNo}.json`, body: output.document }
      : { mediaType: 'application/json', fileName: 'no-edition.json', body: JSON.stringify(output) },
});
