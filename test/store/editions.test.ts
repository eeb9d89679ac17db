// One line of drafts, and the edition in force.

import { describe, expect, test } from 'vitest';
import { findLatestDraft, listDrafts, saveDraft } from '#db/drafts.ts';
import {
  findEdition,
  findEditionDocument,
  findEditionInForce,
  findNewestEdition,
  listEditionSignatures,
  listEditions,
} from '#db/editions.ts';
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

  test('the edition in force is the youngest of those whose hour has come: one that waited never undoes a younger one', () => {
    const { db, editionHash } = shopWithEdition();
    const second = db.write((tx) => publish(tx, 'second', 10));
    db.write((tx) => publish(tx, 'third', 30));
    const fourth = db.write((tx) => publish(tx, 'fourth', 20));
    db.read((tx) => {
      expect(findEditionInForce(tx, instantMs(T0 - 1))).toBeUndefined();
      expect(findEditionInForce(tx, later(9))?.hash).toBe(editionHash);
      expect(findEditionInForce(tx, later(19))?.hash).toBe(second.hash);
      expect(findEditionInForce(tx, later(20))?.hash).toBe(fourth.hash);
      expect(findEditionInForce(tx, later(30))?.hash).toBe(fourth.hash);
      expect(findNewestEdition(tx)?.hash).toBe(fourth.hash);
      expect(listEditions(tx).map(({ editionNo }) => editionNo)).toEqual([4, 3, 2, 1]);
      expect(findEdition(tx, editionHash)?.variantsCount).toBe(12_345_678_901_234_567_890n);
      expect(findEditionDocument(tx, editionHash)).toBe('{"title":"first","editionNo":1}');
      expect(listEditionSignatures(tx, editionHash)).toMatchObject([{ accountId: SECOND_FORMULATOR }]);
    });
  });

  test('the same words published again are another edition', () => {
    const { db, editionHash } = shopWithEdition();
    const again = db.write((tx) => publish(tx, 'first', 1));
    expect([again.editionNo, again.hash === editionHash]).toEqual([2, false]);
  });
});
