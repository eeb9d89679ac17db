// From weighed or planned amounts to exact shares of the jar. One function serves plans, worst corners and jars as weighed,
// so that a limit is never asked of two different sums.
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Plan } from '../rulebook/variant.ts';
import type { Part } from '../units/share.ts';
import { part, WHOLE_PPM } from '../units/share.ts';
import type { Content } from './content.ts';
import { creamContent, oilContent, stockContent } from './content.ts';

/** Amounts in any one grain (ppm products of a plan, µg of a weighed jar). */
export interface Amounts {
  readonly stocks: ReadonlyMap<string, bigint>;
  readonly cream: bigint;
  readonly oil: bigint;
}

export interface Composition {
  /** What every part below is a part of. */
  readonly whole: Part;
  /** Additions as supplied, carriers included. */
  readonly additions: Part;
  readonly cream: Part;
  readonly wettingOil: Part;
  /** Wetting oil and the free oil of stocks that go into the paste. */
  readonly pasteOil: Part;
  readonly stocks: ReadonlyMap<string, Part>;
  /** Base and additions together. */
  readonly materials: ReadonlyMap<string, Part>;
  readonly additionMaterials: ReadonlyMap<string, Part>;
  readonly substances: ReadonlyMap<string, Part>;
}

/** Amounts of a plan, whole = 10^12: base share B = 10^6 − additions, oil = ratio × B, cream = the rest. */
export function planAmounts(book: Book, plan: Pick<Plan, 'lines'>): Amounts {
  const stocks = new Map<string, bigint>();
  for (const line of plan.lines) stocks.set(line.stockId, (stocks.get(line.stockId) ?? 0n) + BigInt(line.sharePpm) * BigInt(WHOLE_PPM));
  const additionsPpm = plan.lines.reduce((sum, line) => sum + line.sharePpm, 0);
  const basePpm = BigInt(Math.max(0, WHOLE_PPM - additionsPpm));
  const ratio = BigInt(book.rulebook.base.wettingOilPpm);
  return { stocks, oil: basePpm * ratio, cream: basePpm * (BigInt(WHOLE_PPM) - ratio) };
}

export const composePlan = (book: Book, plan: Pick<Plan, 'lines'>): Composition => compose(book, planAmounts(book, plan));

/** Exact composition of any amounts of stocks, cream and wetting oil. */
export function compose(book: Book, amounts: Amounts): Composition {
  // Every content's whole divides (10^6 − ratio) × 10^12 or is that number itself: one common grain for all sources.
  const grain = BigInt(WHOLE_PPM - book.rulebook.base.wettingOilPpm) * 10n ** 12n;
  const scaled = (content: Content, amount: bigint): bigint => (amount * grain) / content.whole;
  const materials = new Map<string, Part>();
  const additionMaterials = new Map<string, Part>();
  const substances = new Map<string, Part>();
  const stocks = new Map<string, Part>();
  let stockOil = 0n;
  for (const [stockId, amount] of amounts.stocks) {
    const content = stockContent(book, stockId);
    stocks.set(stockId, part(amount * grain));
    addAll(materials, content.materials, scaled(content, amount));
    addAll(additionMaterials, content.materials, scaled(content, amount));
    addAll(substances, content.substances, scaled(content, amount));
    if (need(book.stocks, stockId).addedTo === 'paste') stockOil += oilIn(book, content) * scaled(content, amount);
  }
  for (const [content, amount] of [
    [creamContent(book), amounts.cream],
    [oilContent(book), amounts.oil],
  ] as const) {
    addAll(materials, content.materials, scaled(content, amount));
    addAll(substances, content.substances, scaled(content, amount));
  }
  const additions = [...amounts.stocks.values()].reduce((sum, amount) => sum + amount, 0n);
  return {
    whole: part((additions + amounts.cream + amounts.oil) * grain),
    additions: part(additions * grain),
    cream: part(amounts.cream * grain),
    wettingOil: part(amounts.oil * grain),
    pasteOil: part(amounts.oil * grain + stockOil),
    stocks,
    materials,
    additionMaterials,
    substances,
  };
}

function oilIn(book: Book, content: Content): bigint {
  let oil = 0n;
  for (const [materialId, held] of content.materials) if (need(book.materials, materialId).kind === 'oil') oil += held;
  return oil;
}

function addAll(into: Map<string, Part>, from: ReadonlyMap<string, Part>, times: bigint): void {
  for (const [id, held] of from) into.set(id, part((into.get(id) ?? 0n) + held * times));
}

const NONE = part(0n);

/** The part of a material, or nothing when the jar holds none. */
export const materialPart = (jar: Composition, materialId: string): Part => jar.materials.get(materialId) ?? NONE;

export const substancePart = (jar: Composition, substanceId: string): Part => jar.substances.get(substanceId) ?? NONE;
