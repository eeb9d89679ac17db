// What the browser may know of the questionnaire: words, and per option only whether it ends the visit and what it makes needless. No effect crosses.
import type { Lang } from '../rulebook/language.ts';
import type { Option, Outcome, Question } from '../rulebook/questionnaire.ts';
import { OUTCOMES } from '../rulebook/questionnaire.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';

export interface KioskOption {
  readonly id: string;
  readonly text: string;
  readonly hint: string | null;
  readonly exclusive: boolean;
  readonly ends: Outcome | null;
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

/** All that the kiosk's page is given. */
export interface KioskShow {
  readonly shopName: string;
  readonly notice: string;
  readonly lang: Lang;
  readonly currency: string;
  readonly editionHash: string;
  readonly questions: readonly KioskQuestion[];
  readonly jarSizeId: string;
  readonly jarNetUg: number;
}

/** Questions in a language on sale; a missing text stands as its id, which the publish gate does not let through. */
export function kioskQuestions(rulebook: Rulebook, lang: Lang): readonly KioskQuestion[] {
  const textOf = (textId: string): string => rulebook.texts[lang]?.[textId] ?? textId;
  return rulebook.questions.map((question: Question) => ({
    id: question.id,
    part: textOf(question.partTextId),
    text: textOf(question.textId),
    why: question.whyTextId === undefined ? null : textOf(question.whyTextId),
    choose: question.choose,
    mostCount: question.mostCount,
    options: question.options.map((option) => kioskOption(option, textOf)),
  }));
}

const kioskOption = (option: Option, textOf: (textId: string) => string): KioskOption => {
  const ends = new Set(option.effects.flatMap((effect) => (effect.kind === 'outcome' ? [effect.outcome] : [])));
  return {
    id: option.id,
    text: textOf(option.textId),
    hint: option.hintTextId === undefined ? null : textOf(option.hintTextId),
    exclusive: option.exclusive,
    ends: OUTCOMES.find((outcome) => ends.has(outcome)) ?? null,
    skips: option.skipsQuestionIds,
  };
};
