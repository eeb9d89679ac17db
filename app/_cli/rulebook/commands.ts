// What each command computes. Options are read here and named in the error when they are missing or wrong.
import type { z } from 'zod';
import { readAnswers } from '#lib/answers/read-answers.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { composePlan } from '#lib/composition/compose.ts';
import { rulebookJsonSchema } from '#lib/contracts/rulebook.ts';
import { answersSchema, variantSchema } from '#lib/contracts/variant.ts';
import { cautionsForMarket } from '#lib/label/cautions-for-market.ts';
import { labelContent } from '#lib/label/label-content.ts';
import { labelFindings } from '#lib/label/label-findings.ts';
import { labelIngredients } from '#lib/law/label-order.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import { LANGS } from '#lib/rulebook/language.ts';
import type { JarSize } from '#lib/rulebook/offer.ts';
import type { SoundnessFault } from '#lib/rulebook/soundness-fault.ts';
import type { Plan, Variant } from '#lib/rulebook/variant.ts';
import { orderVariant } from '#lib/rulebook/variant.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { isLocalDay, localDay } from '#lib/units/time.ts';
import { countVariants, permittedVariants } from '#lib/variants/permitted.ts';
import { threeMasks } from '#lib/variants/three-masks.ts';
import type { Attempt } from '#lib/verdict/judge.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import type { JudgeContext } from '#lib/verdict/verdict.ts';
import { massLimits } from '#lib/weighing/mass-limits.ts';
import { benchFindings, cardFor } from '#lib/weighing/mixing-card.ts';
import { phCheckFor } from '#lib/weighing/ph-due.ts';
import type { Answered } from './answered.ts';
import { no, notAsked, yes } from './answered.ts';
import { jsonOf } from './read-book.ts';

export const USAGE = [
  'Usage: rulebook check|judge|card|label|count|masks FILE [options], or rulebook schema. FILE may be - for standard input.',
  '  --day YYYY-MM-DD   the day to judge for (needed by all but check and schema)',
  '  --variant JSON     {"shadeId": "…", "actives": [{"activeId": "…", "levelPpm": 10000}]} (judge, card, label)',
  '  --answers JSON     [{"questionId": "…", "optionIds": ["…"]}] (masks)',
  '  --size ID          jar size; the first of the rulebook by default (card, label, masks)',
  '  --market EU|US     (label)   --lang en   (label)',
].join('\n');

export interface Asked {
  readonly book: Book | null;
  readonly faults: readonly SoundnessFault[];
  readonly values: Readonly<Partial<Record<'variant' | 'answers' | 'size' | 'market' | 'lang' | 'day', string>>>;
}

type Question = Asked & { readonly book: Book; readonly day: LocalDay };

export const COMMANDS: Readonly<Record<string, (asked: Asked) => Answered>> = {
  schema: () => yes(rulebookJsonSchema()),
  check: ({ faults }) => (faults.some((fault) => fault.weight === 'error') ? no({ ok: false, faults }) : yes({ ok: true, faults })),
  judge: (asked) => withVariant(asked, ({ attempt }) => (attempt.verdict.kind === 'permitted' ? yes(attempt) : no(attempt))),
  card: (asked) => withVariant(asked, cardAnswer),
  label: (asked) => withVariant(asked, labelAnswer),
  count: (asked) => withDay(asked, ({ book, day }) => yes({ permittedCount: countVariants(book, day) })),
  masks: (asked) => withDay(asked, masksAnswer),
};

function withDay(asked: Asked, then: (question: Question) => Answered): Answered {
  const { day } = asked.values;
  if (asked.book === null) return notAsked(USAGE);
  if (day === undefined || !isLocalDay(day)) return notAsked('Say the day: --day YYYY-MM-DD');
  return then({ ...asked, book: asked.book, day: localDay(day) });
}

type Judged = Question & { readonly variant: Variant; readonly attempt: Attempt };

function withVariant(given: Asked, then: (judged: Judged) => Answered): Answered {
  return withDay(given, (question) => {
    const variant = option(given.values.variant, 'variant', variantSchema);
    if (!variant.ok) return variant.refusal;
    const asked = orderVariant(variant.value);
    return then({ ...question, variant: asked, attempt: judgeVariant(question.book, asked, { day: question.day }) });
  });
}

