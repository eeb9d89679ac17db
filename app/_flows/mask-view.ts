// From a mask to what a customer may see of it: names, colours, words and a coarse drawing. No share, level or material id leaves here.
import { invariant } from '#lib/base/invariant.ts';
import type { Swatch } from '#lib/colour/lab.ts';
import { swatchOf } from '#lib/colour/lab.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need } from '#lib/rulebook/book.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import { midSentence } from '#lib/rulebook/language.ts';
import type { Claims, LabX100 } from '#lib/rulebook/offer.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import type { MoneyMinor } from '#lib/units/money.ts';
import type { DrawnLayer } from '#lib/variants/drawn-layers.ts';
import { drawnLayers } from '#lib/variants/drawn-layers.ts';
import { claimsShown, concernsServed, concernsServedLess } from '#lib/variants/mask-words.ts';
import type { Mask, MaskRole } from '#lib/variants/three-masks.ts';
import type { OwedCaution } from './owed-cautions.ts';
import { owedCautions } from './owed-cautions.ts';
import type { OpenVisit } from './visit-question.ts';

/** What the search found it for, or that the customer took it from the others. */
export type ShownRole = MaskRole | 'own-choice';

/** Everything of a mask but its token, which the edge adds. */
export interface ShownMask {
  readonly role: ShownRole;
  readonly shadeName: string;
  readonly activeNames: readonly string[];
  readonly priceMinor: MoneyMinor;
  readonly colour: { readonly name: string; readonly wetHex: string; readonly dryHex: string; readonly isPaler: boolean };
  readonly layers: readonly DrawnLayer[];
  readonly chosenFor: readonly string[];
  readonly good: readonly { readonly text: string; readonly basis: Claims['goodBasis'] }[];
  readonly lessGood: readonly string[];
  /** Wishes for which it does less than the first mask. */
  readonly lessFor: readonly string[];
  readonly cautions: readonly OwedCaution[];
}

export type MaskSeen = Omit<Mask, 'role'> & { readonly role: ShownRole };

/** As it stands beside the first mask of the visit. */
export function maskView({ edition, person, stand, lang }: OpenVisit, mask: MaskSeen, first: Variant): ShownMask {
  const { book } = edition;
  const { variant, plan, verdict } = mask;
  const { colour } = need(book.shades, variant.shadeId);
  const claims = claimsShown(book, variant, person.wishes);
  const concerns = new Map(book.rulebook.concerns.map((concern) => [concern.id, concern]));
  const textOf = (textId: string): string => textIn(book, lang, textId);
  const concernTexts = (ids: readonly string[]): readonly string[] => ids.map((id) => textOf(need(concerns, id).textId));
  const [wet, dry] = [screenColour(colour.wet), screenColour(colour.dry)];
  return {
    role: mask.role,
    ...maskNames(book, lang, variant),
    priceMinor: mask.priceMinor,
    colour: { name: textOf(colour.nameTextId), wetHex: wet.hex, dryHex: dry.hex, isPaler: wet.reduced || dry.reduced },
    layers: drawnLayers(book, lang, variant),
    chosenFor: concernTexts(concernsServed(book, variant, person.wishes)),
    // Two actives may say the same of themselves: it is said once, by the weaker of two bases.
    good: onceEach(claims.map(({ goodTextId, goodBasis }) => ({ text: textOf(goodTextId), basis: goodBasis }))),
    lessGood: [...new Set(claims.map(({ lessGoodTextId }) => textOf(lessGoodTextId)))],
    lessFor: concernTexts(concernsServedLess(book, { variant, than: first }, person.wishes)),
    cautions: owedCautions(book, { plan, day: stand.day, person, lang, ofVerdict: verdict.cautions }).cautions,
  };
}

function onceEach(goods: ShownMask['good']): ShownMask['good'] {
  const weakest = (a: Claims['goodBasis'], b: Claims['goodBasis']) => (a === 'tested-on-mask' ? b : a);
  return [...Map.groupBy(goods, ({ text }) => text)].map(([text, same]) => ({
    text,
    basis: same.map(({ basis }) => basis).reduce(weakest),
  }));
}

/** A shade goes by its house name, an active by its INCI or common chemical name. */
export function maskNames(book: Book, lang: Lang, variant: Variant): Pick<ShownMask, 'shadeName' | 'activeNames'> {
  return {
    shadeName: need(book.shades, variant.shadeId).name[lang] ?? variant.shadeId,
    activeNames: variant.actives.map(({ activeId }) => need(book.actives, activeId).name[lang] ?? activeId),
  };
}

/** "Fern Bank with niacinamide and panthenol". */
export function maskName(book: Book, lang: Lang, variant: Variant): string {
  const { shadeName, activeNames } = maskNames(book, lang, variant);
  const actives = activeNames.map(midSentence);
  return actives.length === 0 ? shadeName : `${shadeName} with ${new Intl.ListFormat(lang, { type: 'conjunction' }).format(actives)}`;
}

function textIn(book: Book, lang: Lang, textId: string): string {
  const text = book.rulebook.texts[lang]?.[textId];
  invariant(text !== undefined, `no text ${textId} in ${lang}`);
  return text;
}

const screenColour = ({ lX100, aX100, bX100 }: LabX100): Swatch => swatchOf({ l: lX100 / 100, a: aX100 / 100, b: bX100 / 100 });
