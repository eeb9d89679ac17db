import { defineRoute } from '#app/_server/define-route.ts';
import { noInputSchema } from '#lib/contracts/no-input.ts';
import { rulebookJsonSchema } from '#lib/contracts/rulebook.ts';
import { rulebookSchemaOutputSchema } from '#lib/contracts/rulebook-schema.ts';

export const GET = defineRoute({
  method: 'GET',
  roles: ['anyone'],
  input: noInputSchema,
  output: rulebookSchemaOutputSchema,
  handle: () => JSON.parse(JSON.stringify(rulebookJsonSchema())),
});
