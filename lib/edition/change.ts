// One edit of the draft at a time, as data: who may undo it, list it and sign for it must be able to read it.
import { assertNever } from '../base/invariant.ts';
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import { pairKey } from '../rulebook/book.ts';
import type { ClassJudgement, PairJudgement } from '../rulebook/judgement.ts';
import type { Lang } from '../rulebook/language.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { MoneyMinor } from '../units/money.ts';
import type { SharePpm } from '../units/share.ts';

export type DraftChange =
  | {
      readonly kind: 'set-level';
      readonly activeId: string;
      readonly levelPpm: SharePpm;
      readonly permitted: boolean;
      readonly priceMinor: MoneyMinor;
    }
  | { readonly kind: 'judge-pair'; readonly judgement: PairJudgement }
  | { readonly kind: 'judge-classes'; readonly judgement: ClassJudgement }
  | {
      readonly kind: 'set-caution-text';
      readonly cautionId: string;
      readonly lang: Lang;
      readonly text: string;
      readonly labelText: string | null;
    }
  | { readonly kind: 'set-caution'; readonly cautionId: string; readonly mustTick: boolean }
  | { readonly kind: 'replace'; readonly rulebook: Rulebook };

export type ChangeKind = DraftChange['kind'];

/** What the change speaks of is not in the draft. */
export interface NothingToChange {
  readonly kind: 'nothing-to-change';
  readonly id: string;
}

/** A caution would be left without its words. */
export interface BlankWords {
  readonly kind: 'blank-words';
  readonly cautionId: string;
}

/** The draft with one change made. The draft itself stays as it is. */
export function applyChange(draft: Rulebook, change: DraftChange): Result<Rulebook, NothingToChange | BlankWords> {
  switch (change.kind) {
    case 'set-level':
      return setLevel(draft, change);
    case 'judge-pair':
      return accept({ ...draft, pairJudgements: judgedPairs(draft, change.judgement) });
    case 'judge-classes':
      return accept({ ...draft, classJudgements: judgedClasses(draft, change.judgement) });
    case 'set-caution-text':
      return setCautionText(draft, change);
    case 'set-caution':
      return draft.cautions.some((caution) => caution.id === change.cautionId)
        ? accept({
            ...draft,
            cautions: draft.cautions.map((caution) =>
              caution.id === change.cautionId ? { ...caution, mustTick: change.mustTick } : caution,
            ),
          })
        : refuse({ kind: 'nothing-to-change', id: change.cautionId });
    case 'replace':
      return accept(change.rulebook);
    default:
      return assertNever(change);
  }
}

function setLevel(
  draft: Rulebook,
  { activeId, levelPpm, permitted, priceMinor }: Extract<DraftChange, { kind: 'set-level' }>,
): Result<Rulebook, NothingToChange> {
  const active = draft.actives.find((one) => one.id === activeId);
  if (!active?.levels.some((level) => level.levelPpm === levelPpm))
    return refuse({ kind: 'nothing-to-change', id: `${activeId}@${levelPpm}` });
  const levels = active.levels.map((level) => (level.levelPpm === levelPpm ? { ...level, permitted, priceMinor } : level));
  return accept({ ...draft, actives: draft.actives.map((one) => (one.id === activeId ? { ...one, levels } : one)) });
}

/** A pair has one judgement of its own: the new one takes the old one's place and name, so that a diff shows what changed in it. */
function judgedPairs(draft: Rulebook, judgement: PairJudgement): readonly PairJudgement[] {
  const key = pairKey(judgement.firstMaterialId, judgement.secondMaterialId);
  const at = draft.pairJudgements.findIndex((old) => pairKey(old.firstMaterialId, old.secondMaterialId) === key);
  return replaced(draft.pairJudgements, at, judgement);
}

function judgedClasses(draft: Rulebook, judgement: ClassJudgement): readonly ClassJudgement[] {
  const key = pairKey(judgement.firstClass, judgement.secondClass);
  const at = draft.classJudgements.findIndex((old) => pairKey(old.firstClass, old.secondClass) === key);
  return replaced(draft.classJudgements, at, judgement);
}

function replaced<T extends { readonly id: string }>(rows: readonly T[], at: number, row: T): readonly T[] {
  const old = rows[at];
  return old ? rows.with(at, { ...row, id: old.id }) : [...rows, row];
}

function setCautionText(
  draft: Rulebook,
  { cautionId, lang, text, labelText }: Extract<DraftChange, { kind: 'set-caution-text' }>,
): Result<Rulebook, NothingToChange | BlankWords> {
  const caution = draft.cautions.find((one) => one.id === cautionId);
  if (!caution) return refuse({ kind: 'nothing-to-change', id: cautionId });
  if (text.trim() === '' || labelText?.trim() === '') return refuse({ kind: 'blank-words', cautionId });
  const label = caution.labelTextId !== undefined && labelText !== null ? { [caution.labelTextId]: labelText } : {};
  return accept({ ...draft, texts: { ...draft.texts, [lang]: { ...draft.texts[lang], [caution.textId]: text, ...label } } });
}
