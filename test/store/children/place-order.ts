// Places one order in a founded shop and kills itself before the given statement (0: right after the commit).
// Arguments: the shop's file, the statement's number. Ends with exit code 0 when the work has fewer statements.
import { openShopDb } from '#db/open.ts';
import { placeOrder } from '#test/support/shop-facts.ts';

const [file = '', killAt = '', editionHash = ''] = process.argv.slice(2);
const seen = { isArmed: false, statementsCount: 0 };

const die = (): void => {
  process.kill(process.pid, 'SIGKILL');
};

const db = openShopDb(file, {
  onStatement: () => {
    if (!seen.isArmed) return;
    seen.statementsCount += 1;
    if (seen.statementsCount === Number(killAt)) die();
  },
});
seen.isArmed = true;
db.write((tx) => placeOrder(tx, 1, editionHash));
seen.isArmed = false;
if (killAt === '0') die();
process.stdout.write(String(seen.statementsCount));
