// The demonstration shop in a data folder whose file was just migrated, and beside it the people a start prints.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { newId, readClock } from '#app/_server/clock.ts';
import { runHere } from '#app/_server/run-here.ts';
import { openServices } from '#app/_server/services.ts';
import type { DemoContents } from './make-demo-shop.ts';
import { makeDemoShop } from './make-demo-shop.ts';
import { DEMO_PEOPLE } from './people.data.ts';

export async function fillWithDemoShop(dataDir: string, contents?: DemoContents): Promise<void> {
  const services = openServices({ dataDir, now: readClock, newId, runJob: runHere, isInTheMaking: true });
  try {
    await makeDemoShop(services, contents);
  } finally {
    services.db.close();
  }
  writeFileSync(
    join(dataDir, 'demo-people.txt'),
    DEMO_PEOPLE.map(({ code, password, name }) => `${code} / ${password}  (${name})\n`).join(''),
  );
}
