// A new edition meets open orders: what goes on under it, what is held until the customer was asked, and that no promise is counted twice.
import { describe, expect, it } from 'vitest';
import { changeDraft, importDraft } from '#app/_flows/change-draft.ts';
import { claimOrder } from '#app/_flows/claim-order.ts';
import { mendJar } from '#app/_flows/mend-jar.ts';
import { draftToCount, publishEdition } from '#app/_flows/publish-edition.ts';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { rejudgeOrders } from '#app/_flows/rejudge-open-orders.ts';
import { findCard, listCardIssues } from '#db/cards.ts';
import { findLot, insertLotUse } from '#db/lots.ts';
import { findOrder, orderStage } from '#db/orders.ts';
import { listOpenReservations } from '#db/reservations.ts';
import type { Caution } from '#lib/rulebook/questionnaire.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { massDifferenceUg } from '#lib/units/mass.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { sharePpm } from '#lib/units/share.ts';
import { ACID_JAR, aKey, FERN_JAR, mixUntil, orderJar } from '#test/support/a-bench-order.ts';
import { aDemoRulebook } from '#test/support/a-demo-book.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop, took } from '#test/support/a-shop.ts';
import { nextEdition } from '#test/support/a-visit.ts';

type Bend = (book: Rulebook) => Rulebook;

const read = <T>(shop: AShop, ask: (tx: Parameters<Parameters<AShop['db']['read']>[0]>[0]) => T): T => shop.db.read(ask);
const stageOf = (shop: AShop, id: string) => read(shop, (tx) => orderStage(findOrder(tx, id) ?? expect.fail('no such order')));
const promises = (shop: AShop, id: string) =>
  read(shop, (tx) => listOpenReservations(tx, id).map(({ lotId, massUg }) => `${lotId} ${massUg}`)).sort();

/** Publishes a whole changed rulebook the way people do. */
function publishBook(shop: AShop, bend: Bend, waitsMinutes: number | null = null): string {
  took(importDraft(shop.as('formulator', 3), { parentRevisionNo: 1, rulebook: bend(aDemoRulebook()) }));
  const flow = shop.as('second-formulator', 4);
  const { draft, diff } = readRulebook(flow);
  return took(
    publishEdition(flow, {
      revisionNo: draft?.head.revisionNo ?? 0,
      counted: { sha256: draftToCount(flow)?.sha256 ?? '', variantsCount: 40 },
      lookedAt: diff.map((line) => line.key),
      reason: 'Looked at every line, and each of them is what the last trial jars ask for',
      effectiveAtMs: waitsMinutes === null ? null : shop.as('manager', waitsMinutes).now,
    }),
  ).hash;
}

const dearer: Bend = (book) => ({ ...book, shades: book.shades.map((one) => ({ ...one, priceMinor: moneyMinor(999) })) });
const withText =
  (id: string, text: string): Bend =>
  (book) => ({ ...book, texts: { ...book.texts, en: { ...book.texts.en, [id]: text } } });
const withCaution =
  (id: string, change: (caution: Caution) => Caution): Bend =>
  (book) => ({ ...book, cautions: book.cautions.map((one) => (one.id === id ? change(one) : one)) });
const closed: Bend = (book) => ({
  ...book,
  actives: book.actives.map((one) => ({ ...one, levels: one.levels.map((level) => ({ ...level, permitted: false })) })),
});

/** An order under edition 1, a changed book in force at minute 5, and the hourly look at minute 6. */
function afterwards(bend: Bend, jar = ACID_JAR) {
  const shop = aShop();
  const id = orderJar(shop, jar);
  const hash = nextEdition(shop, bend);
  rejudgeOrders(shop.asNobody(6));
  return { shop, id, hash };
}

describe('an order that nobody has begun', () => {
  it('goes on under the edition that is published, with a new card and promises for that card only', () => {
    const shop = aShop();
    const id = orderJar(shop);
    const before = promises(shop, id);
    const hash = publishBook(shop, dearer);
    expect(stageOf(shop, id)).toBe('placed');
    expect(read(shop, (tx) => listCardIssues(tx, id).map((card) => [card.issueNo, card.editionHash === hash, card.reason]))).toEqual([
      [1, false, 'ordered'],
      [2, true, 'edition 2'],
    ]);
    expect(promises(shop, id)).toEqual(before);
  });
  it('is held by an edition that no longer permits it; its lots are free again and the findings are kept', () => {
    const shop = aShop();
    const id = orderJar(shop);
    publishBook(shop, closed);
    expect([stageOf(shop, id), promises(shop, id)]).toEqual(['held', []]);
    const hold = read(shop, (tx) => findOrder(tx, id)?.hold);
    expect([...new Set(hold?.findings.map((found) => found.code))]).toEqual(['level-not-permitted']);
  });
  it('does not stand in its own way where the shelf holds little more than was promised to it', () => {
    const shop = aShop();
    const id = orderJar(shop);
    read(shop, (tx) => listOpenReservations(tx, id)).forEach(({ lotId }) => {
      const flow = shop.as('mixer', 1);
      const left = (read(shop, (tx) => findLot(tx, lotId)?.leftUg) ?? 0) - 1_000_000;
      const gone = {
        lotId,
        kind: 'stock-take',
        leftMassUg: massDifferenceUg(left),
        leftCount: null,
        reason: 'counted',
        jarCode: null,
      } as const;
      shop.db.write((tx) => insertLotUse(tx, { ...gone, id: flow.newId(), byAccountId: shop.accountId('mixer'), atMs: flow.now }));
    });
    publishBook(shop, dearer);
    expect(stageOf(shop, id)).toBe('placed');
  });
  it('is looked at once: nothing more happens to it under the same edition', () => {
    const { shop, id } = afterwards(dearer);
    rejudgeOrders(shop.asNobody(7));
    expect(read(shop, (tx) => listCardIssues(tx, id))).toHaveLength(2);
  });
});

