// Every way to weigh a variant: one stock a line, carriers netted, cheapest to weigh first.
// Netting: what premixes bring of a material is taken off that material's own neat line; never below zero, never a rounded ppm.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Stock } from '../rulebook/material.ts';
import type { Active } from '../rulebook/offer.ts';
import type { ChosenActive, Plan, PlanLine, Variant } from '../rulebook/variant.ts';
import { sharePpm, WHOLE_PPM } from '../units/share.ts';

/** Plans in order (fewest lines, smallest additions, stock codes), or why there is none. */
export interface Planning {
  readonly plans: readonly Plan[];
  /** Why parts or combinations of stocks cannot be planned; decisive only when `plans` is empty. */
  readonly findings: readonly Finding[];
}

/** All plans of a variant with this adjuster (or none). The variant's shade, actives and levels must exist in the book. */
export function planVariant(book: Book, variant: Variant, adjuster: ChosenActive | null): Planning {
  const findings: Finding[] = [];
  const collect = (more: readonly Finding[]): void => {
    findings.push(...more);
  };
  const chosen = [...variant.actives, ...(adjuster ? [adjuster] : [])];
  const groups = [shadeChoices(book, variant.shadeId, collect), ...chosen.map((one) => activeChoices(book, one, collect))];
  const plans: Plan[] = [];
  for (const lines of combine(groups)) {
    const netted = netCarriers(book, lines.flat());
    if (netted.ok) plans.push({ variant, adjuster, lines: netted.lines });
    else collect(netted.findings);
  }
  return { plans: plans.sort((a, b) => comparePlans(book, a, b)), findings: plans.length > 0 ? [] : distinct(findings) };
}

export type Lines = readonly PlanLine[];
type Collect = (findings: readonly Finding[]) => void;
const keepNone: Collect = () => {};

/** The shade as one dry blend, or as one line a powder; before netting. */
export function shadeChoices(book: Book, shadeId: string, collect: Collect = keepNone): readonly Lines[] {
  const shade = need(book.shades, shadeId);
  const totalPpm = shade.parts.reduce((sum, one) => sum + one.sharePpm, 0);
  const blends = book.rulebook.stocks
    .filter((stock) => stock.isBlend && servesWhole(stock, shade.parts, totalPpm))
    .map((stock): Lines => [{ stockId: stock.id, sharePpm: sharePpm(totalPpm), purpose: 'shade', materialId: null }]);
  const single = combine(shade.parts.map((one) => materialChoices(book, one.materialId, one.sharePpm, 'shade')));
  if (blends.length + single.length === 0) collect(shade.parts.flatMap((one) => whyNoStock(book, one.materialId, one.sharePpm)));
  return [...blends, ...single.map((lines) => lines.flat())];
}

/** A blend serves a shade when every ratio is equal, exactly. */
function servesWhole(
  stock: Stock,
  parts: readonly { readonly materialId: string; readonly sharePpm: number }[],
  totalPpm: number,
): boolean {
  const held = new Map(stock.parts.map((one) => [one.materialId, one.sharePpm as number]));
  return (
    held.size === parts.length &&
    parts.every((one) => BigInt(held.get(one.materialId) ?? 0) * BigInt(totalPpm) === BigInt(one.sharePpm) * BigInt(WHOLE_PPM))
  );
}

/** An active or adjuster at a level, one line per stock that can bring it; before netting. */
export function activeChoices(book: Book, chosen: ChosenActive, collect: Collect = keepNone): readonly Lines[] {
  const active = need(book.actives, chosen.activeId);
  const wanted = materialShare(active, chosen);
  const purpose = active.role;
  if (wanted === null) {
    collect([finding('stock-share-not-whole', active.id, { stockId: '', materialId: active.materialId })]);
    return [];
  }
  const choices = materialChoices(book, active.materialId, wanted, purpose);
  if (choices.length === 0) collect(whyNoStock(book, active.materialId, wanted));
  return choices;
}

/** Share of the material as bought for a level of the pure active, or null when it is no whole ppm. */
function materialShare(active: Active, chosen: ChosenActive): number | null {
  const scaled = BigInt(chosen.levelPpm) * BigInt(WHOLE_PPM);
  const strength = BigInt(active.strengthPpm);
  return scaled % strength === 0n ? Number(scaled / strength) : null;
}

