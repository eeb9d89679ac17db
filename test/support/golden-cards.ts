// The cards that are kept as golden text, by name.
import type { MassUg } from '#lib/units/mass.ts';
import { gramsToUg, massUg } from '#lib/units/mass.ts';
import { loadUnits } from '#lib/units/material-property.ts';
import { localDay } from '#lib/units/time.ts';
import type { Card } from '#lib/weighing/card.ts';
import type { GrowAsk, Grown } from '#lib/weighing/grow-batch.ts';
import { mendOptions } from '#lib/weighing/mis-weigh.ts';
import type { CardAsk } from '#lib/weighing/mixing-card.ts';
import { cardFor } from '#lib/weighing/mixing-card.ts';
import type { BenchFact } from '#lib/weighing/readings.ts';
import { foldReadings } from '#lib/weighing/readings.ts';
import { aWindow } from './a-material.ts';
import { aJarSize, aScaleProfile } from './an-offer.ts';
import { cardText, grownText } from './card-text.ts';
import { aLot, fernAsk, fernBook, fernLots } from './fern-jar.ts';

/** The card of an ask that must have one. */
export function cardOf(ask: CardAsk): Card {
  const made = cardFor(ask);
  if (!made.ok) throw new Error(`no card: ${JSON.stringify(made.refusal)}`);
  return made.value;
}

/** Readings in grams, one weighing a line, in the order given. */
export const readingsOf = (readings: readonly (readonly [lineNo: number, grams: number])[]): readonly BenchFact[] =>
  readings.map(([lineNo, grams], index) => ({
    kind: 'reading',
    seq: index + 1,
    lineNo,
    weighingNo: 1,
    lotId: 'lot',
    massUg: gramsToUg(grams),
  }));

/** Everything weighed in the vessel, so that a heavy line can only be mended by a larger batch. */
export function vesselJar(readings: readonly (readonly [lineNo: number, grams: number])[]): {
  readonly ask: GrowAsk;
  readonly lineNo: number;
} {
  const book = fernBook({ stock: { weighedIn: 'vessel' } });
  const made = fernAsk(book);
  const card = cardOf(made);
  const { limits, day } = made;
  return {
    ask: { book, card, limits, lots: fernLots(book), day, state: foldReadings(card, readingsOf(readings)) },
    lineNo: readings.at(-1)?.[0] ?? 1,
  };
}

/** The larger batch that mends the last of these readings. */
export function grownJar(readings: readonly (readonly [lineNo: number, grams: number])[]): { readonly card: Card; readonly grown: Grown } {
  const { ask, lineNo } = vesselJar(readings);
  const grow = mendOptions(ask, lineNo).find((option) => option.kind === 'grow');
  if (!grow) throw new Error('the batch does not grow');
  return { card: ask.card, grown: grow.grown };
}

const grownGolden = (readings: readonly (readonly [lineNo: number, grams: number])[]): string => {
  const { card, grown } = grownJar(readings);
  return grownText(card, grown);
};

const fineScale = (step: MassUg) =>
  aScaleProfile({ id: 'scale-1mg', code: 'S1', stepUg: step, repeatabilityUg: massUg(800), capacityUg: gramsToUg(60) });

function splitLots(): string {
  const book = fernBook();
  const short = (grams: number, code: string, expiresOn: string) =>
    aLot({ kind: 'stock', stockId: 'kaolin-neat' }, { id: code, code, leftUg: gramsToUg(grams), expiresOn: localDay(expiresOn) });
  const others = fernLots(book).filter((lot) => lot.source.kind !== 'stock' || lot.source.stockId !== 'kaolin-neat');
  return cardText(cardOf(fernAsk(book, { lots: [short(0.505, 'K-EARLY', '2027-02-01'), short(0.4, 'K-LATE', '2027-08-01'), ...others] })));
}

export const goldenCards: Readonly<Record<string, () => string>> = {
  'fern-50g': () => cardText(cardOf(fernAsk(fernBook()))),
  'fern-50g-kaolin-heavy': () => grownGolden([[1, 0.9]]),
  'fern-50g-niacinamide-heavy-after-cream': () =>
    grownGolden([
      [1, 0.78],
      [2, 0.26],
      [3, 0.26],
      [4, 1.98],
      [5, 47.47],
      [6, 1.3],
    ]),
  'fern-15g-two-scales': () =>
    cardText(
      cardOf(
        fernAsk(fernBook(), {
          jarSize: aJarSize({ netUg: gramsToUg(15), overageUg: gramsToUg(1) }),
          scales: [fineScale(massUg(1000)), aScaleProfile()],
          fullCleanAfterTags: ['oat'],
          phDue: { ...aWindow(500, 700), method: '10 % in water, 5 minutes, 20 °C' },
        }),
      ),
    ),
  'fern-50g-split-lots': splitLots,
  'fern-50g-narrowed-by-a-cap': () => {
    const caps = fernBook().rulebook.base.caps;
    return cardText(cardOf(fernAsk(fernBook({ base: { caps: { ...caps, irritancyUnits: loadUnits(20_500) } } }))));
  },
};
