// Visits at the kiosk of a test shop: answers by question, calls as the kiosk sends them, and a second edition to stumble over.
import { editionInForce } from '#app/_flows/edition-in-force.ts';
import { findMasks } from '#app/_flows/find-masks.ts';
import type { OrderAsked } from '#app/_flows/place-order.ts';
import type { VisitAsked } from '#app/_flows/visit-question.ts';
import { insertEdition } from '#db/editions.ts';
import type { Answer } from '#lib/answers/read-answers.ts';
import { editionText } from '#lib/edition/canonical.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { aKey } from './a-bench-order.ts';
import { aDemoRulebook, variantFrom } from './a-demo-book.ts';
import type { AShop } from './a-shop.ts';
import { took } from './a-shop.ts';
import { later } from './shop-facts.ts';

/** Somebody who may have everything and wishes for soft, smooth skin. */
export const EASY = { age: ['age-18'], wish: ['wish-dry', 'wish-rough'], sting: ['sting-never'], today: ['today-none'] };
/** Somebody whose answers rule out acids, ask for the mildest and add a caution. */
export const CAREFUL = { ...EASY, sting: ['sting-often'] };

type Given = Readonly<Record<string, readonly string[]>>;

export const answersTo = (given: Given): readonly Answer[] =>
  Object.entries(given).map(([questionId, optionIds]) => ({ questionId, optionIds }));

export function editionHashOf(shop: AShop, minutes = 0): string {
  const flow = shop.asNobody(minutes);
  return shop.db.read((tx) => editionInForce(tx, flow)?.head.hash) ?? '';
}

export const visitAsked = (shop: AShop, given: Given = EASY, bend: Partial<VisitAsked> = {}): VisitAsked => ({
  editionHash: editionHashOf(shop),
  lang: 'en',
  jarSizeId: 'jar-50',
  answers: answersTo(given),
  ...bend,
});

/** An acid mask for EASY: it owes the sun caution, which has a tick of its own. */
export const ACID_MASK = 'chalk-down|lactic-acid@5000';
/** A mild mask that everybody who may buy at all may buy. */
export const MILD_MASK = 'chalk-down|panthenol@7500';

export const orderAsked = (shop: AShop, bend: Partial<OrderAsked> = {}): OrderAsked => ({
  ...visitAsked(shop),
  requestKey: aKey(),
  variant: variantFrom(MILD_MASK),
  counterCode: 'CS',
  tickedCautionIds: ['sun', 'try-first', 'broken-skin'],
  hasReadAll: true,
  ...bend,
});

/** The masks that a visit is shown. */
export function masksShown(shop: AShop, asked: VisitAsked = visitAsked(shop), minutes = 0) {
  const found = took(findMasks(shop.asNobody(minutes), asked));
  if (found.kind !== 'masks') throw new Error(`no masks but ${found.outcome}`);
  return found.masks;
}

/** Puts the next edition into force some minutes after the shop was made. @returns its hash */
export function nextEdition(shop: AShop, bend: (rulebook: Rulebook) => Rulebook, minutes = 5): string {
  return shop.db.write(
    (tx) =>
      insertEdition(tx, {
        documentOf: (editionNo) => editionText(bend(aDemoRulebook()), editionNo),
        variantsCount: 1n,
        publishedAtMs: later(minutes),
        effectiveAtMs: later(minutes),
        authorAccountId: shop.accountId('formulator'),
        approverAccountId: shop.accountId('second-formulator'),
        fromRevisionNo: 1,
      }).hash,
  );
}

/** Every row of every table but the rulebooks themselves, as text: what a visit may have left behind. */
export function everythingStored({ sqlite }: Pick<AShop, 'sqlite'>): string {
  const tables = sqlite
    .prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%' ORDER BY name")
    .pluck()
    .all();
  const rows = tables
    .filter((table) => !['edition', 'draft_revision'].includes(table))
    .map((table) => `${table}: ${JSON.stringify(sqlite.prepare(`SELECT * FROM "${table}"`).all())}`);
  return rows.join('\n');
}
