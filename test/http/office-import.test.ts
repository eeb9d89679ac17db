// A whole rulebook over a plain request: what cannot be read or makes no sense is named place by place, and nothing of it is kept.
import { expect, test } from 'vitest';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import type { Edge } from '#app/_server/edge.ts';
import type { Services } from '#app/_server/services.ts';
import { sha256 } from '#app/_server/services.ts';
import { POST as importRoute } from '#app/api/office/import/route.ts';
import { aDemoRulebook } from '#test/support/a-demo-book.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop } from '#test/support/a-shop.ts';

const DOCUMENT = aDemoRulebook();

async function give(shop: AShop, document: unknown, parentRevisionNo: number | null = 1) {
  const flow = shop.asNobody(8);
  const edge: Edge = {
    services: () => ({ db: shop.db, now: () => flow.now, newId: flow.newId, sha256, editions: flow.editions }) as unknown as Services,
    readSession: () => ({ kind: 'staff', accountId: shop.accountId('formulator'), role: 'formulator', stationId: null }),
    logFault: ({ error }) => {
      throw error;
    },
    newId: flow.newId,
  };
  const headers = { 'content-type': 'application/json', origin: 'http://shop.test', host: 'shop.test' };
  const body = JSON.stringify({ parentRevisionNo, document });
  const response = await importRoute.respond(edge, new Request('http://shop.test/api', { method: 'POST', headers, body }), {});
  return { status: response.status, body: await response.json() };
}

const draftOf = (shop: AShop) => readRulebook(shop.as('formulator', 9)).draft;

test('a sound rulebook becomes the draft, and what is in force stays', async () => {
  const shop = aShop();
  const title = 'Masks of another year';
  expect(await give(shop, { ...DOCUMENT, title })).toEqual({ status: 200, body: { ok: true, revisionNo: 2 } });
  expect(draftOf(shop)?.book.rulebook.title).toBe(title);
  expect(readRulebook(shop.as('manager', 9)).inForce?.head.editionNo).toBe(1);
});

test('one that cannot be read is refused with every place', async () => {
  const shop = aShop();
  const { status, body } = await give(shop, { ...DOCUMENT, title: 7, shades: undefined, colour: 'red' });
  expect(status).toBe(200);
  const placed = body.refusal.faults.map(({ place, code }: { place: string; code: string }) => `${place}: ${code}`);
  expect(placed.sort()).toEqual(['colour: unknown-key', 'shades: missing', 'title: wrong-type']);
  expect(draftOf(shop)?.head.revisionNo).toBe(1);
});

test('one that can be read and makes no sense is refused with every place', async () => {
  const shop = aShop();
  const [first, ...others] = DOCUMENT.shades;
  const { body } = await give(shop, { ...DOCUMENT, shades: [{ ...first, parts: [] }, ...others] });
  expect(body).toMatchObject({ ok: false, refusal: { kind: 'unsound' } });
  expect(body.refusal.faults.every(({ place }: { place: string }) => place !== '')).toBe(true);
  expect(draftOf(shop)?.head.revisionNo).toBe(1);
});

test('one that was made beside another change is refused: nothing is overwritten unseen', async () => {
  const shop = aShop();
  await give(shop, { ...DOCUMENT, title: 'First' });
  expect(await give(shop, { ...DOCUMENT, title: 'Second' })).toEqual({
    status: 409,
    body: { ok: false, refusal: { kind: 'draft-moved', newestRevisionNo: 2 } },
  });
  expect(draftOf(shop)?.book.rulebook.title).toBe('First');
});
