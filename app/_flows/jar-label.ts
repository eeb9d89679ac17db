// The label of one jar: from the lots that were really used and the recipe that the customer was shown. Made once, at the decision, and kept.
import type { Reading } from '#db/connection.ts';
import { readShop } from '#db/shop.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { compose } from '#lib/composition/compose.ts';
import { cautionsForMarket } from '#lib/label/cautions-for-market.ts';
import type { LabelContent } from '#lib/label/label-content.ts';
import { labelContent } from '#lib/label/label-content.ts';
import type { UsedLot } from '#lib/label/use-by.ts';
import { durabilityOf, lastDayOfUse } from '#lib/label/use-by.ts';
import { labelIngredients } from '#lib/law/label-order.ts';
import { need } from '#lib/rulebook/book.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { localDayIn } from '#lib/units/time.ts';
import { judge } from '#lib/verdict/judge.ts';
import { weighedAmounts } from '#lib/weighing/release-jar.ts';
import type { BenchOrder } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import { usedLots } from './used-lots.ts';

export interface JarLabel {
  readonly content: LabelContent;
  /** Last day of use, whether the label prints it or an opening period. */
  readonly useByDay: LocalDay;
}

/**
 * The label in the order's language and in the market that the shop sells in, which is the edition's first. Its ingredients are those weighed in,
 * its life counts from the day on which the jar was begun. Refused where a text is missing or the jar would be over already.
 */
export function labelOf(tx: Reading, bench: BenchOrder): Result<JarLabel, BenchRefusal> {
  const { view, card, edition, stand, progress } = bench;
  const { book } = edition;
  const [market] = book.rulebook.markets;
  invariant(view.jar && market, 'a label is made of a jar, for a market of its edition');
  const weighed = weighedAmounts(card, progress.state);
  if (!weighed.ok) return refuse({ kind: 'not-this-step' });
  const { jarLifeMonths, openedLabelMonths } = book.rulebook.house;
  const life = { mixedOn: view.jar.localDay, jarLifeMonths, lots: lotsWithLife(tx, bench), packagingExpiresOn: null };
  const durability = durabilityOf(life, openedLabelMonths);
  if (!durability.ok || lastDayOfUse(life) < stand.day) return refuse({ kind: 'life-over' });
  const content = labelContent({
    book,
    market,
    lang: view.order.lang,
    variant: card.plan.variant,
    netUg: card.netUg,
    ingredients: labelIngredients(book, compose(book, weighed.value), market),
    cautionIds: cautionIdsOf(bench),
    batchCode: view.jar.batchCode,
    durability: durability.value,
    shop: { name: readShop(tx).name, address: null },
  });
  return content.ok
    ? accept({ content: content.value, useByDay: lastDayOfUse(life) })
    : refuse({ kind: 'label-lacks-text', textIds: content.refusal.textIds });
}

/** Of this market, with the rule that asks for each; those of the order where the recipe would no longer be permitted today. */
function cautionIdsOf({ edition: { book }, card, stand, view }: BenchOrder): readonly string[] {
  const [market] = book.rulebook.markets;
  const verdict = judge(book, card.plan, { day: stand.day });
  return verdict.kind === 'permitted' && market ? cautionsForMarket(book, verdict.cautions, market.id) : view.order.variantCautionIds;
}

/** Open by then, since the jar holds some of each. */
const lotsWithLife = (tx: Reading, bench: BenchOrder): readonly UsedLot[] =>
  usedLots(tx, bench).map(({ lot, openedAtMs }) => {
    const { book } = bench.edition;
    const openedOn = openedAtMs === null ? bench.stand.day : localDayIn(bench.stand.zone, openedAtMs);
    const inUseDays = lot.kind === 'stock' ? need(book.stocks, lot.refId).inUseDays : book.rulebook.base.inUseDays;
    return { expiresOn: lot.expiryDay, openedOn, inUseDays: inUseDays ?? null };
  });
