// Whether a scale can have shown a mass at all: between two of its steps, or beyond what it weighs, somebody misread or mistyped.
import type { MassUg } from '#lib/units/mass.ts';
import type { BenchScale } from '#lib/weighing/scale.ts';
import type { BenchRefusal } from './bench-refusal.ts';

export function scaleFault({ stepUg, capacityUg }: Pick<BenchScale, 'stepUg' | 'capacityUg'>, mass: MassUg): BenchRefusal | null {
  if (mass > capacityUg) return { kind: 'over-capacity', capacityUg };
  return mass % stepUg === 0 ? null : { kind: 'between-steps', stepUg };
}
