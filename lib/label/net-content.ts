// The net content in the units that a market prints. Ounces are rounded down: a label may not promise more than the jar holds.

import { assertNever } from '../base/invariant.ts';
import type { MarketId } from '../rulebook/language.ts';
import type { MassUg } from '../units/mass.ts';
import { UG_PER_G } from '../units/mass.ts';

/** Numbers as text; the words around them belong to the page. */
export interface NetContent {
  readonly gramsText: string;
  /** Avoirdupois ounces where the market prints them (21 CFR 701.13), to three figures. */
  readonly ouncesText: string | null;
}

/** Grams with the decimal sign of a language and no trailing zeros; ounces in the United States only. */
export function netContentText(net: MassUg, marketId: MarketId, lang: string): NetContent {
  const gramsText = new Intl.NumberFormat(lang, { maximumFractionDigits: 3, useGrouping: false, numberingSystem: 'latn' }).format(
    net / UG_PER_G,
  );
  switch (marketId) {
    case 'EU':
      return { gramsText, ouncesText: null };
    case 'US':
      return { gramsText, ouncesText: ounces(net) };
    default:
      return assertNever(marketId);
  }
}

/** 1 oz = 28.349523125 g exactly (international avoirdupois ounce), so µg × 8 / 226 796 185 is whole ounces. */
function ounces(net: MassUg): string {
  const thousandths = Number((BigInt(net) * 8n * 1000n) / 226_796_185n);
  const decimals = thousandths >= 100_000 ? 0 : thousandths >= 10_000 ? 1 : thousandths >= 1000 ? 2 : 3;
  const step = 10 ** (3 - decimals);
  return ((Math.floor(thousandths / step) * step) / 1000).toFixed(decimals);
}
