// Check 1: does everything named exist, once, and not too much of it? Nothing else can be asked before.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { Book } from '../rulebook/book.ts';
import type { ChosenActive, Variant } from '../rulebook/variant.ts';

/** Findings of check 1 for a variant and its adjuster. */
export function checkStructure(book: Book, variant: Variant, adjuster: ChosenActive | null): readonly Finding[] {
  const most = book.rulebook.base.mostActivesCount;
  const tooMany = variant.actives.length > most;
  return [
    ...(book.shades.has(variant.shadeId) ? [] : [finding('unknown-shade', 'structure', { shadeId: variant.shadeId })]),
    ...variant.actives.flatMap((chosen) => checkChosen(book, chosen, 'active')),
    ...(adjuster ? checkChosen(book, adjuster, 'adjuster') : []),
    ...(tooMany
      ? [finding('too-many-actives', book.rulebook.base.id, { activesCount: variant.actives.length, mostActivesCount: most })]
      : []),
    ...repeated(book, variant, adjuster),
  ];
}

function checkChosen(book: Book, chosen: ChosenActive, role: 'active' | 'adjuster'): readonly Finding[] {
  const active = book.actives.get(chosen.activeId);
  if (active?.role !== role) return [finding('unknown-active', 'structure', { activeId: chosen.activeId })];
  if (active.levels.some((level) => level.levelPpm === chosen.levelPpm)) return [];
  return [finding('unknown-level', active.id, { activeId: chosen.activeId, levelPpm: chosen.levelPpm })];
}

/** A material may be wanted once: by the shade, by one active, or by the adjuster. */
function repeated(book: Book, variant: Variant, adjuster: ChosenActive | null): readonly Finding[] {
  const wanted = [
    ...(book.shades.get(variant.shadeId)?.parts.map((one) => one.materialId) ?? []),
    ...[...variant.actives, ...(adjuster ? [adjuster] : [])].flatMap((chosen) => book.actives.get(chosen.activeId)?.materialId ?? []),
  ];
  const twice = new Set(wanted.filter((materialId, index) => wanted.indexOf(materialId) !== index));
  return [...twice].map((materialId) => finding('repeated-part', 'structure', { materialId }));
}
