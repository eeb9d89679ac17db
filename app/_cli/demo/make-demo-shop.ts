// Makes the demonstration shop through the same flows that a real shop goes through: nothing is written that a person could not have done.

import type { Flow } from '#app/_flows/flow.ts';
import { insertShop } from '#app/_flows/found-shop.ts';
import { openAccount } from '#app/_flows/open-accounts.ts';
import { hashPassword } from '#app/_server/password.ts';
import type { Services } from '#app/_server/services.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { invariant } from '#lib/base/invariant.ts';
import { DEMO_PEOPLE } from './people.data.ts';

/** Invented, and public: a demonstration has nothing to hide from whoever runs it. */
const DEMO_SEALING_SECRET = 'demonstration-'.repeat(3);

/** Fills a shop's migrated, empty file. Throws a Fault where a step is refused. */
export async function makeDemoShop(services: Services): Promise<void> {
  const flow: Flow = toFlow({ services, now: services.now(), newId: services.newId, actor: { kind: 'nobody' } });
  const shop = {
    shopCode: 'ML',
    name: 'Marlpit Lane',
    zone: 'Europe/London',
    sealingSecret: DEMO_SEALING_SECRET,
    isDemo: true,
    notice: 'Invented for the demonstration',
  };
  invariant(services.db.write((tx) => insertShop(tx, flow, shop)).ok, 'the demonstration shop could not be founded');
  for (const { password, ...person } of DEMO_PEOPLE) {
    const opened = openAccount(flow, { ...person, secretHash: await hashPassword(password) });
    invariant(opened.ok, `the account ${person.code} could not be opened`);
  }
}
