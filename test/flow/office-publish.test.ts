// From a change of the draft to the edition that kiosks follow: each refusal once, and what a new edition does to open orders.
import { describe, expect, it } from 'vitest';
import { changeDraft, importDraft } from '#app/_flows/change-draft.ts';
import type { AskedChange } from '#app/_flows/draft-change.ts';
import { exportEdition } from '#app/_flows/export-edition.ts';
import type { Flow } from '#app/_flows/flow.ts';
import { signedEditions } from '#app/_flows/list-editions.ts';
import { openAccount } from '#app/_flows/open-accounts.ts';
import type { PublishOrder } from '#app/_flows/publish-edition.ts';
import { draftToCount, publishEdition } from '#app/_flows/publish-edition.ts';
import { readPublish } from '#app/_flows/read-publish.ts';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { showKiosk } from '#app/_flows/show-kiosk.ts';
import { sha256 } from '#app/_server/services.ts';
import { parseRulebook } from '#lib/contracts/rulebook.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { sharePpm } from '#lib/units/share.ts';
import { aDemoRulebook } from '#test/support/a-demo-book.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop, took } from '#test/support/a-shop.ts';

const CLOSE_LEVEL: AskedChange = {
  kind: 'set-level',
  activeId: 'niacinamide',
  levelPpm: sharePpm(20_000),
  permitted: false,
  priceMinor: moneyMinor(200),
};
const NEW_PRICE: AskedChange = { ...CLOSE_LEVEL, permitted: true, priceMinor: moneyMinor(260) };

/** A pair that had a limit needs only a caution from now on. */
const LOOSEN: AskedChange = {
  kind: 'judge-pair',
  firstMaterialId: 'lactic-acid-50',
  secondMaterialId: 'illite',
  verdict: 'caution',
  cautionId: 'staff-acid-clay',
  reason: 'kept its pH for a year',
  source: 'bench notes',
};

/** What an approver sends after having looked at everything. */
function order(flow: Flow, more: Partial<PublishOrder> = {}): PublishOrder {
  const draft = draftToCount(flow);
  const { draft: open, diff } = readRulebook(flow);
  return {
    revisionNo: open?.head.revisionNo ?? 0,
    counted: { sha256: draft?.sha256 ?? '', variantsCount: 40 },
    lookedAt: diff.map((line) => line.key),
    reason: 'Looked at every line, and each of them is what the last trial jars ask for',
    effectiveAtMs: null,
    ...more,
  };
}

const change = (shop: AShop, asked: AskedChange = NEW_PRICE, parentRevisionNo = 1) =>
  changeDraft(shop.as('formulator', 1), { parentRevisionNo, change: asked });

const publishChange = (shop: AShop, asked: AskedChange): void => {
  took(change(shop, asked));
  const flow = shop.as('second-formulator', 3);
  took(publishEdition(flow, order(flow)));
};

function exported(shop: AShop, editionNo: number) {
  const flow = shop.as('manager', 9);
  const hash = signedEditions(flow).find(({ head }) => head.editionNo === editionNo)?.head.hash ?? '';
  return { hash, ...took(exportEdition(flow, hash)) };
}

describe('changing the draft', () => {
  it('makes a new revision, and the edition in force stays as it is', () => {
    const shop = aShop();
    expect(took(change(shop)).revisionNo).toBe(2);
    const { inForce, diff } = readRulebook(shop.as('manager', 2));
    expect(inForce?.head.editionNo).toBe(1);
    expect(diff.map((line) => [line.effect, line.key])).toEqual([['offer', 'actives/niacinamide/levels.1.priceMinor']]);
  });
  it('tells the second of two editors that the draft has moved, and keeps both revisions', () => {
    const shop = aShop();
    took(change(shop));
    expect(change(shop)).toEqual({ ok: false, refusal: { kind: 'draft-moved', newestRevisionNo: 2 } });
  });
  it('refuses a change of something that is not there', () => {
    const shop = aShop();
    expect(change(shop, { ...NEW_PRICE, levelPpm: sharePpm(7) })).toMatchObject({ ok: false, refusal: { kind: 'nothing-to-change' } });
  });
  it('signs a judgement with who and when; neither is taken from outside', () => {
    const shop = aShop();
    took(
      change(shop, {
        kind: 'judge-pair',
        firstMaterialId: 'illite',
        secondMaterialId: 'panthenol',
        verdict: 'never',
        reason: 'clumps',
        source: 'bench notes',
      }),
    );
    const judged = readRulebook(shop.as('manager', 2)).draft?.book.rulebook.pairJudgements.at(-1);
    expect(judged).toMatchObject({ id: 'illite-with-panthenol', by: 'formulator', on: '2026-11-25' });
  });
});

