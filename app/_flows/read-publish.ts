// What the publish page needs beside the draft itself: both texts for the count, who edited, and what was ordered lately.
import type { EditionHead } from '#db/editions.ts';
import { findEditionDocument, findNewestEdition } from '#db/editions.ts';
import { listOrderedVariantKeys } from '#db/orders.ts';
import { readShop } from '#db/shop.ts';
import { draftText } from '#lib/edition/canonical.ts';
import { servedDraft } from '#lib/edition/publish-gate.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { addDays, localDayIn } from '#lib/units/time.ts';
import { latestDraft } from './change-draft.ts';
import type { Flow } from './flow.ts';
import { authorsSince, replacedBy } from './publish-edition.ts';

/** How far back orders are asked whether they are among the lost. */
const ORDERED_DAYS = 90;

export interface PublishView {
  /** As it would be published. */
  readonly draftDocument: string;
  /** Of the edition that the draft follows. */
  readonly newestDocument: string | null;
  /** Editions that still wait for their hour and never come into force when the draft is published now. */
  readonly replaces: readonly EditionHead[];
  readonly day: LocalDay;
  readonly authorIds: readonly string[];
  readonly orderedKeys: readonly string[];
}

/** Null before anything was imported. */
export function readPublish(flow: Flow): PublishView | null {
  return flow.db.read((tx) => {
    const draft = latestDraft(tx, flow);
    if (!draft) return null;
    const newest = findNewestEdition(tx);
    const day = localDayIn(readShop(tx).zone, flow.now);
    return {
      draftDocument: draftText(servedDraft(draft.book.rulebook)),
      newestDocument: (newest && findEditionDocument(tx, newest.hash)) ?? null,
      replaces: replacedBy(tx, flow.now),
      day,
      authorIds: authorsSince(tx, newest?.fromRevisionNo ?? 0),
      orderedKeys: listOrderedVariantKeys(tx, addDays(day, -ORDERED_DAYS)),
    };
  });
}
