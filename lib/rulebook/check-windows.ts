// pH windows run upwards, and what meets in a jar leaves room enough for a prediction with its error: a window that no jar could be
// predicted into would refuse everything in silence.
import type { DocumentPath } from '../base/document-fault.ts';
import type { Book } from './book.ts';
import type { PairLimit } from './judgement.ts';
import type { PhWindow } from './material.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

/** What a window must span beside twice the error of the prediction. */
const LEAST_ROOM_X100 = 20;

export function* checkWindows(book: Book): Faults {
  const { base, materials, classRules, pairJudgements, classJudgements } = book.rulebook;
  yield* upwards(['base', 'ph'], base.ph);
  for (const [index, preservative] of base.preservation.preservatives.entries()) {
    yield* upwards(['base', 'preservation', 'preservatives', index, 'ph'], preservative.ph);
  }
  for (const [index, material] of materials.entries()) {
    if (material.phFresh) yield* upwards(['materials', index, 'phFresh'], material.phFresh);
    if (material.phShelf) yield* upwards(['materials', index, 'phShelf'], material.phShelf);
  }
  for (const [index, { unlessPhWithin }] of classRules.entries()) {
    if (unlessPhWithin) yield* upwards(['classRules', index, 'unlessPhWithin'], unlessPhWithin);
  }
  for (const [index, { limit }] of pairJudgements.entries()) yield* limitUpwards(['pairJudgements', index, 'limit'], limit);
  for (const [index, { limit }] of classJudgements.entries()) yield* limitUpwards(['classJudgements', index, 'limit'], limit);
  yield* roomForPreservatives(book);
  yield* roomForAdditions(book);
}

function* upwards(path: DocumentPath, { minPhX100, maxPhX100 }: PhWindow): Faults {
  if (minPhX100 >= maxPhX100) yield fault(path, 'window-reversed', { minPhX100, maxPhX100 });
}

function* limitUpwards(path: DocumentPath, limit: PairLimit | undefined): Faults {
  if (limit?.minPhX100 !== undefined && limit.maxPhX100 !== undefined) {
    yield* upwards(path, { minPhX100: limit.minPhX100, maxPhX100: limit.maxPhX100 });
  }
}

/** The intersection of windows: highest lower end, lowest upper end; reversed when they lie apart. */
const meet = (windows: readonly PhWindow[]): { readonly minPhX100: number; readonly maxPhX100: number } => ({
  minPhX100: Math.max(...windows.map((window) => window.minPhX100)),
  maxPhX100: Math.min(...windows.map((window) => window.maxPhX100)),
});

function* room(path: DocumentPath, book: Book, named: { readonly id: string; readonly windows: readonly PhWindow[] }): Faults {
  const shared = meet([book.rulebook.base.ph, ...named.windows]);
  const needX100 = 2 * book.rulebook.house.phErrorX100 + LEAST_ROOM_X100;
  if (shared.maxPhX100 - shared.minPhX100 < needX100) yield fault(path, 'window-too-narrow', { materialId: named.id, ...shared, needX100 });
}

function* roomForPreservatives(book: Book): Faults {
  for (const [index, { substanceId, ph }] of book.rulebook.base.preservation.preservatives.entries()) {
    yield* room(['base', 'preservation', 'preservatives', index, 'ph'], book, { id: substanceId, windows: [ph] });
  }
}

/** Actives, adjusters and shade powders each with the base alone; what meets in one jar is judged there. */
function* roomForAdditions(book: Book): Faults {
  const { actives, shades } = book.rulebook;
  const offered = [
    ...actives.map(({ materialId }, index) => ({ path: ['actives', index, 'materialId'], materialId })),
    ...shades.flatMap(({ parts }, index) =>
      parts.map(({ materialId }, at) => ({ path: ['shades', index, 'parts', at, 'materialId'], materialId })),
    ),
  ];
  for (const { path, materialId } of offered) {
    const material = book.materials.get(materialId);
    const windows = [material?.phFresh, material?.phShelf].filter((window) => window !== undefined);
    if (windows.length > 0) yield* room(path, book, { id: materialId, windows });
  }
}