describe('what the customer was told', () => {
  const differs: readonly (readonly [string, Bend])[] = [
    ['the name of the product', withText('label.product', 'Earth mask')],
    ['the directions', withText('label.directions', 'Leave on for 20 minutes.')],
    ['the name of the shade', (book) => ({ ...book, shades: book.shades.map((one) => ({ ...one, name: { en: 'Other' } })) })],
    ['the name of an active', (book) => ({ ...book, actives: book.actives.map((one) => ({ ...one, name: { en: 'Other' } })) })],
    [
      'an ingredient’s name',
      (book) => ({
        ...book,
        substances: book.substances.map((one) => ({ ...one, labelNames: { ...one.labelNames, EU: `${one.labelNames.EU} X` } })),
      }),
    ],
    ['a caution’s words', withText('caution.sun', 'Stay in the shade for a month.')],
    ['a caution’s words on the label', withText('caution.sun.label', 'Shade!')],
    ['a caution that need not be ticked any more', withCaution('sun', (one) => ({ ...one, mustTick: false }))],
    ['a caution that leaves the kiosk', withCaution('sun', (one) => ({ ...one, places: ['label'] }))],
    ['one caution less', withCaution('time', (one) => ({ ...one, triggers: [] }))],
    [
      'one caution more',
      (book) => ({
        ...book,
        cautions: book.cautions.map((one) => (one.id.startsWith('staff') ? { ...one, triggers: [{ kind: 'always' }] } : one)),
      }),
    ],
    [
      'who answers for the jar',
      (book) => ({
        ...book,
        markets: book.markets.map((one) => ({ ...one, responsiblePerson: { ...one.responsiblePerson, name: 'Somebody else' } })),
      }),
    ],
    [
      'the content of the jar',
      (book) => ({ ...book, jarSizes: book.jarSizes.map((one) => ({ ...one, netUg: (one.netUg - 1_000_000) as typeof one.netUg })) }),
    ],
  ];
  it.each(differs)('holds the order: %s', (_, bend) => {
    const { shop, id } = afterwards(bend);
    expect([stageOf(shop, id), promises(shop, id)]).toEqual(['held', []]);
  });

  const same: readonly (readonly [string, Bend])[] = [
    ['a price', dearer],
    ['a caution of another jar', withText('caution.staff-acid', 'Wear gloves and a mask.')],
    ['a caution in another language', (book) => ({ ...book, texts: { ...book.texts, fr: { ...book.texts.fr, 'caution.sun': 'Autre' } } })],
    ['a question', withText('question.age', 'How old are you?')],
  ];
  it.each(same)('lets the order go on: %s', (_, bend) => {
    const { shop, id, hash } = afterwards(bend);
    expect([stageOf(shop, id), read(shop, (tx) => findCard(tx, id)?.editionHash)]).toEqual(['placed', hash]);
  });
});

describe('an edition that waited for its hour', () => {
  const waiting = (bend: Bend) => {
    const shop = aShop();
    publishBook(shop, bend, 60);
    return { shop, id: orderJar(shop, FERN_JAR, 10) };
  };
  it('meets an order of before at the moment when somebody takes it on', () => {
    const { shop, id } = waiting(closed);
    expect(claimOrder(shop.as('mixer', 61), { requestKey: aKey(), orderId: id })).toMatchObject({ ok: false });
    expect(stageOf(shop, id)).toBe('held');
  });
  it('gives the order that may go on its new card before it is taken on', () => {
    const { shop, id } = waiting(dearer);
    took(claimOrder(shop.as('mixer', 61), { requestKey: aKey(), orderId: id }));
    expect(read(shop, (tx) => findCard(tx, id)?.editionHash)).toBe(readRulebook(shop.as('mixer', 61)).inForce?.head.hash);
    expect(readRulebook(shop.as('mixer', 61)).inForce?.head.editionNo).toBe(2);
  });
  it('leaves orders alone until then', () => {
    const { shop, id } = waiting(closed);
    rejudgeOrders(shop.asNobody(59));
    expect(stageOf(shop, id)).toBe('placed');
  });
});

it('a jar that was begun finishes under its edition', () => {
  const shop = aShop();
  const id = mixUntil(shop, orderJar(shop), { lineNo: 1 });
  const level = { kind: 'set-level', activeId: 'niacinamide', levelPpm: sharePpm(20_000), permitted: false } as const;
  took(changeDraft(shop.as('formulator', 2), { parentRevisionNo: 1, change: { ...level, priceMinor: moneyMinor(200) } }));
  nextEdition(shop, closed);
  rejudgeOrders(shop.asNobody(6));
  expect([stageOf(shop, id), promises(shop, id).length > 0]).toEqual(['mixing', true]);
});

describe('a jar that is thrown away under a new edition', () => {
  const remade = (bend: Bend) => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 2 });
    nextEdition(shop, bend);
    const remakeOrderId = shop.as('mixer').newId();
    const mend = { kind: 'discard', reason: 'the beaker fell', remakeOrderId } as const;
    took(mendJar(shop.as('mixer', 6), { requestKey: aKey(), orderId, mend }));
    return { shop, id: remakeOrderId };
  };
  it('is made again under it where the customer would be told the same', () => {
    const { shop, id } = remade(dearer);
    expect([stageOf(shop, id), promises(shop, id).length > 0]).toEqual(['claimed', true]);
  });
  it('waits on hold where a caution says something else, with nothing promised to it', () => {
    const { shop, id } = remade(withText('caution.time', 'Leave it on for an hour.'));
    expect([stageOf(shop, id), promises(shop, id)]).toEqual(['held', []]);
  });
});
