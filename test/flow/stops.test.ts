// Stopping at once and lifting by two people, over the real routes. Invented lots and reasons; the rule of two is the house's own.
import { describe, expect, test } from 'vitest';
import { claimOrder } from '#app/_flows/claim-order.ts';
import { findMasks } from '#app/_flows/find-masks.ts';
import { liftStop } from '#app/_flows/lift-stop.ts';
import { placeStop } from '#app/_flows/place-stop.ts';
import { releaseJar } from '#app/_flows/release-jar.ts';
import { admitSecond } from '#app/_flows/second-person.ts';
import { stopsOnPlan } from '#app/_flows/shop-context.ts';
import { showStops } from '#app/_flows/show-stops.ts';
import { beginSignIn } from '#app/_flows/sign-in.ts';
import { ledgerSeqNo } from '#db/ledger.ts';
import { findLotByCode } from '#db/lots.ts';
import { findOrder } from '#db/orders.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { sharePpm } from '#lib/units/share.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import { ACID_JAR, aKey, benchOrder, FERN_JAR, mixUntil, orderJar } from '#test/support/a-bench-order.ts';
import { aDemoBook, TEST_DAY, variantFrom } from '#test/support/a-demo-book.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop, took } from '#test/support/a-shop.ts';
import { EASY, masksShown, visitAsked } from '#test/support/a-visit.ts';
import { idOf, T0 } from '#test/support/shop-facts.ts';

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

  test('by a material of the base: every order waits, and the kiosk has nothing to offer', () => {
    const shop = aShop();
    const [fern, acid] = [orderJar(shop), orderJar(shop, ACID_JAR)];
    const { waitingCodes } = took(placeStop(shop.as('manager'), { subjectKind: 'material', subjectId: 'phenoxyethanol', reason }));
    expect([...waitingCodes].sort()).toEqual([codeOf(shop, fern), codeOf(shop, acid)].sort());
    expect(took(findMasks(shop.asNobody(), visitAsked(shop, EASY)))).toMatchObject({ kind: 'outcome', outcome: 'none' });
  });

  test.each([
    ['active', 'citrate-buffer'],
    ['material', 'citrate-buffer-20'],
    ['stock', 'citrate-buffer-20-neat'],
  ] as const)('by the adjuster that the program chose, as %s', (subjectKind, subjectId) => {
    const book = aDemoBook();
    const variant = variantFrom('fern-bank|niacinamide@20000');
    const plain = judgeVariant(book, variant, { day: TEST_DAY }).plan ?? expect.fail('no plan');
    const adjusted = {
      ...plain,
      adjuster: { activeId: 'citrate-buffer', levelPpm: sharePpm(1000) },
      lines: [
        ...plain.lines,
        { stockId: 'citrate-buffer-20-neat', sharePpm: sharePpm(5000), purpose: 'adjuster' as const, materialId: 'citrate-buffer-20' },
      ],
    };
    const stop = { id: idOf(1), subjectKind, subjectId, reason, byAccountId: idOf(2), atMs: T0 };
    expect(stopsOnPlan(book, [stop], plain)).toEqual([]);
    expect(stopsOnPlan(book, [stop], adjusted)).toEqual([stop]);
  });

  test('a jar that is mixed by then is not released', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), 'release');
    const jarCode = benchOrder(shop, orderId).view.jar?.batchCode ?? '';
    took(placeStop(shop.as('mixer', 8), { subjectKind: 'shade', subjectId: 'fern-bank', reason }));
    const release = (minutes: number) => releaseJar(shop.as('mixer', minutes), { requestKey: aKey(), orderId, jarCode });
    expect(release(9)).toEqual({ ok: false, refusal: { kind: 'stopped', reasons: [reason] } });
    const [stop] = showStops(shop.as('formulator', 9)).rows;
    const lift = { stopId: stop?.stop.id ?? '', reason: 'looked at', secondAccountId: shop.accountId('manager') };
    took(liftStop(shop.as('formulator', 10), lift));
    expect(release(11).ok).toBe(true);
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

  test('whoever is locked out is no second person, even with the right password, and is on record', () => {
    const shop = aShop();
    const flow = shop.as('formulator');
    const attempt = beginSignIn(flow, 'manager');
    expect(admitSecond(flow, { ...attempt, isLocked: true }, true)).toEqual({ ok: false, refusal: { kind: 'second-locked' } });
    expect(shop.sqlite.prepare('SELECT outcome FROM auth_attempt ORDER BY at_ms DESC LIMIT 1').pluck().get()).toBe('locked');
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