describe('publishing', () => {
  it('freezes the draft, names both people and keeps the meaning of the signature', () => {
    const shop = aShop();
    took(change(shop));
    const approver = shop.as('second-formulator', 3);
    expect(took(publishEdition(approver, order(approver))).editionNo).toBe(2);
    const [newest] = signedEditions(approver);
    expect(newest?.head).toMatchObject({
      authorAccountId: shop.accountId('formulator'),
      approverAccountId: shop.accountId('second-formulator'),
    });
    expect(newest?.signatures[0]?.meaning).toContain('I approve edition 2 for sale.');
    expect(took(showKiosk(shop.asNobody(4), { counterCode: null })).shown.editionHash).toBe(newest?.head.hash);
  });

  const refusals: readonly (readonly [string, 'formulator' | 'second-formulator', Partial<PublishOrder>, string])[] = [
    ['one’s own work', 'formulator', {}, 'own-work'],
    ['lines that nobody looked at', 'second-formulator', { lookedAt: [] }, 'not-looked-at'],
    ['a reason of three words', 'second-formulator', { reason: 'It is fine' }, 'no-reason'],
  ];
  it.each(refusals)('refuses %s', (_, who, more, kind) => {
    const shop = aShop();
    took(change(shop, LOOSEN));
    const flow = shop.as(who, 3);
    const refused = publishEdition(flow, order(flow, more));
    expect(refused.ok === false && refused.refusal.kind === 'gate-closed' && refused.refusal.gate.open.map((point) => point.kind)).toEqual([
      kind,
    ]);
    expect(signedEditions(flow)).toHaveLength(1);
  });
  it('refuses an unsound draft', () => {
    const shop = aShop();
    const { cautionId: _, ...noCaution } = LOOSEN;
    took(change(shop, noCaution));
    const flow = shop.as('second-formulator', 3);
    expect(publishEdition(flow, order(flow))).toMatchObject({
      ok: false,
      refusal: { kind: 'gate-closed', gate: { open: [{ kind: 'unsound' }] } },
    });
  });
  it('refuses a draft that moved, a count of another document, and a time that is over', () => {
    const shop = aShop();
    took(change(shop));
    const flow = shop.as('second-formulator', 3);
    expect(publishEdition(flow, order(flow, { revisionNo: 1 }))).toMatchObject({ refusal: { kind: 'draft-moved', newestRevisionNo: 2 } });
    expect(publishEdition(flow, order(flow, { counted: { sha256: 'other', variantsCount: 1 } }))).toMatchObject({
      refusal: { kind: 'not-counted' },
    });
    expect(publishEdition(flow, order(flow, { effectiveAtMs: shop.as('manager', 1).now }))).toMatchObject({
      refusal: { kind: 'effective-in-the-past' },
    });
  });
  it('goes back to older rules as a new edition', () => {
    const shop = aShop();
    const first = exported(shop, 1);
    publishChange(shop, NEW_PRICE);
    took(importDraft(shop.as('formulator', 4), { parentRevisionNo: 2, rulebook: took(parseRulebook(JSON.parse(first.document))) }));
    const flow = shop.as('second-formulator', 5);
    const head = took(publishEdition(flow, order(flow)));
    expect([head.editionNo, readRulebook(shop.as('manager', 6)).inForce?.head.editionNo]).toEqual([3, 3]);
    expect(took(parseRulebook(JSON.parse(exported(shop, 3).document)))).toEqual(took(parseRulebook(JSON.parse(first.document))));
    expect(head.hash).not.toBe(first.hash);
    expect(sha256(exported(shop, 3).document)).toBe(head.hash);
  });
  it('does not ask again and again about a market that is left out', () => {
    const shop = aShop();
    const rulebook = aDemoRulebook();
    const markets = rulebook.markets.map(({ makerMandate, ...market }) =>
      market.id === 'US' || !makerMandate ? market : { ...market, makerMandate },
    );
    took(importDraft(shop.as('formulator', 1), { parentRevisionNo: 1, rulebook: { ...rulebook, markets } }));
    const flow = shop.as('second-formulator', 2);
    expect(readRulebook(flow).diff.map(({ effect, key }) => `${effect} ${key}`)).toEqual(['widens markets/US']);
    expect(JSON.parse(draftToCount(flow)?.document ?? '').markets).toHaveLength(1);
    expect(JSON.parse(readPublish(flow)?.draftDocument ?? '').markets).toHaveLength(1);
    took(publishEdition(flow, order(flow)));
    expect(readRulebook(flow)).toMatchObject({ diff: [], inForce: { head: { editionNo: 2 } } });
  });
  it('answers the same request twice with one edition', () => {
    const shop = aShop();
    took(change(shop));
    const flow = shop.as('second-formulator', 3);
    const asked = order(flow);
    took(publishEdition(flow, asked));
    expect(publishEdition(flow, asked)).toEqual({ ok: false, refusal: { kind: 'already-published', editionNo: 2 } });
  });
});

