// npm run demo: makes the demonstration shop in the data folder, without starting a server. Refused where a shop is already.
// npm run -s demo -- --rulebook: prints the rulebook that shop would publish today, and makes nothing.
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { readClock } from '#app/_server/clock.ts';
import { prepareData } from '#app/_server/prepare-data.ts';
import { startFailure } from '#app/_server/start-failure.ts';
import { shopFile } from '#db/paths.ts';
import { localDayIn } from '#lib/units/time.ts';
import { fillWithDemoShop } from './demo/fill-folder.ts';
import { DEMO_SHOP } from './demo/make-demo-shop.ts';
import { demoRulebook } from './demo/rulebook/demo-rulebook.ts';

/** @returns the sentence of a refusal, or null when the shop was made */
async function makeDemo(dataDir: string): Promise<string | null> {
  if (existsSync(shopFile(dataDir))) return `There is a shop in ${dataDir} already: set JARWRIGHT_DATA to an empty folder.`;
  try {
    const held = await prepareData({
      dataDir,
      holder: `npm run demo (process ${process.pid})`,
      fill: (folder) => fillWithDemoShop(folder),
    });
    held.release();
    return null;
  } catch (error) {
    const sentence = startFailure(error, { dataDir, host: '', port: 0 });
    if (sentence === null) throw error;
    return sentence;
  }
}

async function fillDataFolder(): Promise<void> {
  const dataDir = resolve(process.env.JARWRIGHT_DATA || '.data');
  const refusal = await makeDemo(dataDir);
  if (refusal === null) process.stdout.write(`The demonstration shop is in ${dataDir}.\n`);
  else {
    process.stderr.write(`jarwright: ${refusal}\n`);
    process.exitCode = 1;
  }
}

const { values } = parseArgs({ options: { rulebook: { type: 'boolean' } } });
if (values.rulebook) process.stdout.write(`${JSON.stringify(demoRulebook(localDayIn(DEMO_SHOP.zone, readClock())), null, 2)}\n`);
else await fillDataFolder();
