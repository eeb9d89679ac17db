// What can be chosen, by number and in the order of lists: shades, actives at levels, adjusters, with the lines that each can be weighed as,
// and the scopes that approve or refuse.
import { compareBy, compareText } from '../../base/compare.ts';
import type { Lines } from '../../composition/plan-variant.ts';
import { activeChoices, shadeChoices } from '../../composition/plan-variant.ts';
import type { Book } from '../../rulebook/book.ts';
import { need } from '../../rulebook/book.ts';
import type { Scope } from '../../rulebook/judgement.ts';
import type { Active } from '../../rulebook/offer.ts';
import type { ChosenActive, PlanLine } from '../../rulebook/variant.ts';
import { WHOLE_PPM } from '../../units/share.ts';

/** Lines that belong together, before netting; three lists of one length. */
export interface Option {
  readonly lines: readonly PlanLine[];
  readonly stocks: readonly number[];
  /** What each line is there for; −1 for a blend that serves the whole shade. */
  readonly materials: readonly number[];
}

export interface ShadeChoice {
  readonly shadeId: string;
  readonly number: number;
  readonly options: readonly Option[];
  readonly wanted: ReadonlySet<string>;
  /** What the jar holds of the shade's own materials at the least. */
  readonly ownPpm: number;
}

export interface ActiveChoice {
  /** Its place among the choices, or among the adjusters. */
  readonly number: number;
  readonly chosen: ChosenActive;
  /** Of the active, whatever the level. */
  readonly activeNumber: number;
  readonly options: readonly Option[];
  readonly materialId: string;
  readonly ownPpm: number;
}

export interface CompiledScope {
  readonly isApproving: boolean;
  /** By shade number; null = any. */
  readonly shades: Uint8Array | null;
  /** Approving: highest level by active number, −1 where it is not named. Refusing: lowest level, Infinity where it is not named. */
  readonly levels: Float64Array;
  readonly mostActivesCount: number;
  readonly namedCount: number;
}

export interface CompiledOffer {
  readonly stockCodes: readonly string[];
  readonly shades: readonly ShadeChoice[];
  /** Permitted levels in the order of lists: active by code, level upward. */
  readonly choices: readonly ActiveChoice[];
  /** In the order in which the verdict tries them. */
  readonly adjusters: readonly ActiveChoice[];
  readonly scopes: readonly CompiledScope[];
  /** Material number of a neat stock, −1 for all others. */
  readonly neatOf: Int32Array;
  /** Share of a material in a stock in ppm; stock × material. */
  readonly heldPpm: Float64Array;
  readonly materialsCount: number;
}

export function compileOffer(book: Book, stockIds: readonly string[]): CompiledOffer {
  const { shades, actives, stocks } = book.rulebook;
  const materialIds = book.rulebook.materials.map((material) => material.id).sort(compareText);
  const stockNumber = numbered(stockIds);
  const materialNumber = numbered(materialIds);
  const option = (lines: Lines): Option => ({
    lines,
    stocks: lines.map(({ stockId }) => stockNumber(stockId)),
    materials: lines.map(({ materialId }) => (materialId === null ? -1 : materialNumber(materialId))),
  });
  const shadeOrder = [...shades].sort(compareBy((shade) => shade.code));
  const activeOrder = [...actives].sort(compareBy((active) => active.code));
  const activeNumber = numbered(activeOrder.map((active) => active.id));
  const choicesOf = (active: Active): readonly Omit<ActiveChoice, 'number'>[] =>
    active.levels
      .filter((level) => level.permitted)
      .sort(compareBy((level) => level.levelPpm))
      .map(({ levelPpm }) => {
        const chosen = { activeId: active.id, levelPpm };
        return {
          chosen,
          activeNumber: activeNumber(active.id),
          options: activeChoices(book, chosen).map(option),
          materialId: active.materialId,
          ownPpm: (levelPpm * WHOLE_PPM) / active.strengthPpm,
        };
      });
  const byRole = (role: Active['role']): readonly ActiveChoice[] =>
    activeOrder
      .filter((active) => active.role === role)
      .flatMap(choicesOf)
      .map((choice, number) => ({ ...choice, number }));
  const scopeNumbers = { shade: numbered(shadeOrder.map((shade) => shade.id)), active: activeNumber };
  return {
    stockCodes: stockIds.map((id) => need(book.stocks, id).code),
    shades: shadeOrder.map((shade, number) => ({
      shadeId: shade.id,
      number,
      options: shadeChoices(book, shade.id).map(option),
      wanted: new Set(shade.parts.map((one) => one.materialId)),
      ownPpm: shade.parts.reduce((sum, one) => sum + one.sharePpm, 0),
    })),
    choices: byRole('active'),
    adjusters: byRole('adjuster'),
    scopes: book.scopes.map((scope) => compileScope(scope, scopeNumbers, { shades: shadeOrder.length, actives: activeOrder.length })),
    neatOf: Int32Array.from(stockIds, (id) => {
      const [only, ...others] = need(book.stocks, id).parts;
      return only && others.length === 0 ? materialNumber(only.materialId) : -1;
    }),
    heldPpm: heldShares(stocks, { stockNumber, materialNumber, width: materialIds.length }),
    materialsCount: materialIds.length,
  };
}

type Numbering = (id: string) => number;

function numbered(ids: readonly string[]): Numbering {
  const numbers = new Map(ids.map((id, number) => [id, number]));
  return (id) => need(numbers, id);
}

function heldShares(
  stocks: Book['rulebook']['stocks'],
  { stockNumber, materialNumber, width }: { stockNumber: Numbering; materialNumber: Numbering; width: number },
): Float64Array {
  const held = new Float64Array(stocks.length * width);
  for (const stock of stocks) {
    for (const one of stock.parts) held[stockNumber(stock.id) * width + materialNumber(one.materialId)] = one.sharePpm;
  }
  return held;
}

function compileScope(
  scope: Scope,
  numberOf: { readonly shade: Numbering; readonly active: Numbering },
  counts: { readonly shades: number; readonly actives: number },
): CompiledScope {
  const isApproving = scope.kind === 'approve';
  const shades = new Uint8Array(counts.shades);
  for (const id of scope.shadeIds) shades[numberOf.shade(id)] = 1;
  const levels = new Float64Array(counts.actives).fill(isApproving ? -1 : Number.POSITIVE_INFINITY);
  for (const { activeId, levelPpm } of scope.actives) {
    const number = numberOf.active(activeId);
    const known = levels[number] ?? 0;
    // Named twice: either naming approves; refusing needs both.
    levels[number] = isApproving || Number.isFinite(known) ? Math.max(known, levelPpm) : levelPpm;
  }
  return {
    isApproving,
    shades: isApproving || scope.shadeIds.length > 0 ? shades : null,
    levels,
    mostActivesCount: scope.mostActivesCount,
    namedCount: new Set(scope.actives.map((one) => one.activeId)).size,
  };
}
