// What a jar is called and looks like at the bench: its layers from the plan as it is weighed, with their true shares.
import { swatchOf } from '#lib/colour/lab.ts';
import { composePlan } from '#lib/composition/compose.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need } from '#lib/rulebook/book.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import { midSentence } from '#lib/rulebook/language.ts';
import type { Material } from '#lib/rulebook/material.ts';
import type { Plan, Variant } from '#lib/rulebook/variant.ts';
import type { SharePpm } from '#lib/units/share.ts';
import { partToPpm, sharePpm } from '#lib/units/share.ts';

export type LayerLook = 'cream' | 'oil' | 'base-clay' | 'tint-clay' | 'mineral-colour' | 'acid' | 'botanical' | 'humectant';

export interface PictureLayer {
  readonly name: string;
  readonly look: LayerLook;
  readonly sharePpm: SharePpm;
  /** The shade's own wet colour, where the layer gives it. */
  readonly fillHex: string | null;
}

/** "Fern Bank with niacinamide and panthenol". */
export function jarName(book: Book, { shadeId, actives }: Variant, lang: Lang): string {
  const shade = need(book.shades, shadeId);
  const name = shade.name[lang] ?? shade.code;
  const names = actives.map(({ activeId }) => need(book.actives, activeId)).map((active) => midSentence(active.name[lang] ?? active.code));
  return names.length === 0 ? name : `${name} with ${new Intl.ListFormat(lang, { type: 'conjunction' }).format(names)}`;
}

/** Cream, oil, then what was added, the largest first. */
export function jarPicture(book: Book, plan: Plan, lang: Lang): readonly PictureLayer[] {
  const jar = composePlan(book, plan);
  const { wet } = need(book.shades, plan.variant.shadeId).colour;
  const colour = swatchOf({ l: wet.lX100 / 100, a: wet.aX100 / 100, b: wet.bX100 / 100 }).hex;
  const added = [...jar.additionMaterials]
    .map(([materialId, held]) => ({ material: need(book.materials, materialId), ppm: partToPpm(held, jar.whole) }))
    .filter(({ ppm, material }) => ppm > 0 && !material.classes.includes('water'))
    .sort((a, b) => b.ppm - a.ppm);
  const [carrier] = added.filter(({ material }) => material.kind === 'insoluble-powder');
  return [
    { name: book.rulebook.base.code, look: 'cream', sharePpm: sharePpm(partToPpm(jar.cream, jar.whole)), fillHex: null },
    { name: book.rulebook.base.code, look: 'oil', sharePpm: sharePpm(partToPpm(jar.wettingOil, jar.whole)), fillHex: null },
    ...added.map(({ material, ppm }): PictureLayer => {
      const look = lookOf(material, material.id === carrier?.material.id);
      return {
        name: material.name[lang] ?? material.code,
        look,
        sharePpm: sharePpm(ppm),
        fillHex: look === 'mineral-colour' ? colour : null,
      };
    }),
  ];
}

/** The powder that there is most of carries the mask; the others tint it. */
export function lookOf(material: Material, isCarrier: boolean): LayerLook {
  if (material.kind === 'pigment') return 'mineral-colour';
  if (material.kind === 'insoluble-powder') return isCarrier ? 'base-clay' : 'tint-clay';
  if (material.kind === 'oil') return 'oil';
  if (material.classes.includes('acid')) return 'acid';
  return material.origin === 'plant' ? 'botanical' : 'humectant';
}
