// Class rules that can speak, and scopes that approve or refuse something definite, with evidence. What no scope approves is pointed out.
import type { DocumentPath } from '../base/document-fault.ts';
import type { Book } from './book.ts';
import type { Scope } from './judgement.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

export function* checkScopes(book: Book): Faults {
  const { classRules, scopes, materials } = book.rulebook;
  const classes = new Set(materials.flatMap((material) => material.classes));
  for (const [index, rule] of classRules.entries()) {
    for (const side of ['first', 'second'] as const) {
      const absent = rule[side]?.materialClass;
      if (absent !== undefined && !classes.has(absent)) yield fault(['classRules', index, side, 'materialClass'], 'rule-idle', { absent });
    }
  }
  for (const [index, scope] of scopes.entries()) yield* scopeFaults(['scopes', index], book, scope);
  yield* unapproved(book);
}

function* scopeFaults(path: DocumentPath, book: Book, scope: Scope): Faults {
  if (scope.kind === 'approve') {
    const mostCount = book.rulebook.base.mostActivesCount;
    if (scope.shadeIds.length === 0) yield fault([...path, 'shadeIds'], 'scope-no-shades', {});
    if (scope.evidenceIds.length === 0) yield fault([...path, 'evidenceIds'], 'no-evidence', { what: 'this scope' });
    if (scope.mostActivesCount > mostCount) {
      yield fault([...path, 'mostActivesCount'], 'scope-most-actives', { foundCount: scope.mostActivesCount, mostCount });
    }
  }
  if (scope.kind === 'refuse' && scope.shadeIds.length === 0 && scope.actives.length === 0) yield fault(path, 'scope-refuses-all', {});
  for (const [index, { activeId, levelPpm }] of scope.actives.entries()) {
    const active = book.actives.get(activeId);
    const isKnown = !active || active.levels.some((level) => level.levelPpm === levelPpm);
    if (!isKnown) yield fault([...path, 'actives', index, 'levelPpm'], 'unknown-level', { activeId, levelPpm });
  }
}

/** Shades and permitted levels that no scope approves: they are on the list but never offered. */
function* unapproved({ rulebook }: Book): Faults {
  const approving = rulebook.scopes.filter((scope) => scope.kind === 'approve');
  for (const [index, { id }] of rulebook.shades.entries()) {
    if (!approving.some((scope) => scope.shadeIds.includes(id))) yield fault(['shades', index], 'shade-not-approved', { shadeId: id });
  }
  for (const [index, { id, levels }] of rulebook.actives.entries()) {
    for (const [at, { levelPpm, permitted }] of levels.entries()) {
      const isApproved = approving.some((scope) => scope.actives.some((one) => one.activeId === id && levelPpm <= one.levelPpm));
      if (permitted && !isApproved) yield fault(['actives', index, 'levels', at], 'active-not-approved', { activeId: id, levelPpm });
    }
  }
}
