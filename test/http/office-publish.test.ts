// Publishing over a plain request: the password is asked for once more, every try counts, and a second click is no fault.
import { expect, test } from 'vitest';
import { changeDraft } from '#app/_flows/change-draft.ts';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import type { Edge } from '#app/_server/edge.ts';
import { hashPassword } from '#app/_server/password.ts';
import { runHere } from '#app/_server/run-here.ts';
import { sha256 } from '#app/_server/services.ts';
import { POST as publishRoute } from '#app/api/office/publish/route.ts';
import { listLedger } from '#db/ledger.ts';
import { insertSecretHash } from '#db/people.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { sharePpm } from '#lib/units/share.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop, took } from '#test/support/a-shop.ts';

const PASSWORD = 'a clay of two words';

/** A shop with a changed price in the draft, and a second formulator who has a password. */
async function readyShop(): Promise<AShop> {
  const shop = aShop();
  const hash = await hashPassword(PASSWORD);
  const accountId = shop.accountId('second-formulator');
  shop.db.write((tx) => insertSecretHash(tx, { accountId, hash, atMs: shop.asNobody().now }));
  const level = { kind: 'set-level', activeId: 'niacinamide', levelPpm: sharePpm(20_000), permitted: true } as const;
  took(changeDraft(shop.as('formulator', 1), { parentRevisionNo: 1, change: { ...level, priceMinor: moneyMinor(270) } }));
  return shop;
}

async function publish(shop: AShop, password: string, minutes = 2) {
  const flow = shop.as('second-formulator', minutes);
  const services = { db: shop.db, dataDir: '', now: () => flow.now, newId: flow.newId, sha256, editions: flow.editions, runJob: runHere };
  const edge: Edge = {
    services: () => services,
    readSession: () => ({ kind: 'staff', accountId: shop.accountId('second-formulator'), role: 'formulator', stationId: null }),
    logFault: ({ error }) => {
      throw error;
    },
    newId: flow.newId,
  };
  const headers = { 'content-type': 'application/json', origin: 'http://shop.test', host: 'shop.test' };
  const lookedAt = readRulebook(flow).diff.map((line) => line.key);
  const body = JSON.stringify({ revisionNo: 2, lookedAt, reason: 'A dearer level', effectiveAtMs: null, password });
  const response = await publishRoute.respond(edge, new Request('http://shop.test/api', { method: 'POST', headers, body }), {});
  return { status: response.status, body: await response.json() };
}

const refusedBecause = (kind: string) => ({ status: 200, body: { ok: false, refusal: { kind } } });

test('the same request twice makes one edition and a clear answer', async () => {
  const shop = await readyShop();
  expect(await publish(shop, PASSWORD)).toMatchObject({ status: 200, body: { ok: true, editionNo: 2 } });
  expect(await publish(shop, PASSWORD)).toEqual({
    status: 409,
    body: { ok: false, refusal: { kind: 'already-published', editionNo: 2 } },
  });
});

test('wrong passwords count and lock as at the front door, and each refused signature is a fact of the ledger', async () => {
  const shop = await readyShop();
  for (let turn = 0; turn < 5; turn += 1) expect(await publish(shop, 'not this one')).toEqual(refusedBecause('wrong-password'));
  expect(await publish(shop, PASSWORD, 3)).toEqual(refusedBecause('locked'));
  const outcomes = shop.sqlite.prepare('SELECT outcome, count(*) AS tries FROM auth_attempt GROUP BY outcome ORDER BY outcome').all();
  expect(outcomes).toEqual([
    { outcome: 'locked', tries: 1 },
    { outcome: 'wrong', tries: 5 },
  ]);
  const facts = shop.db.read((tx) => listLedger(tx, 0, 1000)).filter(({ row }) => row.kind === 'signature-refused');
  expect(facts.map(({ row, body }) => [row.accountId, body])).toEqual([
    ...Array.from({ length: 5 }, () => [shop.accountId('second-formulator'), '{"outcome":"wrong"}']),
    [shop.accountId('second-formulator'), '{"outcome":"locked"}'],
  ]);
  expect(await publish(shop, PASSWORD, 18)).toMatchObject({ body: { ok: true } });
});
