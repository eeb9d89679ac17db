// One jar's card from a plan and a bench: everything that is printed, or every reason why this bench cannot make the jar.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { AvoidTag, Stock } from '../rulebook/material.ts';
import type { Plan } from '../rulebook/variant.ts';
import { exactText, GRAINS_PER_UG } from '../units/exact-mass.ts';
import { sumMass } from '../units/mass.ts';
import type { TemperatureC } from '../units/material-property.ts';
import type { LocalDay } from '../units/time.ts';
import type { BenchLot, LotShare } from './allocate-lots.ts';
import { allocateLots } from './allocate-lots.ts';
import { baseLotPh, lotsOffPh } from './base-lot-ph.ts';
import { stockIdOf } from './bench-line.ts';
import type { Card, CardLine, PhCheck } from './card.ts';
import { cardSteps } from './card-steps.ts';
import type { MassLimit } from './mass-limit.ts';
import { canWeigh, leastUg } from './scale.ts';
import { isNearLimit } from './tolerance.ts';
import type { BenchAsk, WeighableLine } from './weighable-lines.ts';
import { weighableLines } from './weighable-lines.ts';

export interface CardAsk extends BenchAsk {
  /** Null: a card for reading only, without lots. */
  readonly lots: readonly BenchLot[] | null;
  readonly day: LocalDay;
  /** Null: this jar is not measured (see phCheckFor). */
  readonly phDue: PhCheck | null;
  readonly fullCleanAfterTags: readonly AvoidTag[];
  readonly warmestC: TemperatureC | null;
}

/** The card of a plan; the same ask gives the same bytes. Lots are chosen last, since the target decides how much they must hold. */
export function cardFor(ask: CardAsk): Result<Card, readonly Finding[]> {
  const weighable = weighableLines(ask);
  if (!weighable.ok) return weighable;
  const { batchUg, batchStepUg } = weighable.value;
  const drawn = weighable.value.lines.map((line) => ({ line, lots: lotsFor(ask, line) }));
  const findings = drawn.flatMap(({ lots }) => (lots.ok ? [] : [lots.refusal]));
  if (findings.length > 0) return refuse(findings);
  const lines = drawn.map(({ line, lots }, index) => cardLine(ask, line, lots.ok ? lots.value : [], index + 1));
  const { book, plan, jarSize, phDue: ph, fullCleanAfterTags, warmestC, day } = ask;
  return accept({
    schemaVersion: 1,
    plan,
    day,
    jarSizeId: jarSize.id,
    vesselId: jarSize.vesselId,
    netUg: jarSize.netUg,
    batchUg,
    batchStepUg,
    totalUg: sumMass(lines.map((line) => line.targetUg)),
    lines,
    steps: cardSteps({ book, jarSize, shadeId: plan.variant.shadeId, ph, fullCleanAfterTags, warmestC }, lines),
  });
}

/** Lots of a line; each further lot is a further weighing, which the scale must still bear. Cream of the wrong pH for this jar is left standing. */
function lotsFor({ book, plan, lots, day }: CardAsk, line: WeighableLine): Result<readonly LotShare[], Finding> {
  if (lots === null) return accept([]);
  const { source, targetUg, band, scale, exact, tauPpm } = line;
  const wanted = { source, targetUg, mostUg: band.hiUg, stepUg: scale.stepUg };
  const off = source.kind === 'cream' ? lotsOffPh(book, plan, lots) : [];
  const shares = allocateLots(
    book,
    lots.filter((lot) => !off.some((one) => one.id === lot.id)),
    day,
    wanted,
  );
  const [instead] = off;
  if (!shares.ok && instead && allocateLots(book, lots, day, wanted).ok) return refuse(baseLotPh(instead));
  if (!shares.ok || canWeigh(scale, exact, tauPpm, shares.value.length)) return shares;
  const exactUg = Number(exact / GRAINS_PER_UG);
  return refuse(
    finding('not-weighable', 'bench', { stockId: stockIdOf(source), exactUg, leastUg: leastUg(scale, tauPpm, shares.value.length) }),
  );
}

function cardLine(ask: CardAsk, line: WeighableLine, lots: readonly LotShare[], lineNo: number): CardLine {
  const { book, limits } = ask;
  const stock = line.source.kind === 'stock' ? need(book.stocks, line.source.stockId) : null;
  const { id, code, stepUg, repeatabilityUg, capacityUg } = line.scale;
  return {
    lineNo,
    lineId: line.lineId,
    source: line.source,
    place: line.place,
    code: line.code,
    name: stock?.name ?? {},
    lookAlikeName: stock?.lookAlikeName ?? null,
    shareE12Text: String(line.share),
    exactUgText: exactText(line.exact),
    targetUg: line.targetUg,
    loUg: line.band.loUg,
    hiUg: line.band.hiUg,
    tauPpm: line.tauPpm,
    scale: { id, code, stepUg, repeatabilityUg, capacityUg },
    container: line.container,
    lots,
    needsSecondPerson: stock !== null && needsSecondPerson(book, stock, line, limits),
    cautionIds: stock?.staffCautionIds ?? [],
  };
}

/** A second person where the formulator says so, where two stocks look alike, and where too much would come near a legal limit or cap. */
const needsSecondPerson = (book: Book, stock: Stock, line: WeighableLine, limits: readonly MassLimit[]): boolean =>
  stock.secondPerson || stock.lookAlikeName !== undefined || isNearLimit(book, line, limits);

/** Check 14 for the verdict: can this bench weigh a plan at all? Limits depend on the plan, so they come as a function. */
export function benchFindings(
  bench: Omit<BenchAsk, 'plan' | 'limits'> & { readonly limitsOf: (plan: Plan) => readonly MassLimit[] },
): (plan: Plan) => Finding[] {
  const { limitsOf, ...rest } = bench;
  return (plan) => {
    const weighable = weighableLines({ ...rest, plan, limits: limitsOf(plan) });
    return weighable.ok ? [] : [...weighable.refusal];
  };
}

/** Lots of check 15 for the verdict: is enough left of everything a plan needs? Says nothing where the bench itself refuses. */
export function lotFindings(
  shop: Omit<CardAsk, 'plan' | 'limits'> & { readonly limitsOf: (plan: Plan) => readonly MassLimit[] },
): (plan: Plan) => Finding[] {
  const { limitsOf, ...rest } = shop;
  return (plan) => {
    const ask = { ...rest, plan, limits: limitsOf(plan) };
    const weighable = weighableLines(ask);
    if (!weighable.ok) return [];
    return weighable.value.lines.flatMap((line) => {
      const lots = lotsFor(ask, line);
      return lots.ok ? [] : [lots.refusal];
    });
  };
}
