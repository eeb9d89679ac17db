// How different two colours look: CIEDE2000 with kL = kC = kH = 1 (CIE 142-2001; ISO/CIE 11664-6), in the form of
// Sharma, Wu and Dalal, Color Research and Application 30 (2005) 21–30, whose test pairs settle the traps of the hue.
import type { Lab } from './lab.ts';

const RADIANS = Math.PI / 180;
const cosDegrees = (degrees: number): number => Math.cos(degrees * RADIANS);
const POW_25_7 = 25 ** 7;

/** √(C⁷ / (C⁷ + 25⁷)), which damps a* of greys and the blue rotation. */
const greyness = (chroma: number): number => Math.sqrt(chroma ** 7 / (chroma ** 7 + POW_25_7));

interface Polar {
  readonly l: number;
  readonly chroma: number;
  /** Degrees, 0 to 360; 0 for a grey. */
  readonly hue: number;
}

/** L', C', h' after a* has been stretched by 1 + G. */
function polarOf({ l, a, b }: Lab, stretch: number): Polar {
  const stretched = a * stretch;
  const degrees = stretched === 0 && b === 0 ? 0 : Math.atan2(b, stretched) / RADIANS;
  return { l, chroma: Math.hypot(stretched, b), hue: degrees < 0 ? degrees + 360 : degrees };
}

/** CIEDE2000 difference of two colours; symmetric. */
export function deltaE2000(first: Lab, second: Lab): number {
  const meanChroma = (Math.hypot(first.a, first.b) + Math.hypot(second.a, second.b)) / 2;
  const stretch = 1 + 0.5 * (1 - greyness(meanChroma));
  const one = polarOf(first, stretch);
  const two = polarOf(second, stretch);
  const eitherGrey = one.chroma * two.chroma === 0;
  const lightness = (two.l - one.l) / lightnessWeight((one.l + two.l) / 2);
  const chroma = (one.chroma + two.chroma) / 2;
  const hue = eitherGrey ? one.hue + two.hue : meanHue(one.hue, two.hue);
  const chromaStep = (two.chroma - one.chroma) / (1 + 0.045 * chroma);
  const hueStep = eitherGrey ? 0 : 2 * Math.sqrt(one.chroma * two.chroma) * Math.sin((hueDifference(one.hue, two.hue) / 2) * RADIANS);
  const hueTerm = hueStep / (1 + 0.015 * chroma * hueWeight(hue));
  const turn = -Math.sin(60 * Math.exp(-(((hue - 275) / 25) ** 2)) * RADIANS) * 2 * greyness(chroma);
  return Math.sqrt(lightness ** 2 + chromaStep ** 2 + hueTerm ** 2 + turn * chromaStep * hueTerm);
}

function lightnessWeight(mean: number): number {
  const from50 = (mean - 50) ** 2;
  return 1 + (0.015 * from50) / Math.sqrt(20 + from50);
}

const hueWeight = (hue: number): number =>
  1 - 0.17 * cosDegrees(hue - 30) + 0.24 * cosDegrees(2 * hue) + 0.32 * cosDegrees(3 * hue + 6) - 0.2 * cosDegrees(4 * hue - 63);

/** The shorter way round, −180 to 180. */
function hueDifference(from: number, to: number): number {
  const straight = to - from;
  if (Math.abs(straight) <= 180) return straight;
  return straight > 180 ? straight - 360 : straight + 360;
}

function meanHue(one: number, two: number): number {
  const sum = one + two;
  if (Math.abs(one - two) <= 180) return sum / 2;
  return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}
