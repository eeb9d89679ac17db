// pH standards at 25 °C against the charge balance. The model is a one-constant estimate: it must come within 0.02 of the standard.
import { describe, expect, it } from 'vitest';
import type { Ion, Solution } from '#lib/chemistry/charge-balance.ts';
import { acidityTable, phOf } from '#lib/chemistry/charge-balance.ts';

const POTASSIUM = 1;
const strong = (molPerKg: number, charge: number): Ion => ({ molPerKg, topCharge: charge, pkas: [] });
const acid = (molPerKg: number, ...pkas: readonly number[]): Ion => ({ molPerKg, topCharge: 0, pkas });
const inWater = (...ions: readonly Ion[]): Solution => ({ ions, waterShare: 1 });

const PHTHALIC = [2.95, 5.408] as const;
const PHOSPHORIC = [2.148, 7.198, 12.35] as const;
const CITRIC = [3.128, 4.761, 6.396] as const;

const computed = (solution: Solution, activity?: 'ideal'): number => {
  const found = phOf(solution, activity);
  if (!found.ok) throw new Error(found.refusal);
  return found.value;
};

describe('standard buffers', () => {
  it.each([
    // Hamer, Pinching and Acree, J. Res. NBS 36 (1946), RP1690; verified.
    ['potassium hydrogen phthalate 0.05 mol/kg', inWater(strong(0.05, POTASSIUM), acid(0.05, ...PHTHALIC)), 4.005],
    // NBS primary standard, equimolal phosphate; from memory.
    ['equimolal phosphate 0.025 mol/kg', inWater(strong(0.075, POTASSIUM), acid(0.05, ...PHOSPHORIC)), 6.865],
    // Staples and Bates, J. Res. NBS 73A (1969) 37–41; verified. pKa 6.351 and 10.329 from memory.
    ['hydrogencarbonate and carbonate, 0.025 mol/kg each', inWater(strong(0.075, POTASSIUM), acid(0.05, 6.351, 10.329)), 10.012],
    // NBS primary standard, saturated at 25 °C, 0.0341 mol/kg; from memory. pKa 3.036 and 4.366 from memory (CRC Handbook).
    ['potassium hydrogen tartrate, saturated', inWater(strong(0.0341, POTASSIUM), acid(0.0341, 3.036, 4.366)), 3.557],
    // NBS primary standard; from memory.
    ['potassium dihydrogen citrate 0.05 mol/kg', inWater(strong(0.05, POTASSIUM), acid(0.05, ...CITRIC)), 3.776],
  ])('%s', (_name, solution, standard) => {
    expect(Math.abs(computed(solution) - standard)).toBeLessThan(0.02);
  });

  it.each([
    // Worked with the same constants apart from this program.
    ['phthalate', inWater(strong(0.05, POTASSIUM), acid(0.05, ...PHTHALIC)), 4.01],
    ['phosphate', inWater(strong(0.075, POTASSIUM), acid(0.05, ...PHOSPHORIC)), 6.88],
    ['acetic acid 0.1 mol/kg (textbook 2.88)', inWater(acid(0.1, 4.756)), 2.88],
  ])('worked example: %s', (_name, solution, worked) => {
    expect(computed(solution).toFixed(2)).toBe(worked.toFixed(2));
  });

  it.each([
    // Mean activity coefficients at 0.1 mol/kg and 25 °C, Robinson and Stokes, Electrolyte Solutions; from memory: HCl 0.796, NaOH 0.766.
    ['hydrochloric acid 0.1 mol/kg', inWater(strong(0.1, -1)), -Math.log10(0.1 * 0.796)],
    ['sodium hydroxide 0.1 mol/kg', inWater(strong(0.1, 1)), 13.995 + Math.log10(0.1 * 0.766)],
  ])('%s', (_name, solution, fromTable) => {
    expect(Math.abs(computed(solution) - fromTable)).toBeLessThan(0.02);
  });

  it('worked: half of glycine’s second proton (pKa 2.35 and 9.78 from memory) taken off 0.05 mol/kg', () => {
    // As much anion as neutral form, I = 0.025: 9.78 − 0.509 (√0.025 / (1 + √0.025) − 0.0075) = 9.714.
    const glycine: Ion = { molPerKg: 0.05, topCharge: 1, pkas: [2.35, 9.78] };
    expect(computed(inWater(glycine, strong(0.05, -1), strong(0.075, 1)))).toBeCloseTo(9.682, 2); // with its chloride, I = 0.075
    expect(computed(inWater(glycine, strong(0.025, 1)))).toBeCloseTo(9.714, 2);
  });

  it('needs activities: without them equimolal phosphate would read 7.20', () => {
    expect(computed(inWater(strong(0.075, POTASSIUM), acid(0.05, ...PHOSPHORIC)), 'ideal').toFixed(2)).toBe('7.20');
  });

  it('finds pure water at half of pKw', () => {
    expect(computed(inWater())).toBeCloseTo(13.995 / 2, 6);
  });

  it('does not compute above an ionic strength of 0.5 mol/kg, and says so', () => {
    const brine = inWater(strong(0.6, POTASSIUM), strong(0.6, -1));
    expect(phOf(brine)).toEqual({ ok: false, refusal: 'ionic-strength-too-high' });
    expect(acidityTable(brine)).toEqual({ ok: false, refusal: 'ionic-strength-too-high' });
    expect(phOf(inWater(strong(0.49, POTASSIUM), strong(0.49, -1))).ok).toBe(true);
  });
});
