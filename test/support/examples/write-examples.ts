// Writes the table that the office opens, after the demonstration's rules have changed: node test/support/examples/write-examples.ts
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { makeExamples } from './make-examples.ts';

const file = fileURLToPath(new URL('../../../app/office/examples/examples.data.ts', import.meta.url));
const table = makeExamples();
writeFileSync(
  file,
  [
    '// Made by test/support/examples/write-examples.ts, never by hand; test/flow/demo-coverage.test.ts asks every request again.',
    "import type { ExampleTable } from './example-table.ts';",
    '',
    `export const EXAMPLES: ExampleTable = ${JSON.stringify(table, null, 1)};`,
    '',
  ].join('\n'),
);
console.log(
  `${table.findings.length} reasons, ${table.outcomes.length} outcomes, ${table.cautions.length} cautions, ${table.card.length} cards`,
);
