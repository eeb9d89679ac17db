// The rules with which the demonstration began: looser in one level and one pair, and cheaper in one shade, than those of today.
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { moneyMinor } from '#lib/units/money.ts';

const CHEAPER_MINOR = 50;

/** Today's rules as they stood before the second edition. */
export const firstRulebook = (today: Rulebook): Rulebook => ({
  ...today,
  actives: today.actives.map((active) =>
    active.id === 'niacinamide' ? { ...active, levels: active.levels.map((level) => ({ ...level, permitted: true })) } : active,
  ),
  shades: today.shades.map((shade) =>
    shade.id === 'tide-line' ? { ...shade, priceMinor: moneyMinor(shade.priceMinor - CHEAPER_MINOR) } : shade,
  ),
  pairJudgements: today.pairJudgements.filter(({ id }) => id !== 'urea-tea'),
});
