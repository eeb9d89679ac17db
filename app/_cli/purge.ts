// npm run -s purge -- [--years N]: erases ledger bodies and complaints past the retention, and contacts no longer needed for a recall.
import { newId, readClock } from '#app/_server/clock.ts';
import { openShopDb } from '#db/open.ts';
import { shopFile } from '#db/paths.ts';
import type { Purged } from '#db/purge.ts';
import { purge } from '#db/purge.ts';
import { holding, NotRun, needShop, runCommand, said } from './upkeep/run-command.ts';

const USAGE = 'npm run -s purge -- [--years N]';

/** How long a cosmetic's file is kept after the last jar: Regulation (EC) No 1223/2009, Article 11(1). Local law may ask for more. */
const RETENTION_YEARS = 10;

function yearsOf(text: string | undefined): number {
  if (text === undefined) return RETENTION_YEARS;
  if (!/^\d{1,2}$/.test(text) || Number(text) < 1) throw new NotRun(`--years takes a whole number from 1 to 99, not "${text}".`);
  return Number(text);
}

function erase(dataDir: string, retentionYears: number): Purged {
  const db = openShopDb(shopFile(dataDir));
  try {
    const purged = db.write((tx) => purge(tx, { retentionYears, atMs: readClock(), newId }));
    db.checkpoint();
    return purged;
  } finally {
    db.close();
  }
}

runCommand({ usage: USAGE, options: ['years'] }, ({ dataDir, positionals, values }) => {
  if (positionals.length > 0) throw new NotRun(`"${positionals[0]}" is not understood. Usage: ${USAGE}`);
  const retentionYears = yearsOf(values.years);
  needShop(dataDir);
  const { bodiesCount, contactsCount, complaintsCount } = holding(dataDir, 'npm run purge', () => erase(dataDir, retentionYears));
  return said(
    `Erased: ${bodiesCount} ledger bodies and ${complaintsCount} complaints older than ${retentionYears} years, ${contactsCount} contacts no longer needed.`,
    'Backups made before still hold them: delete those that have had their time.',
  );
});
