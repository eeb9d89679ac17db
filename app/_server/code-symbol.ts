// A code as a QR code (ISO/IEC 18004), drawn as one SVG path: no picture file, nothing that the page's policy would block.
import bwip from 'bwip-js/node';
import { invariant } from '#lib/base/invariant.ts';

export interface CodeSymbol {
  /** Dark modules as unit squares. */
  readonly path: string;
  /** Modules along one side, without the quiet zone. */
  readonly sideCount: number;
}

/** Error correction level M, the maker's default: a smudge over 15 % of it does no harm. */
export function codeSymbol(text: string): CodeSymbol {
  const [symbol] = bwip.raw({ bcid: 'qrcode', text });
  invariant(symbol && 'pixs' in symbol && symbol.pixx === symbol.pixy, 'a QR code is one square');
  const { pixs, pixx } = symbol;
  const dark = Array.from(pixs, (value, index) => (value === 1 ? `M${index % pixx} ${Math.floor(index / pixx)}h1v1h-1z` : ''));
  return { path: dark.join(''), sideCount: pixx };
}
