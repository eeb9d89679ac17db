// npm run -s verify -- [BACKUP]: looks the shop over, or a backup of it, and says what is damaged or was tampered with. Exit code 0: sound.
import { join, resolve } from 'node:path';
import { readBackup } from '#db/backup.ts';
import { evidenceDir, shopFile } from '#db/paths.ts';
import { verifyShop } from '#db/verify.ts';
import { NotRun, needShop, runCommand, said } from './upkeep/run-command.ts';

const USAGE = 'npm run -s verify -- [FOLDER OF A BACKUP]';

runCommand({ usage: USAGE }, ({ dataDir, positionals }) => {
  if (positionals.length > 1) throw new NotRun(`Name one backup at most. Usage: ${USAGE}`);
  const folder = positionals[0] === undefined ? dataDir : resolve(positionals[0]);
  if (folder === dataDir) needShop(dataDir);
  else readBackup(folder);
  const { problems, chain } = verifyShop(shopFile(folder), evidenceDir(folder));
  if (problems.length > 0)
    return { lines: [...problems, `${problems.length} found in ${folder}: restore a backup from before they arose.`], exitCode: 1 };
  return said(
    `${join(folder, 'shop.db')} is sound.`,
    `The ledger's ${chain?.rowsCount ?? 0} rows form one chain; its head is ${chain?.headSha256 ?? 'empty'}.`,
  );
});
