// One line of drafts, and the edition in force.

import { describe, expect, test } from 'vitest';
import { findLatestDraft, listDrafts, saveDraft } from '#db/drafts.ts';
import { findEdition, findEditionDocument, findEditionInForce, listEditionSignatures, listEditions } from '#db/editions.ts';
import { instantMs } from '#lib/units/time.ts';
import { shopWithEdition } from '#test/support/founded-shop.ts';
import { FORMULATOR, later, publish, SECOND_FORMULATOR, T0 } from '#test/support/shop-facts.ts';

describe('drafts and editions', () => {
  test('a draft saved from an older revision is refused with the newest number', () => {
    const { db } = shopWithEdition();
    const save = (parentRevisionNo: number | null) =>
      db.write((tx) => saveDraft(tx, { parentRevisionNo, document: '{}', byAccountId: FORMULATOR, changed: 'levels', atMs: later(1) }));
    expect(save(1)).toMatchObject({ ok: true, value: { revisionNo: 2 } });
    expect(save(1)).toEqual({ ok: false, refusal: { kind: 'draft-moved', newestRevisionNo: 2 } });
    expect(save(null)).toEqual({ ok: false, refusal: { kind: 'draft-moved', newestRevisionNo: 2 } });
    db.read((tx) => {
      expect(findLatestDraft(tx)?.revisionNo).toBe(2);
      expect(listDrafts(tx, 10).map(({ revisionNo }) => revisionNo)).toEqual([2, 1]);
    });
  });

  test('the edition in force is the one that took effect last', () => {
    const { db, editionHash } = shopWithEdition();
    const second = db.write((tx) => publish(tx, 'second', 30));
    const third = db.write((tx) => publish(tx, 'third', 20));
    db.read((tx) => {
      expect(findEditionInForce(tx, instantMs(T0 - 1))).toBeUndefined();
      expect(findEditionInForce(tx, later(19))?.hash).toBe(editionHash);
      expect(findEditionInForce(tx, later(20))?.hash).toBe(third.hash);
      expect(findEditionInForce(tx, later(30))?.hash).toBe(second.hash);
      expect(listEditions(tx).map(({ editionNo }) => editionNo)).toEqual([3, 2, 1]);
      expect(findEdition(tx, editionHash)?.variantsCount).toBe(12_345_678_901_234_567_890n);
      expect(findEditionDocument(tx, editionHash)).toBe('{"title":"first"}');
      expect(listEditionSignatures(tx, editionHash)).toMatchObject([{ accountId: SECOND_FORMULATOR }]);
    });
  });
});
