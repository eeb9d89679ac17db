// Writes one golden card after a person has read it: node test/support/write-golden.ts <name> "<reason>"

import { goldenDifference, writeGolden } from './golden.ts';
import { goldenCards } from './golden-cards.ts';

const [name = '', reason = ''] = process.argv.slice(2);
const made = goldenCards[name];

if (!made || reason.trim().split(/\s+/).length < 3) {
  console.log(`usage: write-golden.ts <name> "<reason, in at least three words>"\nnames: ${Object.keys(goldenCards).join(', ')}`);
  process.exitCode = 1;
} else {
  const text = made();
  const difference = goldenDifference(name, text);
  console.log(difference ?? `${name}.txt is as it was: nothing written`);
  if (difference !== null) writeGolden(name, text, reason.trim());
}
