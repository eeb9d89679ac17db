// Check 2 by the compiled scopes.
import type { CompiledBook } from './compile-book.ts';
import type { ActiveChoice, CompiledScope, ShadeChoice } from './compile-offer.ts';

/**
 * Check 2 for a variant and its adjuster. What is not approved stays so whatever is added: an approving scope covers all it covers with
 * less in it, and a refusing one goes on refusing.
 */
export function approved(
  { scopes }: CompiledBook,
  shade: ShadeChoice,
  actives: readonly ActiveChoice[],
  adjuster: ActiveChoice | null,
): boolean {
  const chosen = adjuster ? [...actives, adjuster] : actives;
  let isApproved = false;
  for (const scope of scopes) {
    if (scope.shades !== null && scope.shades[shade.number] !== 1) continue;
    if (!scope.isApproving && refuses(scope, chosen)) return false;
    isApproved ||= scope.isApproving && actives.length <= scope.mostActivesCount && chosen.every((one) => covers(scope, one));
  }
  return isApproved;
}

const levelOf = (scope: CompiledScope, { activeNumber }: ActiveChoice): number => scope.levels[activeNumber] ?? 0;
const covers = (scope: CompiledScope, one: ActiveChoice): boolean => one.chosen.levelPpm <= levelOf(scope, one);
const refuses = (scope: CompiledScope, chosen: readonly ActiveChoice[]): boolean =>
  chosen.filter((one) => one.chosen.levelPpm >= levelOf(scope, one)).length === scope.namedCount;
