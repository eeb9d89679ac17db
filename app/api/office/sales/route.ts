import { exportSales } from '#app/_flows/export-sales.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { noInputSchema } from '#lib/contracts/no-input.ts';
import { salesCsv, salesOutputSchema } from '#lib/contracts/sales.ts';

export const GET = defineRoute({
  method: 'GET',
  roles: ['formulator', 'manager'],
  input: noInputSchema,
  output: salesOutputSchema,
  handle: (context) => exportSales(toFlow(context)),
  download: (output) => ({ mediaType: 'text/csv; charset=utf-8', fileName: 'sold-combinations.csv', body: salesCsv(output) }),
});
