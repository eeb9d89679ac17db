// npm run -s backup -- [--to DIR]: a whole copy of the shop in a dated folder, made beside a running shop.
import { resolve } from 'node:path';
import { readClock } from '#app/_server/clock.ts';
import { backupShop } from '#db/backup.ts';
import { backupsDir } from '#db/paths.ts';
import { NotRun, needShop, runCommand, said } from './upkeep/run-command.ts';

const USAGE = 'npm run -s backup -- [--to DIR]';

runCommand({ usage: USAGE, options: ['to'] }, ({ dataDir, positionals, values }) => {
  if (positionals.length > 0) throw new NotRun(`"${positionals[0]}" is not understood. Usage: ${USAGE}`);
  needShop(dataDir);
  const { folder, manifest, missing } = backupShop({
    dataDir,
    toDir: values.to ? resolve(values.to) : backupsDir(dataDir),
    atMs: readClock(),
  });
  const done = said(
    `The backup is in ${folder}: the shop's file, ${manifest.files.length - 1} files of evidence, ledger up to row ${manifest.ledgerSeqNo}.`,
    'Keep a copy of that folder on another machine.',
  );
  if (missing.length === 0) return done;
  return {
    lines: [...done.lines, `It lacks ${missing.length} evidence files that the shop no longer has: run npm run -s verify for their names.`],
    exitCode: 1,
  };
});
