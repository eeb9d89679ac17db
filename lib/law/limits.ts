// Check 11: the limit rows of every market that the edition sells in, on the day the jar is sold.
// The rulebook's rows decide; each says what it is expressed as, and sums are compared exactly.
import { compareText } from '../base/compare.ts';
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { Composition } from '../composition/compose.ts';
import { substancePart } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { ColourantPermission, LimitRow, Market, SubstanceLimit } from '../rulebook/limit.ts';
import type { Material } from '../rulebook/material.ts';
import type { Part } from '../units/share.ts';
import { exceedsPpm, part, partToPpm, sumParts, WHOLE_PPM } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';

/** From its first day on, until the day before `untilDay`: two rows that follow each other share that day without a gap or an overlap. */
export const isInForce = (row: Pick<LimitRow, 'fromDay' | 'untilDay'>, day: LocalDay): boolean =>
  (row.fromDay === undefined || row.fromDay <= day) && (row.untilDay === undefined || day < row.untilDay);

/** Substance limits of a market for its kind of product, in force on a day. */
export const limitsInForce = (book: Book, market: Market, day: LocalDay): readonly SubstanceLimit[] =>
  book.rulebook.limits.filter(
    (row): row is SubstanceLimit =>
      row.kind === 'substance' && row.marketId === market.id && row.productKinds.includes(market.productKind) && isInForce(row, day),
  );

/** Σ part × factor over the row's substances, in parts of whole × 10^6: the jar's content as the limit expresses it. */
export const expressedPart = (jar: Composition, row: SubstanceLimit): Part =>
  sumParts(row.substances.map(({ substanceId, factorPpm }) => part(substancePart(jar, substanceId) * BigInt(factorPpm))));

/** Findings of check 11 over all markets of the rulebook. */
export const checkLaw = (book: Book, jar: Composition, day: LocalDay): readonly Finding[] =>
  book.rulebook.markets.flatMap((market) => [
    ...checkSubstanceLimits(book, jar, { market, day }),
    ...checkColourants(book, jar, { market, day }),
  ]);

interface Where {
  readonly market: Market;
  readonly day: LocalDay;
}

function checkSubstanceLimits(book: Book, jar: Composition, { market, day }: Where): readonly Finding[] {
  const whole = part(jar.whole * BigInt(WHOLE_PPM));
  return limitsInForce(book, market, day).flatMap((row): Finding[] => {
    const found = expressedPart(jar, row);
    if (!exceedsPpm(found, whole, row.maxPpm)) return [];
    const substanceIds = heldOf(jar, row).join(', ');
    return [
      finding('law-limit', row.id, {
        marketId: market.id,
        substanceIds,
        foundPpm: partToPpm(found, whole),
        maxPpm: row.maxPpm,
        expressedAs: row.expressedAs,
      }),
    ];
  });
}

const heldOf = (jar: Composition, row: SubstanceLimit): readonly string[] =>
  row.substances.map(({ substanceId }) => substanceId).filter((substanceId) => substancePart(jar, substanceId) > 0n);

/**
 * Every substance of a material that gives colour needs a permission in that market, water apart. A coating on a pigment is refused
 * too until the formulator lists it: nothing here can tell a coating from a dye.
 */
const checkColourants = (book: Book, jar: Composition, { market, day }: Where): readonly Finding[] =>
  missingIn(
    book,
    [...jar.materials].filter(([, held]) => held > 0n).map(([materialId]) => materialId),
    { market, day },
  ).map((substanceId) => finding('law-colourant', market.id, { marketId: market.id, substanceId }));

function missingIn(book: Book, materialIds: Iterable<string>, { market, day }: Where): readonly string[] {
  const permitted = new Set(
    book.rulebook.limits
      .filter((row): row is ColourantPermission => row.kind === 'colourant' && row.marketId === market.id && isInForce(row, day))
      .map((row) => row.substanceId),
  );
  const colouring = [...materialIds]
    .map((materialId) => need(book.materials, materialId))
    .filter((material) => needsPermission(market, material));
  const substanceIds = new Set(colouring.flatMap((material) => material.substances.map(({ substanceId }) => substanceId)));
  return [...substanceIds]
    .filter((substanceId) => !permitted.has(substanceId) && !need(book.substances, substanceId).isWater)
    .sort(compareText);
}

/** Substances that these materials would colour a jar with and that some market of the edition does not permit. */
export const colourantsMissing = (book: Book, materialIds: Iterable<string>, day: LocalDay): readonly string[] => {
  const ids = [...materialIds];
  return book.rulebook.markets.flatMap((market) => missingIn(book, ids, { market, day }));
};

/** EU positive list: pigments. US: whatever gives the jar its colour, clays and charcoal too (21 CFR 73 and 74). */
const needsPermission = (market: Market, material: Material): boolean =>
  material.kind === 'pigment' || (market.colourantsListed === 'all-colouring' && material.colours);

/** Cautions that limit rows in force demand as soon as the jar holds any of their substances, with the row that asks. */
export const lawCautions = (
  book: Book,
  jar: Composition,
  day: LocalDay,
): readonly { readonly cautionId: string; readonly ruleId: string }[] =>
  book.rulebook.markets.flatMap((market) =>
    limitsInForce(book, market, day).flatMap((row) =>
      row.cautionId !== undefined && heldOf(jar, row).length > 0 ? [{ cautionId: row.cautionId, ruleId: row.id }] : [],
    ),
  );
