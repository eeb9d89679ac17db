// Everything on a jar's label as plain data for one market and one language. A text that is missing refuses the label: a jar without
// its caution must not be sold, and a blank cannot be seen on a proof.
import { invariant } from '../base/invariant.ts';
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { LabelIngredient } from '../law/label-order.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Lang, MarketId } from '../rulebook/language.ts';
import type { Market } from '../rulebook/limit.ts';
import { LABEL_TEXT_IDS } from '../rulebook/text-references.ts';
import type { Variant } from '../rulebook/variant.ts';
import type { MassUg } from '../units/mass.ts';
import type { ElementString } from './gs1.ts';
import { elementString, gs1Date } from './gs1.ts';
import type { NetContent } from './net-content.ts';
import { netContentText } from './net-content.ts';
import type { Durability } from './use-by.ts';

/** Where the jar was mixed. Null: no address of its own; the responsible person's stands on the label in any case. */
export interface LabelShop {
  readonly name: string;
  readonly address: string | null;
}

export interface LabelAsk {
  readonly book: Book;
  readonly market: Market;
  readonly lang: Lang;
  readonly variant: Variant;
  readonly netUg: MassUg;
  /** In the order in which the market prints them (see labelIngredients). */
  readonly ingredients: readonly LabelIngredient[];
  /** All cautions owed for the jar; those without a place on labels are left out. */
  readonly cautionIds: readonly string[];
  /** Null for a proof: a label without a jar. */
  readonly batchCode: string | null;
  readonly durability: Durability;
  readonly shop: LabelShop;
}

export interface LabelContent {
  readonly marketId: MarketId;
  readonly lang: Lang;
  readonly productName: string;
  /** Shade, then actives in the order chosen. */
  readonly variantNames: readonly string[];
  readonly netContent: NetContent;
  readonly ingredientsText: string;
  readonly cautions: readonly { readonly cautionId: string; readonly text: string }[];
  readonly batchCode: string | null;
  readonly durability: Durability;
  readonly responsiblePerson: Market['responsiblePerson'];
  readonly shop: LabelShop;
  readonly directions: string;
  /** What the printed code holds; null on a proof. */
  readonly code: ElementString | null;
}

/** Names of the texts that this language lacks. */
export interface MissingTexts {
  readonly lang: Lang;
  readonly textIds: readonly string[];
}

/** The label, or the texts that it lacks. Throws a Fault for ids that are not in the rulebook. */
export function labelContent(ask: LabelAsk): Result<LabelContent, MissingTexts> {
  const { book, market, lang, variant, batchCode, durability } = ask;
  const missing: string[] = [];
  const owed = (text: string | undefined, textId: string): string => {
    if (text === undefined || text.trim() === '') missing.push(textId);
    return text ?? '';
  };
  const textOf = (textId: string): string => owed(book.rulebook.texts[lang]?.[textId], textId);
  const shade = need(book.shades, variant.shadeId);
  const actives = variant.actives.map((chosen) => need(book.actives, chosen.activeId));
  const content: LabelContent = {
    marketId: market.id,
    lang,
    productName: textOf(LABEL_TEXT_IDS.product),
    variantNames: [owed(shade.name[lang], `shade ${shade.id}`), ...actives.map((active) => owed(active.name[lang], `active ${active.id}`))],
    netContent: netContentText(ask.netUg, market.id, lang),
    ingredientsText: ask.ingredients.map(ingredientText).join(', '),
    cautions: labelCautions(book, ask.cautionIds).map(({ id, labelTextId = `label text of ${id}` }) => ({
      cautionId: id,
      text: textOf(labelTextId),
    })),
    batchCode,
    durability,
    responsiblePerson: market.responsiblePerson,
    shop: ask.shop,
    directions: textOf(LABEL_TEXT_IDS.directions),
    code: batchCode === null ? null : codeOf(batchCode, durability),
  };
  return missing.length > 0 ? refuse({ lang, textIds: missing }) : accept(content);
}

/** The EU marks nanomaterials behind the name (Regulation (EC) No 1223/2009, Article 19(1)(g)). */
const ingredientText = ({ name, nano }: LabelIngredient): string => (nano ? `${name} (nano)` : name);

/** Each once, in the rulebook's order. */
function labelCautions(book: Book, cautionIds: readonly string[]) {
  const owed = new Set(cautionIds.map((id) => need(book.cautions, id).id));
  return book.rulebook.cautions.filter((caution) => owed.has(caution.id) && caution.places.includes('label'));
}

/** Batch and, where the label bears one, the date. */
function codeOf(batchCode: string, durability: Durability): ElementString {
  const dated = durability.kind === 'date' ? [{ code: '17', text: gs1Date(durability.day) } as const] : [];
  const made = elementString([...dated, { code: '10', text: batchCode }]);
  invariant(made.ok, `a batch code that no scanner reads: ${batchCode}`);
  return made.value;
}
