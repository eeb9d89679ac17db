// CIELAB (D65, 2°) to a colour on a screen. sRGB is IEC 61966-2-1; its white x = 0.3127, y = 0.3290 is the white of Lab here too,
// so that L* 100 is #ffffff. A colour that no screen can show keeps its lightness and hue and loses chroma, and says so.

/** CIE 1976 L*, a*, b*. */
export interface Lab {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

type Triple = readonly [number, number, number];

const WHITE: Triple = [0.3127 / 0.329, 1, (1 - 0.3127 - 0.329) / 0.329];
/** CIE 15: 216/24389 and 24389/27 as exact fractions. */
const EPSILON = 216 / 24_389;
const KAPPA = 24_389 / 27;

/** Matrices from the primaries and white of IEC 61966-2-1, unrounded. */
const TO_XYZ: readonly [Triple, Triple, Triple] = [
  [506_752 / 1_228_815, 87_881 / 245_763, 12_673 / 70_218],
  [87_098 / 409_605, 175_762 / 245_763, 12_673 / 175_545],
  [7918 / 409_605, 87_881 / 737_289, 1_001_167 / 1_053_270],
];
const FROM_XYZ: readonly [Triple, Triple, Triple] = [
  [12_831 / 3959, -329 / 214, -1974 / 3959],
  [-851_781 / 878_810, 1_648_619 / 878_810, 36_519 / 878_810],
  [705 / 12_673, -2585 / 12_673, 705 / 667],
];

const times = (matrix: readonly [Triple, Triple, Triple], [x, y, z]: Triple): Triple => {
  const row = ([a, b, c]: Triple): number => a * x + b * y + c * z;
  return [row(matrix[0]), row(matrix[1]), row(matrix[2])];
};

const encode = (linear: number): number => (linear <= 0.003_130_8 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055);
const decode = (encoded: number): number => (encoded <= 0.040_45 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4);

/** Lab of an sRGB colour "#rrggbb". */
export function labOfHex(hex: string): Lab {
  const channel = (from: number): number => decode(Number.parseInt(hex.slice(from, from + 2), 16) / 255);
  const [x, y, z] = times(TO_XYZ, [channel(1), channel(3), channel(5)]);
  const f = (value: number): number => (value > EPSILON ? Math.cbrt(value) : (KAPPA * value + 16) / 116);
  const [fx, fy, fz] = [f(x / WHITE[0]), f(y / WHITE[1]), f(z / WHITE[2])];
  return { l: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

/** Linear sRGB, outside 0 … 1 where the screen cannot show the colour. */
function linearOf({ l, a, b }: Lab): Triple {
  const fy = (l + 16) / 116;
  const inverse = (f: number): number => (f ** 3 > EPSILON ? f ** 3 : (116 * f - 16) / KAPPA);
  const y = l > KAPPA * EPSILON ? fy ** 3 : l / KAPPA;
  return times(FROM_XYZ, [inverse(fy + a / 500) * WHITE[0], y, inverse(fy - b / 200) * WHITE[2]]);
}

/** Room for rounding only: far less than half a step of 255. */
const SLACK = 1e-6;
const isShowable = (lab: Lab): boolean => linearOf(lab).every((value) => value >= -SLACK && value <= 1 + SLACK);

export interface Swatch {
  readonly hex: string;
  /** True where chroma was reduced to fit the screen: the swatch is paler than the jar. */
  readonly reduced: boolean;
}

/** The nearest colour of the same lightness and hue that a screen can show. L* is held within 0 … 100. */
export function swatchOf(lab: Lab): Swatch {
  const held: Lab = { ...lab, l: Math.min(100, Math.max(0, lab.l)) };
  if (isShowable(held)) return { hex: hexOf(held), reduced: false };
  const faded = (share: number): Lab => ({ l: held.l, a: held.a * share, b: held.b * share });
  const halvings = Array.from({ length: 30 }, (_, index) => 2 ** -(index + 1));
  const share = halvings.reduce((kept, step) => (isShowable(faded(kept + step)) ? kept + step : kept), 0);
  return { hex: hexOf(faded(share)), reduced: true };
}

const hexOf = (lab: Lab): string =>
  `#${linearOf(lab)
    .map((value) =>
      Math.round(encode(Math.min(1, Math.max(0, value))) * 255)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;
