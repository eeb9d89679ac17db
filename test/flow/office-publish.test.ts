// From a change of the draft to the edition that kiosks follow: each refusal once, and what a new edition does to open orders.
import { describe, expect, it } from 'vitest';
import { changeDraft } from '#app/_flows/change-draft.ts';
import type { AskedChange } from '#app/_flows/draft-change.ts';
import type { Flow } from '#app/_flows/flow.ts';
import { signedEditions } from '#app/_flows/list-editions.ts';
import { openAccount } from '#app/_flows/open-accounts.ts';
import type { PublishOrder } from '#app/_flows/publish-edition.ts';
import { draftToCount, publishEdition } from '#app/_flows/publish-edition.ts';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import { showKiosk } from '#app/_flows/show-kiosk.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { sharePpm } from '#lib/units/share.ts';
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
    took(change(shop, { kind: 'set-caution-text', cautionId: 'eyes', lang: 'en', text: '', labelText: '' }));
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
  it('can wait for its hour', () => {
    const shop = aShop();
    took(change(shop));
    const flow = shop.as('second-formulator', 3);
    took(publishEdition(flow, order(flow, { effectiveAtMs: shop.as('manager', 60).now })));
    expect([
      readRulebook(shop.as('manager', 59)).inForce?.head.editionNo,
      readRulebook(shop.as('manager', 60)).inForce?.head.editionNo,
    ]).toEqual([1, 2]);
  });
});

describe('people', () => {
  it('cannot share a name to sign in with', () => {
    const shop = aShop();
    const person = { code: 'mixer', name: 'Another', role: 'mixer', secretHash: '$argon2id$v=19$m=1,t=1,p=1$AAAA$AAAA' } as const;
    expect(openAccount(shop.as('manager', 1), person)).toEqual({ ok: false, refusal: { kind: 'name-taken' } });
  });
});