/** One line per stock that can bring this much of the material in whole ppm. */
function materialChoices(book: Book, materialId: string, wantedPpm: number, purpose: PlanLine['purpose']): readonly Lines[] {
  return stocksFor(book, materialId).flatMap((stock): Lines[] => {
    const share = stockShare(stock, materialId, wantedPpm);
    return share === null || share > WHOLE_PPM ? [] : [[{ stockId: stock.id, sharePpm: sharePpm(share), purpose, materialId }]];
  });
}

/** Stocks whose purpose is this material: neat, or a premix that names it first. Blends serve whole shades only. */
const stocksFor = (book: Book, materialId: string): readonly Stock[] =>
  book.rulebook.stocks.filter((stock) => !stock.isBlend && stock.parts[0]?.materialId === materialId);

function stockShare(stock: Stock, materialId: string, wantedPpm: number): number | null {
  const held = stock.parts.find((one) => one.materialId === materialId);
  if (!held) return null;
  const scaled = BigInt(wantedPpm) * BigInt(WHOLE_PPM);
  return scaled % BigInt(held.sharePpm) === 0n ? Number(scaled / BigInt(held.sharePpm)) : null;
}

function whyNoStock(book: Book, materialId: string, wantedPpm: number): readonly Finding[] {
  const stocks = stocksFor(book, materialId);
  if (stocks.length === 0) return [finding('no-stock', materialId, { materialId })];
  return stocks
    .filter((stock) => stockShare(stock, materialId, wantedPpm) === null)
    .map((stock) => finding('stock-share-not-whole', stock.id, { stockId: stock.id, materialId }));
}

type Netting = { readonly ok: true; readonly lines: Lines } | { readonly ok: false; readonly findings: readonly Finding[] };

/** Takes what premixes bring of a material off that material's own neat line. */
function netCarriers(book: Book, lines: Lines): Netting {
  const findings: Finding[] = [];
  const netted = lines.map((line) => {
    if (!isNeat(need(book.stocks, line.stockId))) return line;
    const brought = lines.reduce((sum, other) => (other === line ? sum : sum + carriedBy(book, other, line.materialId)), 0n);
    const left = BigInt(line.sharePpm) * BigInt(WHOLE_PPM) - brought;
    const facts = { stockId: line.stockId, materialId: line.materialId ?? '' };
    if (left < 0n) findings.push(finding('netting-below-zero', line.stockId, facts));
    else if (left % BigInt(WHOLE_PPM) !== 0n) findings.push(finding('netting-not-whole', line.stockId, facts));
    else return { ...line, sharePpm: sharePpm(Number(left / BigInt(WHOLE_PPM))) };
    return line;
  });
  return findings.length > 0 ? { ok: false, findings } : { ok: true, lines: netted.filter((line) => line.sharePpm > 0) };
}

const isNeat = (stock: Stock): boolean => stock.parts.length === 1;

/** What another line brings of a material beside its own purpose, in ppm × 10^6. */
function carriedBy(book: Book, line: PlanLine, materialId: string | null): bigint {
  if (materialId === null || line.materialId === materialId || line.materialId === null) return 0n;
  const held = need(book.stocks, line.stockId).parts.find((one) => one.materialId === materialId);
  return held ? BigInt(line.sharePpm) * BigInt(held.sharePpm) : 0n;
}

function combine<T>(groups: readonly (readonly T[])[]): readonly (readonly T[])[] {
  return groups.reduce<readonly (readonly T[])[]>((done, group) => done.flatMap((one) => group.map((next) => [...one, next])), [[]]);
}

const additionsPpm = (plan: Plan): number => plan.lines.reduce((sum, line) => sum + line.sharePpm, 0);
const codes = (book: Book, plan: Plan): string => plan.lines.map((line) => need(book.stocks, line.stockId).code).join('+');

function comparePlans(book: Book, a: Plan, b: Plan): number {
  if (a.lines.length !== b.lines.length) return a.lines.length - b.lines.length;
  if (additionsPpm(a) !== additionsPpm(b)) return additionsPpm(a) - additionsPpm(b);
  return codes(book, a) < codes(book, b) ? -1 : 1;
}

const distinct = (findings: readonly Finding[]): readonly Finding[] => [
  ...new Map(findings.map((one) => [JSON.stringify(one), one])).values(),
];
