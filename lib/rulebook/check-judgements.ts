// Judgements say what they mean: one verdict a pair, a limit where limited, a caution where cautioned, and never by accident looser than a class.
import type { DocumentPath } from '../base/document-fault.ts';
import type { Book } from './book.ts';
import { pairKey } from './book.ts';
import type { ClassJudgement, JudgementVerdict, PairJudgement, PairLimit } from './judgement.ts';
import type { MaterialClass } from './material.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

export function* checkJudgements(book: Book): Faults {
  const { pairJudgements, classJudgements } = book.rulebook;
  const byClasses = byClassesOf(book);
  for (const [index, judged] of pairJudgements.entries()) {
    const path = ['pairJudgements', index];
    if (judged.firstMaterialId === judged.secondMaterialId) yield fault(path, 'pair-with-itself', { materialId: judged.firstMaterialId });
    yield* verdictFaults(path, judged);
    yield* looserFaults(path, judged, { book, naming: namings(book, byClasses, judged.firstMaterialId, judged.secondMaterialId) });
  }
  for (const [index, judged] of classJudgements.entries()) {
    const path = ['classJudgements', index];
    yield* verdictFaults(path, judged);
    yield* neverInBase(path, book, judged);
  }
  yield* duplicates(
    'pairJudgements',
    pairJudgements.map(({ id, firstMaterialId, secondMaterialId }) => ({ id, key: pairKey(firstMaterialId, secondMaterialId) })),
  );
  yield* duplicates(
    'classJudgements',
    classJudgements.map(({ id, firstClass, secondClass }) => ({ id, key: pairKey(firstClass, secondClass) })),
  );
}

function* duplicates(list: string, entries: readonly { readonly id: string; readonly key: string }[]): Faults {
  const firstId = new Map<string, string>();
  for (const [index, { id, key }] of entries.entries()) {
    const earlierId = firstId.get(key);
    if (earlierId === undefined) firstId.set(key, id);
    else yield fault([list, index], 'duplicate-pair', { earlierId });
  }
}

function* verdictFaults(path: DocumentPath, { verdict, limit, cautionId }: Pick<PairJudgement, 'verdict' | 'limit' | 'cautionId'>): Faults {
  const isBounded = limit !== undefined && Object.values(limit).some((bound) => bound !== undefined);
  if (verdict === 'limit' && !isBounded) yield fault([...path, 'limit'], 'limit-missing', {});
  if (verdict !== 'limit' && limit !== undefined) yield fault([...path, 'limit'], 'limit-on-other-verdict', { verdict });
  if (verdict === 'caution' && cautionId === undefined) yield fault([...path, 'cautionId'], 'caution-missing', {});
  if (verdict !== 'caution' && cautionId !== undefined) yield fault([...path, 'cautionId'], 'caution-unspoken', { verdict, cautionId });
}

/** Strictest first. */
const STRICTNESS = { never: 0, limit: 1, caution: 2, fine: 3 } satisfies Record<JudgementVerdict, number>;

/** A class judgement that names both materials of a pair; swapped when its first class is that of the second material. */
interface Naming {
  readonly judged: ClassJudgement;
  readonly isSwapped: boolean;
}

type ByClasses = ReadonlyMap<string, readonly ClassJudgement[]>;

const byClassesOf = (book: Book): ByClasses =>
  Map.groupBy(book.rulebook.classJudgements, ({ firstClass, secondClass }) => pairKey(firstClass, secondClass));

function namings(book: Book, byClasses: ByClasses, firstId: string, secondId: string): readonly Naming[] {
  const classesOf = (materialId: string): readonly MaterialClass[] => book.materials.get(materialId)?.classes ?? [];
  return classesOf(firstId).flatMap((one) =>
    classesOf(secondId).flatMap((other) =>
      (byClasses.get(pairKey(one, other)) ?? []).map((judged) => ({ judged, isSwapped: judged.firstClass !== one })),
    ),
  );
}

/** A judgement looser than the strictest class judgement that names both must say so, with evidence. */
function* looserFaults(
  path: DocumentPath,
  judged: PairJudgement,
  { book, naming }: { readonly book: Book; readonly naming: readonly Naming[] },
): Faults {
  const strictest = Math.min(...naming.map((one) => STRICTNESS[one.judged.verdict]));
  const broken = naming.filter((one) => STRICTNESS[one.judged.verdict] === strictest && isLooser(judged, one)).map((one) => one.judged.id);
  const overridden = judged.overridesClassJudgementId;
  const [first] = broken;
  if (first !== undefined && (overridden === undefined || !broken.includes(overridden))) {
    yield fault([...path, 'overridesClassJudgementId'], 'looser-than-class', { classJudgementId: first });
  }
  if (overridden === undefined) return;
  if (judged.evidenceId === undefined) yield fault([...path, 'evidenceId'], 'override-without-evidence', { classJudgementId: overridden });
  const isKnown = book.rulebook.classJudgements.some((one) => one.id === overridden);
  if (isKnown && !naming.some((one) => one.judged.id === overridden)) {
    yield fault([...path, 'overridesClassJudgementId'], 'override-idle', { classJudgementId: overridden });
  }
}

function isLooser(judged: PairJudgement, { judged: byClass, isSwapped }: Naming): boolean {
  const gap = STRICTNESS[judged.verdict] - STRICTNESS[byClass.verdict];
  if (gap !== 0 || judged.verdict !== 'limit') return gap > 0;
  return isLooserLimit(judged.limit ?? {}, isSwapped ? swapped(byClass.limit ?? {}) : (byClass.limit ?? {}));
}

const swapped = ({ maxFirstPpm, maxSecondPpm, ...rest }: PairLimit): PairLimit => ({
  ...rest,
  maxFirstPpm: maxSecondPpm,
  maxSecondPpm: maxFirstPpm,
});

/** Looser as soon as one bound of the class is absent or wider. */
function isLooserLimit(own: PairLimit, byClass: PairLimit): boolean {
  const above = (bound: number | undefined, most: number | undefined): boolean =>
    most !== undefined && (bound ?? Number.POSITIVE_INFINITY) > most;
  const below = (bound: number | undefined, least: number | undefined): boolean =>
    least !== undefined && (bound ?? Number.NEGATIVE_INFINITY) < least;
  return (
    above(own.maxSumPpm, byClass.maxSumPpm) ||
    above(own.maxFirstPpm, byClass.maxFirstPpm) ||
    above(own.maxSecondPpm, byClass.maxSecondPpm) ||
    above(own.maxPhX100, byClass.maxPhX100) ||
    below(own.minPhX100, byClass.minPhX100)
  );
}

/** Two base materials whose classes may never meet, and that nobody judged by themselves. */
function* neverInBase(path: DocumentPath, book: Book, judged: ClassJudgement): Faults {
  if (judged.verdict !== 'never') return;
  const only = new Map([[pairKey(judged.firstClass, judged.secondClass), [judged]]]);
  const ids = [...book.baseMaterialIds];
  for (const [index, firstMaterialId] of ids.entries()) {
    for (const secondMaterialId of ids.slice(index + 1)) {
      const isNamed = namings(book, only, firstMaterialId, secondMaterialId).length > 0;
      if (isNamed && !book.pairJudgements.has(pairKey(firstMaterialId, secondMaterialId))) {
        yield fault(path, 'base-class-never', { firstMaterialId, secondMaterialId });
      }
    }
  }
}
