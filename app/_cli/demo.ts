// npm run demo: makes the demonstration shop in the data folder, without starting a server. Refused where a shop is already.
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { prepareData } from '#app/_server/prepare-data.ts';
import { startFailure } from '#app/_server/start-failure.ts';
import { shopFile } from '#db/paths.ts';
import { fillWithDemoShop } from './demo/fill-folder.ts';

/** @returns the sentence of a refusal, or null when the shop was made */
async function makeDemo(dataDir: string): Promise<string | null> {
  if (existsSync(shopFile(dataDir))) return `There is a shop in ${dataDir} already: set JARWRIGHT_DATA to an empty folder.`;
  try {
    const held = await prepareData({ dataDir, holder: `npm run demo (process ${process.pid})`, fill: fillWithDemoShop });
    held.release();
    return null;
  } catch (error) {
    const sentence = startFailure(error, { dataDir, host: '', port: 0 });
    if (sentence === null) throw error;
    return sentence;
  }
}

const dataDir = resolve(process.env.JARWRIGHT_DATA || '.data');
const refusal = await makeDemo(dataDir);
if (refusal === null) process.stdout.write(`The demonstration shop is in ${dataDir}.\n`);
else {
  process.stderr.write(`jarwright: ${refusal}\n`);
  process.exitCode = 1;
}
