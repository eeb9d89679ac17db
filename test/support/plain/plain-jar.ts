// A jar worked out by hand: one stock a line, carriers taken off neat lines, everything summed in fractions of the whole.
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { Fraction } from './fraction.ts';
import { isUnder, isWhole, minus, plus, q, sum, times, ZERO } from './fraction.ts';

export interface PlainChoice {
  readonly activeId: string;
  readonly levelPpm: number;
}

export interface PlainLine {
  readonly stockId: string;
  readonly wanted: string | null;
  /** Share of the jar, 1 = all. */
  readonly share: Fraction;
}

const PPM = 1_000_000;
const find = <T extends { readonly id: string }>(rows: readonly T[], id: string): T => {
  const row = rows.find((one) => one.id === id);
  if (!row) throw new Error(`no ${id}`);
  return row;
};

/** All ways to fill the lines of a shade and its choices; empty where something has no stock or nets badly. */
export function plainPlans(book: Rulebook, shadeId: string, chosen: readonly PlainChoice[]): readonly (readonly PlainLine[])[] {
  const shade = find(book.shades, shadeId);
  const wants = chosen.map(({ activeId, levelPpm }) => {
    const active = find(book.actives, activeId);
    return { materialId: active.materialId, share: q(levelPpm, active.strengthPpm) };
  });
  const powders = shade.parts.map((part) => ({ materialId: part.materialId, share: q(part.sharePpm, PPM) }));
  const singly = product([...powders, ...wants].map((want) => neatOrPremix(book, want)));
  const total = shade.parts.reduce((all, part) => all + part.sharePpm, 0);
  const blends = book.stocks.filter(
    (stock) =>
      stock.isBlend &&
      stock.parts.length === shade.parts.length &&
      shade.parts.every((part) =>
        stock.parts.some((held) => held.materialId === part.materialId && held.sharePpm * total === part.sharePpm * PPM),
      ),
  );
  const blended = blends.flatMap((stock) =>
    product(wants.map((want) => neatOrPremix(book, want))).map((rest) => [
      { stockId: stock.id, wanted: null, share: q(total, PPM) },
      ...rest,
    ]),
  );
  return [...blended, ...singly].flatMap((lines) => {
    const netted = net(book, lines);
    return netted ? [netted] : [];
  });
}

function neatOrPremix(book: Rulebook, want: { readonly materialId: string; readonly share: Fraction }): readonly PlainLine[] {
  return book.stocks
    .filter((stock) => !stock.isBlend && stock.parts[0]?.materialId === want.materialId)
    .map((stock) => ({ stockId: stock.id, wanted: want.materialId, share: times(want.share, q(PPM, stock.parts[0]?.sharePpm ?? PPM)) }))
    .filter((line) => isWhole(times(line.share, q(PPM))));
}

function net(book: Rulebook, lines: readonly PlainLine[]): readonly PlainLine[] | null {
  const netted = lines.map((line) => {
    if (find(book.stocks, line.stockId).parts.length > 1) return line;
    const brought = lines
      .filter((other) => other !== line && other.wanted !== null && other.wanted !== line.wanted)
      .map((other) => {
        const held = find(book.stocks, other.stockId).parts.find((part) => part.materialId === line.wanted);
        return held ? times(other.share, q(held.sharePpm, PPM)) : ZERO;
      });
    return { ...line, share: minus(line.share, sum(brought)) };
  });
  const isBad = netted.some((line) => isUnder(line.share, ZERO) || !isWhole(times(line.share, q(PPM))));
  return isBad ? null : netted.filter((line) => line.share.n !== 0n);
}

const product = <T>(choices: readonly (readonly T[])[]): readonly (readonly T[])[] =>
  choices.reduce<readonly (readonly T[])[]>((done, next) => done.flatMap((head) => next.map((one) => [...head, one])), [[]]);

export interface PlainJar {
  readonly lines: readonly PlainLine[];
  readonly additions: Fraction;
  readonly base: Fraction;
  readonly oilForPowders: Fraction;
  /** By material, of additions alone and of the whole jar. */
  readonly added: ReadonlyMap<string, Fraction>;
  readonly materials: ReadonlyMap<string, Fraction>;
  readonly substances: ReadonlyMap<string, Fraction>;
}

export function plainJar(book: Rulebook, lines: readonly PlainLine[]): PlainJar {
  const additions = sum(lines.map((line) => line.share));
  const base = minus(q(1), additions);
  const added = new Map<string, Fraction>();
  const put = (into: Map<string, Fraction>, id: string, share: Fraction): void => void into.set(id, plus(into.get(id) ?? ZERO, share));
  let oilForPowders = times(base, q(book.base.wettingOilPpm, PPM));
  for (const line of lines) {
    const stock = find(book.stocks, line.stockId);
    for (const part of stock.parts) {
      const share = times(line.share, q(part.sharePpm, PPM));
      put(added, part.materialId, share);
      if (stock.addedTo === 'paste' && find(book.materials, part.materialId).kind === 'oil') oilForPowders = plus(oilForPowders, share);
    }
  }
  const materials = new Map(added);
  for (const part of book.base.parts) put(materials, part.materialId, times(base, q(part.sharePpm, PPM)));
  const substances = new Map<string, Fraction>();
  for (const [materialId, share] of materials)
    for (const held of find(book.materials, materialId).substances) put(substances, held.substanceId, times(share, q(held.sharePpm, PPM)));
  return { lines, additions, base, oilForPowders, added, materials, substances };
}

export { find };
