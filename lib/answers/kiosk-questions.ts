// What the browser may know of the questionnaire: words, and per option only whether it ends the visit and what it makes needless.
// No effect crosses: effects are the shop's rules, and what the kiosk made of them would not be trusted anyway.
import { invariant } from '../base/invariant.ts';
import type { Lang } from '../rulebook/language.ts';
import type { Option, Outcome } from '../rulebook/questionnaire.ts';
import { OUTCOMES } from '../rulebook/questionnaire.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';

export interface KioskOption {
  readonly id: string;
  readonly text: string;
  readonly hint: string | null;
  /** Chosen alone; whatever else was ticked goes. */
  readonly exclusive: boolean;
  /** Stands for not saying: an outcome after it speaks of that, not of the person. */
  readonly isSkip: boolean;
  /** The outcome with which this answer ends the visit; the worst where it has several. */
  readonly ends: Outcome | null;
  /** Later questions that this answer makes needless. */
  readonly skips: readonly string[];
}

export interface KioskQuestion {
  readonly id: string;
  readonly part: string;
  readonly text: string;
  readonly why: string | null;
  readonly choose: 'one' | 'many';
  readonly mostCount: number;
  readonly options: readonly KioskOption[];
}

/** The questionnaire in a language on sale. Throws a Fault for a missing text: the publish gate lets none through. */
export function kioskQuestions(rulebook: Rulebook, lang: Lang): readonly KioskQuestion[] {
  const textOf = (textId: string): string => {
    const text = rulebook.texts[lang]?.[textId];
    invariant(text !== undefined, `no text ${textId} in ${lang}`);
    return text;
  };
  return rulebook.questions.map((question) => ({
    id: question.id,
    part: textOf(question.partTextId),
    text: textOf(question.textId),
    why: question.whyTextId === undefined ? null : textOf(question.whyTextId),
    choose: question.choose,
    mostCount: question.mostCount,
    options: question.options.map((option) => kioskOption(option, textOf)),
  }));
}

function kioskOption(option: Option, textOf: (textId: string) => string): KioskOption {
  const ends = new Set(option.effects.flatMap((effect) => (effect.kind === 'outcome' ? [effect.outcome] : [])));
  return {
    id: option.id,
    text: textOf(option.textId),
    hint: option.hintTextId === undefined ? null : textOf(option.hintTextId),
    exclusive: option.exclusive,
    isSkip: option.isSkip,
    ends: OUTCOMES.find((outcome) => ends.has(outcome)) ?? null,
    skips: option.skipsQuestionIds,
  };
}
