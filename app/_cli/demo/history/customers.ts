// Customers of the past: each answers the questions of the edition in force, looks at the masks, and takes one of them, or none.
import { editionInForce } from '#app/_flows/edition-in-force.ts';
import { findMasks } from '#app/_flows/find-masks.ts';
import { placeOrder } from '#app/_flows/place-order.ts';
import { showKiosk } from '#app/_flows/show-kiosk.ts';
import { showQueue } from '#app/_flows/show-queue.ts';
import type { KioskQuestion } from '#lib/answers/kiosk-questions.ts';
import type { Answer } from '#lib/answers/read-answers.ts';
import { sharePpm } from '#lib/units/share.ts';
import type { Dice } from './dice.ts';
import type { Stage } from './stage.ts';
import { as, went } from './stage.ts';

/** How often people skip a question that may be skipped, and how often they have nothing to say where "none of these" stands. */
const SKIPS = 0.06;
const HAS_NOTHING = 0.8;
const SIZES: readonly (readonly [number, number])[] = [
  [0, 75],
  [1, 15],
  [2, 10],
];

/** Answers as somebody gives them who comes to buy: nobody is told to wait, and who would be does not appear among the orders. */
function answersBy(dice: Dice, questions: readonly KioskQuestion[]): readonly Answer[] {
  const needless = new Set<string>();
  return questions.flatMap((question): readonly Answer[] => {
    if (needless.has(question.id)) return [];
    const open = question.options.filter((option) => option.ends === null);
    const nothing = open.find((option) => option.exclusive && !option.isSkip);
    const skip = open.find((option) => option.isSkip);
    const plain = open.filter((option) => option !== skip && option !== nothing);
    const first =
      skip && dice.chance(SKIPS) ? skip : nothing && dice.chance(HAS_NOTHING) ? nothing : dice.pick(plain.length > 0 ? plain : open);
    const chosen =
      question.choose === 'many' && !first.exclusive && plain.length > 1 && dice.chance(0.4)
        ? [first, dice.pick(plain.filter((option) => option !== first))]
        : [first];
    for (const id of chosen.flatMap((option) => option.skips)) needless.add(id);
    return [{ questionId: question.id, optionIds: chosen.map((option) => option.id).sort() }];
  });
}

/** One visit. @returns the id of the order, or null where nothing was found or nobody wanted it */
export function visit(stage: Stage, counterCode: string): string | null {
  const { dice, clock, services } = stage;
  const nobody = as(stage, 'nobody');
  const kiosk = went(showKiosk(nobody, { counterCode }), 'the kiosk opens').shown;
  const sizes = kiosk.jarSizes;
  const asked = {
    editionHash: kiosk.editionHash,
    lang: kiosk.lang,
    jarSizeId: sizes[dice.weighted(SIZES.slice(0, sizes.length))]?.id ?? '',
    answers: answersBy(dice, kiosk.questions),
  };
  const found = went(findMasks(nobody, asked), 'masks are looked for');
  if (found.kind !== 'masks' || found.masks.length === 0 || dice.chance(0.08)) return null;
  const [best, ...others] = found.masks;
  const mask = others.length > 0 && dice.chance(0.35) ? dice.pick(others) : best;
  if (!mask) return null;
  clock.pass(3);
  const order = {
    ...asked,
    requestKey: services.newId(),
    variant: mask.variant,
    counterCode,
    tickedCautionIds: mask.shown.cautions.map((caution) => caution.id),
    hasReadAll: true,
  };
  const { code } = went(placeOrder(as(stage, 'nobody'), order), 'a mask is ordered');
  return orderOf(stage, code);
}

/** Somebody who comes for one mask by name, has nothing to tell and ticks what there is to tick. @returns null where it is not offered */
export function orderNamed(stage: Stage, variantKey: string): string | null {
  const { shown } = went(showKiosk(as(stage, 'nobody'), { counterCode: 'CN' }), 'the kiosk opens');
  const [shadeId = '', chosen = ''] = variantKey.split('|');
  const actives = chosen
    .split('+')
    .filter((one) => one !== '')
    .map((one) => {
      const [activeId = '', level = ''] = one.split('@');
      return { activeId, levelPpm: sharePpm(Number(level)) };
    });
  const order = {
    editionHash: shown.editionHash,
    lang: shown.lang,
    jarSizeId: shown.jarSizes[0]?.id ?? '',
    answers: briefAnswers(shown.questions, effectsOf(stage)),
    requestKey: stage.services.newId(),
    variant: { shadeId, actives },
    counterCode: 'CN',
    tickedCautionIds: [] as readonly string[],
    hasReadAll: true,
  };
  const first = placeOrder(as(stage, 'nobody'), order);
  const placed =
    !first.ok && first.refusal.kind === 'not-ticked'
      ? placeOrder(as(stage, 'nobody'), { ...order, tickedCautionIds: first.refusal.cautionIds })
      : first;
  return placed.ok ? orderOf(stage, placed.value.code) : null;
}

const orderOf = (stage: Stage, code: string): string | null =>
  showQueue(as(stage, 'mixer')).rows.find((row) => row.shortCode === code)?.orderId ?? null;

type EffectsOf = (optionId: string) => number;

/** How much an answer asks for or rules out, by the edition in force. */
function effectsOf(stage: Stage): EffectsOf {
  const flow = as(stage, 'nobody');
  const edition = flow.db.read((tx) => editionInForce(tx, flow));
  const options = edition?.book.rulebook.questions.flatMap((question) => question.options) ?? [];
  const counts = new Map(options.map((option) => [option.id, option.effects.length]));
  return (optionId) => counts.get(optionId) ?? 0;
}

/** Whoever has nothing to tell gives the answers that rule out least: never one that ends the visit, and no skipping. */
function briefAnswers(questions: readonly KioskQuestion[], effects: EffectsOf): readonly Answer[] {
  const needless = new Set<string>();
  return questions.flatMap(({ id, options }): readonly Answer[] => {
    if (needless.has(id)) return [];
    const open = options.filter((option) => option.ends === null && !option.isSkip);
    const [easiest] = open.toSorted((a, b) => effects(a.id) - effects(b.id));
    if (!easiest) return [];
    for (const skipped of easiest.skips) needless.add(skipped);
    return [{ questionId: id, optionIds: [easiest.id] }];
  });
}
