// The picture of a mask for its customer: layers with a hatch and a coarse thickness. A picture, not a recipe: no share can be read off it.
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Lang } from '../rulebook/language.ts';
import type { Material } from '../rulebook/material.ts';
import type { Variant } from '../rulebook/variant.ts';

export const LAYER_HATCHES = [
  'base-clay',
  'tint-clay',
  'mineral-colour',
  'oil',
  'humectant',
  'acid',
  'botanical',
  'preservative',
  'cream',
] as const;
export type LayerHatch = (typeof LAYER_HATCHES)[number];

export interface DrawnLayer {
  readonly hatch: LayerHatch;
  /** The cream and its oil have no name of their own. */
  readonly name: string | null;
  /** 1 to 6, in steps of the square root of the share; the cream is drawn cut short and has 12. */
  readonly thicknessIndex: number;
}

const CREAM: DrawnLayer = { hatch: 'cream', name: null, thicknessIndex: 12 };
const OIL: DrawnLayer = { hatch: 'oil', name: null, thicknessIndex: 5 };
const THICKEST = 6;
/** 0.1 % of the jar is one step, 0.4 % two, 0.9 % three. */
const STEP_PPM = 1000;

/** Cream, oil, powders, actives, top down. The adjuster is never shown. */
export function drawnLayers(book: Book, lang: Lang, variant: Variant): readonly DrawnLayer[] {
  const powders = need(book.shades, variant.shadeId).parts.map((part) => ({ ...part, material: need(book.materials, part.materialId) }));
  const carrier = powders
    .filter(({ material }) => material.kind === 'insoluble-powder')
    .reduce<(typeof powders)[number] | null>((most, one) => (most === null || one.sharePpm > most.sharePpm ? one : most), null);
  const layer = ({ name, code }: Pick<Material, 'name' | 'code'>, hatch: LayerHatch, shownPpm: number): DrawnLayer => ({
    hatch,
    name: name[lang] ?? name.en ?? code,
    thicknessIndex: Math.min(THICKEST, Math.max(1, Math.round(Math.sqrt(shownPpm / STEP_PPM)))),
  });
  return [
    CREAM,
    OIL,
    ...powders.map((part) => layer(part.material, powderHatch(part.material, part === carrier), part.sharePpm)),
    ...variant.actives.map(({ activeId, levelPpm }) => {
      // The active has a name of its own: that of the material as bought may tell its strength.
      const active = need(book.actives, activeId);
      return layer(active, activeHatch(need(book.materials, active.materialId)), levelPpm);
    }),
  ];
}

/** The powder that there is most of carries the mask; the others tint it. */
function powderHatch(material: Material, isCarrier: boolean): LayerHatch {
  if (material.kind === 'pigment') return 'mineral-colour';
  return isCarrier ? 'base-clay' : 'tint-clay';
}

function activeHatch(material: Material): LayerHatch {
  if (material.classes.includes('acid')) return 'acid';
  if (material.kind === 'oil') return 'oil';
  return material.origin === 'plant' || material.classes.includes('botanical') ? 'botanical' : 'humectant';
}
