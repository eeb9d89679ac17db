// Stopping at once and lifting by two people, over the real routes. Invented lots and reasons; the rule of two is the house's own.
import { describe, expect, test } from 'vitest';
import { claimOrder } from '#app/_flows/claim-order.ts';
import { liftStop } from '#app/_flows/lift-stop.ts';
import { placeStop } from '#app/_flows/place-stop.ts';
import { admitSecond } from '#app/_flows/second-person.ts';
import { showStops } from '#app/_flows/show-stops.ts';
import { beginSignIn } from '#app/_flows/sign-in.ts';
import { ledgerSeqNo } from '#db/ledger.ts';
import { findLotByCode } from '#db/lots.ts';
import { findOrder } from '#db/orders.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { ACID_JAR, aKey, FERN_JAR, orderJar } from '#test/support/a-bench-order.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop, took } from '#test/support/a-shop.ts';
import { EASY, masksShown, visitAsked } from '#test/support/a-visit.ts';
import { idOf } from '#test/support/shop-facts.ts';

const seqOf = ({ db }: AShop): number => db.read(ledgerSeqNo);
const codeOf = (shop: AShop, orderId: string): string | undefined => shop.db.read((tx) => findOrder(tx, orderId)?.order.shortCode);
const shades = (shop: AShop): readonly string[] =>
  masksShown(shop, visitAsked(shop, EASY)).map(({ variant }) => variantKey(variant).split('|')[0] ?? '');
const reason = 'it came out streaky';

describe('one person stops', () => {
  test('and the kiosk offers nothing with it, the bench does not begin it, and the orders that wait are named', () => {
    const shop = aShop();
    const [fern, acid] = [orderJar(shop), orderJar(shop, ACID_JAR)];
    expect(shades(shop)).toContain('fern-bank');
    const stopped = took(placeStop(shop.as('mixer'), { subjectKind: 'shade', subjectId: 'fern-bank', reason }));
    expect(stopped.waitingCodes).toEqual([codeOf(shop, fern)]);
    expect(shades(shop)).not.toContain('fern-bank');
    const claim = (orderId: string) => claimOrder(shop.as('mixer'), { requestKey: aKey(), orderId });
    expect(claim(fern)).toEqual({ ok: false, refusal: { kind: 'stopped', reasons: [reason] } });
    expect(claim(acid).ok).toBe(true);
  });

  test.each<readonly ['lot' | 'material' | 'stock' | 'pair' | 'active' | 'variant', (shop: AShop) => string]>([
    ['lot', (shop) => shop.db.read((tx) => findLotByCode(tx, 'LAC-50-108')?.lot.id) ?? expect.fail('no such lot')],
    ['material', () => 'lactic-acid-50'],
    ['stock', () => 'lactic-acid-50-neat'],
    ['pair', () => 'lactic-acid-50|kaolin'],
    ['active', () => 'lactic-acid'],
    ['variant', () => ACID_JAR],
  ])('by %s: the jar with it waits and the other goes on', (subjectKind, subjectOf) => {
    const shop = aShop();
    const acid = orderJar(shop, ACID_JAR);
    orderJar(shop, FERN_JAR);
    const { waitingCodes } = took(placeStop(shop.as('formulator'), { subjectKind, subjectId: subjectOf(shop), reason }));
    expect(waitingCodes).toEqual([codeOf(shop, acid)]);
  });

  test('a thing that is not there, and the same thing twice, are refused and nothing is written', () => {
    const shop = aShop();
    const stop = (subjectId: string, subjectKind: 'shade' | 'pair' | 'lot' = 'shade') =>
      placeStop(shop.as('manager'), { subjectKind, subjectId, reason });
    took(stop('kaolin|water', 'pair'));
    const before = seqOf(shop);
    expect(stop('no-such-shade')).toEqual({ ok: false, refusal: { kind: 'no-such-subject' } });
    expect(stop('kaolin|kaolin', 'pair')).toEqual({ ok: false, refusal: { kind: 'no-such-subject' } });
    expect(stop('kaolin|water|illite', 'pair')).toEqual({ ok: false, refusal: { kind: 'no-such-subject' } });
    expect(stop(idOf(9), 'lot')).toEqual({ ok: false, refusal: { kind: 'no-such-subject' } });
    expect(stop('water|kaolin', 'pair')).toEqual({ ok: false, refusal: { kind: 'stopped-already' } });
    expect(seqOf(shop)).toBe(before);
  });
});

describe('two people lift', () => {
  const stopped = (shop: AShop): string => {
    took(placeStop(shop.as('mixer'), { subjectKind: 'shade', subjectId: 'fern-bank', reason }));
    return showStops(shop.as('manager')).rows[0]?.stop.id ?? expect.fail('no stop');
  };

  test('and what was stopped is offered again; the stop stays in the list, with all three names', () => {
    const shop = aShop();
    const stopId = stopped(shop);
    const lift = () => liftStop(shop.as('formulator'), { stopId, reason: 'sieved anew', secondAccountId: shop.accountId('manager') });
    took(lift());
    expect(shades(shop)).toContain('fern-bank');
    expect(showStops(shop.as('manager')).rows).toMatchObject([
      { subject: 'Fern Bank', liftedBy: expect.any(Array), lifted: { reason: 'sieved anew' } },
    ]);
    expect(new Set([showStops(shop.as('manager')).rows[0]?.by, ...(showStops(shop.as('manager')).rows[0]?.liftedBy ?? [])]).size).toBe(3);
    expect(lift()).toEqual({ ok: false, refusal: { kind: 'lifted-already' } });
    expect(liftStop(shop.as('formulator'), { stopId: idOf(3), reason: 'x', secondAccountId: shop.accountId('manager') })).toEqual({
      ok: false,
      refusal: { kind: 'no-such-stop' },
    });
    // It can be stopped again.
    expect(placeStop(shop.as('mixer'), { subjectKind: 'shade', subjectId: 'fern-bank', reason }).ok).toBe(true);
  });

  test('the same person twice, or a mixer, is no second person here', () => {
    const shop = aShop();
    const flow = shop.as('formulator');
    const second = (code: string) => admitSecond(flow, beginSignIn(flow, code), true, ['formulator', 'manager']);
    expect(second('formulator')).toEqual({ ok: false, refusal: { kind: 'second-same-person' } });
    expect(second('mixer')).toEqual({ ok: false, refusal: { kind: 'second-role' } });
    expect(second('second-formulator')).toEqual({ ok: true, value: { accountId: shop.accountId('second-formulator') } });
  });
});
