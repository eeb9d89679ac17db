// Takes the lock of a data folder, says so, and waits to be killed. Arguments: the folder, the holder's words.
import { takeLock } from '#db/lock.ts';

const [dataDir = '', holder = ''] = process.argv.slice(2);
takeLock(dataDir, holder);
process.stdout.write('held\n');
setInterval(() => {
  // Kept alive until the signal; a collection of garbage must not let the lock go.
  globalThis.gc?.();
}, 20);
