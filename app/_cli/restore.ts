// npm run -s restore -- FOLDER: puts a backup in the shop's place. Refused while a shop runs on the data folder.
import { mkdirSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { newId, readClock } from '#app/_server/clock.ts';
import { MANIFEST } from '#db/backup.ts';
import { restoreShop } from '#db/restore.ts';
import { holding, NotRun, runCommand, said } from './upkeep/run-command.ts';

const USAGE = 'npm run -s restore -- FOLDER (as npm run -s backup made it)';

/** The folder of a backup, also when one of the files in it was named. */
const folderOf = (path: string): string => resolve([MANIFEST, 'shop.db'].includes(basename(path)) ? dirname(path) : path);

runCommand({ usage: USAGE }, ({ dataDir, positionals }) => {
  const [path, ...rest] = positionals;
  if (path === undefined || rest.length > 0) throw new NotRun(`Name one backup. Usage: ${USAGE}`);
  mkdirSync(dataDir, { recursive: true });
  const { manifest, asideFolder } = holding(dataDir, 'npm run restore', () =>
    restoreShop({ dataDir, backupFolder: folderOf(path), atMs: readClock(), newId }),
  );
  const made = new Date(manifest.madeAtMs).toISOString();
  return said(
    `The shop in ${dataDir} is again as it was at ${made}, ledger row ${manifest.ledgerSeqNo}.`,
    ...(asideFolder === null ? [] : [`What stood there before is kept in ${asideFolder}.`]),
    'Jars made since then are not in it: look for them on the bench and in the print-outs before you open.',
  );
});
