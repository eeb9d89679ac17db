// Lightness decides whether a hatch or a word over a fill is drawn in ink or in white, so that it stays readable.
import { invariant } from '#lib/base/invariant.ts';

export const INK = '#15242B';
export const WHITE = '#FFFFFF';

/** CIE L* (0 to 100) of an sRGB hex colour: IEC 61966-2-1 transfer curve, then CIE 15 lightness. */
export function lightness(hex: string): number {
  const parts = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(hex);
  invariant(parts, `not a six-digit hex colour: ${hex}`);
  const [red, green, blue] = parts.slice(1).map((part) => linear(Number.parseInt(part, 16) / 255));
  invariant(red !== undefined && green !== undefined && blue !== undefined, 'three channels');
  const luminance = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  return luminance <= 216 / 24389 ? (luminance * 24389) / 27 : 116 * Math.cbrt(luminance) - 16;
}

const linear = (channel: number): number => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);

/** Ink or white, whichever can be read on the fill. */
export const markOn = (fill: string): string => (lightness(fill) < 55 ? WHITE : INK);
