// A typed mass: whole micrograms, or a reason that says what to do. "1,04" is a weight in French and a slip in English, where it
// could mean 104 or 1.04; so each language has one decimal sign and the other is refused, never guessed.
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { massUg, UG_PER_G } from '#lib/units/mass.ts';
import { decimalsOfStep } from './format-grams.ts';

export type GramsRefusal =
  | { readonly kind: 'empty' }
  | { readonly kind: 'not-a-number' }
  | { readonly kind: 'negative' }
  | { readonly kind: 'other-sign'; readonly typed: string; readonly meant: string }
  | { readonly kind: 'too-fine'; readonly decimals: number }
  | { readonly kind: 'between-steps'; readonly stepUg: MassUg }
  | { readonly kind: 'over-capacity'; readonly capacityUg: MassUg };

export interface GramsForm {
  readonly decimalSign: '.' | ',';
  /** Step and capacity of the scale that the mass was read from. */
  readonly stepUg: MassUg;
  readonly capacityUg: MassUg;
}

/** Reads "1.04", "1.04 g" or " 1.04 " (Arabic-Indic digits too). No grouping, no exponent, no bare point. */
export function parseGrams(text: string, form: GramsForm): Result<MassUg, GramsRefusal> {
  const typed = westernDigits(text).trim().replace(/\s*g$/, '');
  if (typed === '') return refuse({ kind: 'empty' });
  if (/^[-−]\s*\d/.test(typed)) return refuse({ kind: 'negative' });
  const { whole, sign, fraction = '' } = /^(?<whole>\d+)(?:(?<sign>[.,٫])(?<fraction>\d+))?$/.exec(typed)?.groups ?? {};
  if (whole === undefined) return refuse({ kind: 'not-a-number' });
  if (sign !== undefined && sign !== form.decimalSign) {
    return refuse({ kind: 'other-sign', typed, meant: `${whole}${form.decimalSign}${fraction}` });
  }
  return weigh(whole, fraction, form);
}

function weigh(whole: string, fraction: string, { stepUg, capacityUg }: GramsForm): Result<MassUg, GramsRefusal> {
  const decimals = decimalsOfStep(stepUg);
  if (fraction.length > decimals) return refuse({ kind: 'too-fine', decimals });
  const ug = BigInt(whole) * BigInt(UG_PER_G) + BigInt(fraction.padEnd(6, '0'));
  if (ug > BigInt(capacityUg)) return refuse({ kind: 'over-capacity', capacityUg });
  if (ug % BigInt(stepUg) !== 0n) return refuse({ kind: 'between-steps', stepUg });
  return accept(massUg(Number(ug)));
}

const ARABIC_INDIC_ZERO = 0x0660;

const westernDigits = (text: string): string => text.replace(/[٠-٩]/g, (digit) => String(digit.charCodeAt(0) - ARABIC_INDIC_ZERO));
