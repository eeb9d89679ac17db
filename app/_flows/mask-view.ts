// From a mask to what a customer may see of it: names, colours, words and a coarse drawing. No share, level or material id leaves here.
import type { Person } from '#lib/answers/person.ts';
import { invariant } from '#lib/base/invariant.ts';
import { swatchOf } from '#lib/colour/lab.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need } from '#lib/rulebook/book.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import type { Material } from '#lib/rulebook/material.ts';
import type { Claims, LabX100 } from '#lib/rulebook/offer.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import type { Mask } from '#lib/variants/three-masks.ts';
import { owedCautions } from './owed-cautions.ts';

export type Hatch = 'base-clay' | 'tint-clay' | 'mineral-colour' | 'oil' | 'humectant' | 'acid' | 'botanical' | 'preservative' | 'cream';

export interface ShownLayer {
  readonly name: string;
  readonly hatch: Hatch;
  readonly thicknessIndex: number;
}

/** Everything of a mask but its token, which the edge adds. */
export function maskView(book: Book, lang: Lang, person: Person, mask: Mask) {
  const textOf = (textId: string): string => book.rulebook.texts[lang]?.[textId] ?? textId;
  const { variant, verdict } = mask;
  const shade = need(book.shades, variant.shadeId);
  const claims = claimsOf(book, variant);
  return {
    role: mask.role,
    name: maskName(book, lang, variant),
    priceMinor: mask.priceMinor,
    colour: { name: textOf(shade.colour.nameTextId), wetHex: hexOf(shade.colour.wet), dryHex: hexOf(shade.colour.dry) },
    layers: layersOf(book, lang, variant),
    chosenFor: concernsMet(book, variant, person).map((textId) => textOf(textId)),
    good: { text: textOf(claims.goodTextId), basis: claims.goodBasis },
    lessGood: textOf(claims.lessGoodTextId),
    cautions: owedCautions(book, verdict.cautions, person).map(({ caution, mustTick }) => ({
      id: caution.id,
      text: textOf(caution.textId),
      short: textOf(caution.labelTextId ?? caution.textId),
      mustTick,
    })),
  };
}

/** "Fern Bank with niacinamide and panthenol". */
export function maskName(book: Book, lang: Lang, variant: Variant): string {
  const shade = need(book.shades, variant.shadeId).name[lang] ?? variant.shadeId;
  const actives = variant.actives.map((chosen) => (need(book.actives, chosen.activeId).name[lang] ?? chosen.activeId).toLowerCase());
  return actives.length === 0 ? shade : `${shade} with ${new Intl.ListFormat(lang, { type: 'conjunction' }).format(actives)}`;
}

/** The strongest active speaks; a mask without actives is its shade. */
function claimsOf(book: Book, variant: Variant): Claims {
  const [first] = variant.actives.map((chosen) => need(book.actives, chosen.activeId));
  const claims = first ? first.claims : need(book.shades, variant.shadeId).claims;
  invariant(claims, `no claims for ${variant.shadeId}`);
  return claims;
}

function concernsMet(book: Book, variant: Variant, person: Person): readonly string[] {
  const met = new Set(
    variant.actives.flatMap(({ activeId, levelPpm }) =>
      (need(book.actives, activeId).levels.find((level) => level.levelPpm === levelPpm)?.benefits ?? []).filter((benefit) => benefit.benefitMilli > 0).map((benefit) => benefit.concernId),
    ),
  );
  return book.rulebook.concerns.filter((concern) => met.has(concern.id) && (person.wishes.get(concern.id) ?? 0) > 0).map((concern) => concern.textId);
}

/** Cream and oil first, then powders, then actives; thickness in coarse steps of the square root, as a picture is drawn. */
function layersOf(book: Book, lang: Lang, variant: Variant): readonly ShownLayer[] {
  const layer = (material: Material, sharePpm: number): ShownLayer => ({
    name: material.name[lang] ?? material.code,
    hatch: hatchOf(material),
    thicknessIndex: Math.min(6, Math.max(1, Math.round(Math.sqrt(sharePpm / 1000)))),
  });
  return [
    { name: book.rulebook.base.code, hatch: 'cream', thicknessIndex: 12 },
    { name: need(book.materials, book.rulebook.base.wettingOilParts[0]?.materialId ?? '').name[lang] ?? '', hatch: 'oil', thicknessIndex: 5 },
    ...need(book.shades, variant.shadeId).parts.map((part) => layer(need(book.materials, part.materialId), part.sharePpm)),
    ...variant.actives.map((chosen) => layer(need(book.materials, need(book.actives, chosen.activeId).materialId), chosen.levelPpm)),
  ];
}

export function hatchOf(material: Material): Hatch {
  if (material.kind === 'pigment') return 'mineral-colour';
  if (material.kind === 'oil') return 'oil';
  if (material.classes.includes('acid')) return 'acid';
  if (material.kind === 'insoluble-powder') return isWhite(material) ? 'base-clay' : 'tint-clay';
  if (material.origin === 'plant') return 'botanical';
  return material.classes.includes('preservative') ? 'preservative' : 'humectant';
}

const hexOf = ({ lX100, aX100, bX100 }: LabX100): string => swatchOf({ l: lX100 / 100, a: aX100 / 100, b: bX100 / 100 }).hex;

/** White clays carry the mask, coloured ones tint it: told apart by their INCI name, since a clay's own colour is not recorded. */
const isWhite = (material: Material): boolean => material.substances.some((held) => held.substanceId === 'kaolin');
