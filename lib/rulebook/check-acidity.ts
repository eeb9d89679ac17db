// Need tables: 13 whole numbers that never fall, for the base and for everything that can be added.
// A pH is the balance of a jar's needs, so a missing table is never read as "no need".
import type { DocumentPath } from '../base/document-fault.ts';
import type { Book } from './book.ts';
import type { AcidityTable, Material } from './material.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

/** pH 3.00, 3.50 … 9.00. */
const POINTS = 13;
const START_X100 = 300;
const STEP_X100 = 50;

export function* checkAcidity(book: Book): Faults {
  const { base, materials, stocks } = book.rulebook;
  yield* tableSound(['base', 'acidity', 'umolPerKg'], base.acidity);
  for (const [index, { acidity }] of materials.entries()) yield* tableSound(['materials', index, 'acidity', 'umolPerKg'], acidity);
  for (const [index, stock] of stocks.entries()) {
    yield* tableSound(['stocks', index, 'acidity', 'umolPerKg'], stock.acidity);
    if (stock.acidity) continue;
    for (const [at, { materialId }] of stock.parts.entries()) {
      const material = book.materials.get(materialId);
      if (material && !hasNeeds(material)) yield fault(['stocks', index, 'parts', at], 'acidity-missing', { materialId });
    }
  }
  yield* baseAlone(book);
}

/** Water and what is declared inert need no table. */
const hasNeeds = ({ acidity, classes }: Material): boolean =>
  acidity !== undefined || classes.includes('water') || classes.includes('inert');

function* tableSound(path: DocumentPath, table: AcidityTable | undefined): Faults {
  if (!table) return;
  const needs = table.umolPerKg;
  if (needs.length !== POINTS) yield fault(path, 'acidity-length', { foundCount: needs.length });
  for (const [index, need] of needs.entries()) {
    const before = needs[index - 1];
    if (before !== undefined && need < before) yield fault([...path, index], 'acidity-falls', { atPhX100: START_X100 + index * STEP_X100 });
  }
}

/** Fifty times the need at a pH in hundredths, exact on the straight lines between the points; undefined outside the table. */
export function needX50(table: AcidityTable, phX100: number): number | undefined {
  const past = phX100 - START_X100;
  const low = table.umolPerKg[Math.floor(past / STEP_X100)];
  const rest = past % STEP_X100;
  if (past < 0 || low === undefined) return undefined;
  const high = table.umolPerKg[Math.floor(past / STEP_X100) + 1];
  if (rest === 0) return low * STEP_X100;
  return high === undefined ? undefined : low * (STEP_X100 - rest) + high * rest;
}

/** Whether the base without additions surely lies in a window: need(lo + e) ≤ 0 and need(hi − e) ≥ 0. Outside the table nothing is sure. */
export function baseSurelyWithin(book: Book, minPhX100: number, maxPhX100: number): boolean {
  const { base, house } = book.rulebook;
  const lower = needX50(base.acidity, minPhX100 + house.phErrorX100);
  const upper = needX50(base.acidity, maxPhX100 - house.phErrorX100);
  return lower !== undefined && upper !== undefined && lower <= 0 && upper >= 0;
}

/** The pH of the base without additions, in hundredths: where its need turns; undefined when that lies outside the table. */
export function basePhX100(book: Book): number | undefined {
  const { acidity } = book.rulebook.base;
  const all = Array.from({ length: (POINTS - 1) * STEP_X100 + 1 }, (_, past) => START_X100 + past);
  const turned = all.find((phX100) => (needX50(acidity, phX100) ?? -1) >= 0);
  return turned === START_X100 && (needX50(acidity, turned) ?? 0) > 0 ? undefined : turned;
}

function* baseAlone(book: Book): Faults {
  const { acidity, ph } = book.rulebook.base;
  const usable = acidity.umolPerKg.length === POINTS && ph.minPhX100 < ph.maxPhX100;
  if (usable && !baseSurelyWithin(book, ph.minPhX100, ph.maxPhX100)) {
    yield fault(['base', 'ph'], 'base-ph-outside-window', { minPhX100: ph.minPhX100, maxPhX100: ph.maxPhX100 });
  }
}