describe('an edition that waits for its hour', () => {
  const waits = (shop: AShop, asked: AskedChange, minutes: number) => {
    const flow = shop.as('second-formulator', 3);
    took(change(shop, asked));
    took(publishEdition(flow, order(flow, { effectiveAtMs: shop.as('manager', minutes).now })));
  };
  const inForceAt = (shop: AShop, minutes: number) => readRulebook(shop.as('manager', minutes)).inForce?.head.editionNo;

  it('comes into force then and not before', () => {
    const shop = aShop();
    waits(shop, NEW_PRICE, 60);
    expect([inForceAt(shop, 59), inForceAt(shop, 60)]).toEqual([1, 2]);
  });
  it('is what the next draft is compared with', () => {
    const shop = aShop();
    waits(shop, NEW_PRICE, 60);
    took(change(shop, CLOSE_LEVEL, 2));
    expect(readRulebook(shop.as('manager', 5)).diff.map((line) => line.key)).toEqual([
      'actives/niacinamide/levels.1.permitted',
      'actives/niacinamide/levels.1.priceMinor',
    ]);
  });
  it('never undoes a younger one: a level that was closed meanwhile stays closed', () => {
    const shop = aShop();
    waits(shop, NEW_PRICE, 60);
    took(change(shop, CLOSE_LEVEL, 2));
    const flow = shop.as('second-formulator', 5);
    expect(readPublish(flow)?.replaces.map((head) => head.editionNo)).toEqual([2]);
    const refused = publishEdition(flow, order(flow, { reason: '', lookedAt: [], counted: { ...order(flow).counted, variantsCount: 0 } }));
    expect(refused.ok === false && refused.refusal.kind === 'gate-closed' && refused.refusal.gate.notices).toEqual([
      { kind: 'replaces-edition', editionNo: 2 },
    ]);
    took(publishEdition(flow, order(flow)));
    expect([inForceAt(shop, 6), inForceAt(shop, 61)]).toEqual([3, 3]);
    expect(signedEditions(flow).map(({ head, replacedByNo }) => [head.editionNo, replacedByNo])).toEqual([
      [3, null],
      [2, 3],
      [1, null],
    ]);
    expect(readRulebook(shop.as('manager', 61)).inForce?.book.actives.get('niacinamide')?.levels[1]?.permitted).toBe(false);
  });
  it('comes first where the younger one waits longer', () => {
    const shop = aShop();
    waits(shop, NEW_PRICE, 60);
    took(change(shop, CLOSE_LEVEL, 2));
    const flow = shop.as('second-formulator', 5);
    took(publishEdition(flow, order(flow, { effectiveAtMs: shop.as('manager', 90).now })));
    expect([inForceAt(shop, 59), inForceAt(shop, 60), inForceAt(shop, 90)]).toEqual([1, 2, 3]);
  });
});

describe('people', () => {
  it('cannot share a name to sign in with', () => {
    const shop = aShop();
    const person = { code: 'mixer', name: 'Another', role: 'mixer', secretHash: '$argon2id$v=19$m=1,t=1,p=1$AAAA$AAAA' } as const;
    expect(openAccount(shop.as('manager', 1), person)).toEqual({ ok: false, refusal: { kind: 'name-taken' } });
  });
});
