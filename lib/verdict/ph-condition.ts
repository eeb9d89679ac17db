// When a pH condition of a pair or class rule counts against a jar.
import type { JarPh } from '../chemistry/jar-ph.ts';
import { mayLieOutside } from '../chemistry/jar-ph.ts';

/**
 * True as soon as prediction ± error may lie outside [min, max]; null = no such end.
 * Where a need table is missing nothing is said: the pH check names what is missing, and the jar is undecided by that.
 */
export const countsAgainst = (jarPh: JarPh, minPhX100: number | null, maxPhX100: number | null): boolean =>
  !(jarPh.kind === 'predicted' && jarPh.needs.kind === 'missing') && mayLieOutside(jarPh, minPhX100, maxPhX100);
