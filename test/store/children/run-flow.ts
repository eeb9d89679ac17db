// Runs one flow on a shop's file and kills itself before the given statement (0: right after the commit, "never": not at all).
// Arguments: the shop's file, the statement's number, the job as JSON. Left alive, it says which statements do more than read.
import { openShopDb } from '#db/open.ts';
import type { KillJob } from './kill-job.ts';
import { runJob } from './kill-job.ts';

const [file = '', killAt = '', job = ''] = process.argv.slice(2);
const seen = { isArmed: false, count: 0, writes: [] as number[] };

const die = (): void => void process.kill(process.pid, 'SIGKILL');

const db = openShopDb(file, {
  onStatement: (statement) => {
    if (!seen.isArmed) return;
    seen.count += 1;
    if (!/^\s*select\b/i.test(String(statement))) seen.writes.push(seen.count);
    if (seen.count === Number(killAt)) die();
  },
});
seen.isArmed = true;
runJob(db, JSON.parse(job) as KillJob);
seen.isArmed = false;
if (killAt === '0') die();
process.stdout.write(JSON.stringify(seen.writes));
