// Check 2: approvals are scopes. A scope that refuses beats any that approves; what no scope covers is not approved.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { Book } from '../rulebook/book.ts';
import type { Scope } from '../rulebook/judgement.ts';
import type { ChosenActive, Plan } from '../rulebook/variant.ts';

export function checkApproval(book: Book, plan: Plan): readonly Finding[] {
  const refusing = book.scopes.filter((scope) => scope.kind === 'refuse' && scopeRefuses(scope, plan));
  if (refusing.length > 0) return refusing.map((scope) => finding('approval-refused', scope.id, { scopeId: scope.id }));
  const approved = book.scopes.some((scope) => scope.kind === 'approve' && scopeApproves(scope, plan));
  return approved ? [] : [finding('not-approved', 'approval', {})];
}

/** shades × actives up to levels × at most n actives; the adjuster needs evidence too, but is not counted. */
export function scopeApproves(scope: Scope, plan: Pick<Plan, 'variant' | 'adjuster'>): boolean {
  const { shadeId, actives } = plan.variant;
  return (
    scope.shadeIds.includes(shadeId) && actives.length <= scope.mostActivesCount && chosenOf(plan).every((chosen) => holds(scope, chosen))
  );
}

const holds = (scope: Scope, chosen: ChosenActive): boolean =>
  scope.actives.some((allowed) => allowed.activeId === chosen.activeId && chosen.levelPpm <= allowed.levelPpm);

/** One of its shades (if it names any) together with all of its actives at or above their levels. */
export function scopeRefuses(scope: Scope, plan: Pick<Plan, 'variant' | 'adjuster'>): boolean {
  const shadeNamed = scope.shadeIds.length === 0 || scope.shadeIds.includes(plan.variant.shadeId);
  const chosen = chosenOf(plan);
  return (
    shadeNamed && scope.actives.every((named) => chosen.some((one) => one.activeId === named.activeId && one.levelPpm >= named.levelPpm))
  );
}

const chosenOf = (plan: Pick<Plan, 'variant' | 'adjuster'>): readonly ChosenActive[] => [
  ...plan.variant.actives,
  ...(plan.adjuster ? [plan.adjuster] : []),
];