/** An option's JSON, or what is wrong with it and where. */
function option<S extends z.ZodType>(text: string | undefined, name: string, schema: S): Result<z.output<S>, Answered> {
  if (text === undefined) return refuse(notAsked(`Say --${name} as JSON`));
  const json = jsonOf(text);
  if (!json.ok) return refuse(notAsked(`--${name} is not JSON: ${json.refusal}`));
  const parsed = schema.safeParse(json.value);
  return parsed.success
    ? accept(parsed.data)
    : refuse(notAsked(`--${name} has the wrong shape`, { issues: parsed.error.issues.map(({ path, message }) => ({ path, message })) }));
}

function sizeOf({ book, values }: Question): Result<Book['rulebook']['jarSizes'][number], Answered> {
  const sizes = book.rulebook.jarSizes;
  const found = sizes.find((size) => values.size === undefined || size.id === values.size);
  return found ? accept(found) : refuse(notAsked(`There is no such size: use one of ${sizes.map((size) => size.id).join(', ')}`));
}

/** The first plan that this bench can weigh, which need not be the first that is permitted. */
function cardAnswer(judged: Judged): Answered {
  const { book, day, variant } = judged;
  const size = sizeOf(judged);
  if (!size.ok) return size.refusal;
  const attempt = judgeVariant(book, variant, { day, bench: benchChecks(judged, size.value) });
  if (attempt.verdict.kind !== 'permitted' || attempt.plan === null) return no(attempt);
  const card = cardFor({
    ...benchOf(book, day),
    plan: attempt.plan,
    jarSize: size.value,
    limits: massLimits({ book, plan: attempt.plan, markets: book.rulebook.markets, day }),
    lots: null,
    day,
    phDue: phCheckFor(book, composePlan(book, attempt.plan), false),
    fullCleanAfterTags: [],
    warmestC: null,
  });
  return card.ok ? yes(card.value) : no({ findings: card.refusal });
}

/** All scale profiles of the rulebook stand on this bench. */
const benchOf = (book: Book, day: LocalDay) => ({ book, scales: book.rulebook.scaleProfiles, day });

/** Check 14 on that bench. */
function benchChecks({ book, day }: Pick<Question, 'book' | 'day'>, jarSize: JarSize): NonNullable<JudgeContext['bench']> {
  const limitsOf = (plan: Plan) => massLimits({ book, plan, markets: book.rulebook.markets, day });
  const weighing = benchFindings({ book, jarSize, scales: book.rulebook.scaleProfiles, limitsOf });
  const label = labelFindings({ book, jarSize, day });
  return (plan) => [...weighing(plan), ...label(plan)];
}

function labelAnswer(judged: Judged): Answered {
  const { book, attempt, values, day } = judged;
  const size = sizeOf(judged);
  if (!size.ok) return size.refusal;
  const market = book.rulebook.markets.find((one) => one.id === values.market);
  const lang = LANGS.find((one): one is Lang => one === (values.lang ?? book.rulebook.languages[0]));
  if (!market) return notAsked(`Say the market: --market ${book.rulebook.markets.map((one) => one.id).join('|')}`);
  if (!lang || !book.rulebook.languages.includes(lang)) return notAsked(`Say the language: --lang ${book.rulebook.languages.join('|')}`);
  if (attempt.verdict.kind !== 'permitted' || attempt.plan === null) return no(attempt);
  const { responsiblePerson } = market;
  const label = labelContent({
    book,
    market,
    lang,
    variant: attempt.plan.variant,
    netUg: size.value.netUg,
    ingredients: labelIngredients(book, composePlan(book, attempt.plan), market),
    cautionIds: cautionsForMarket(book, attempt.verdict.cautions, market.id),
    batchCode: null,
    durability: { kind: 'opening-period', openedMonths: book.rulebook.house.openedLabelMonths },
    shop: { name: responsiblePerson.name, address: responsiblePerson.address },
  });
  return label.ok ? yes({ day, ...label.value }) : no({ missing: label.refusal });
}

function masksAnswer(question: Question): Answered {
  const { book, day, values } = question;
  const size = sizeOf(question);
  if (!size.ok) return size.refusal;
  const answers = option(values.answers, 'answers', answersSchema);
  if (!answers.ok) return answers.refusal;
  const person = readAnswers(book.rulebook, answers.value);
  if (!person.ok) return notAsked('--answers do not fit the questionnaire', { faults: person.refusal });
  const [outcome] = person.value.outcomes;
  if (outcome !== undefined) return no({ outcome, others: person.value.outcomes.slice(1) });
  const found = threeMasks(book, permittedVariants(book, day), {
    person: person.value,
    jarSizeId: size.value.id,
    context: { day, bench: benchChecks(question, size.value) },
  });
  return found.masks.length > 0 ? yes(found) : no({ outcome: 'none' });
}
