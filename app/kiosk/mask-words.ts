// From a mask as the server tells it to what its card draws and says.
import type { CoreLayer } from '#app/_ui/drawing/core-column.tsx';
import { earth } from '#app/_ui/drawing/earth.data.ts';
import type { DrawingLabel } from '#app/_ui/drawing/picture.tsx';
import type { MaskView } from '#lib/contracts/kiosk-masks.ts';
import type { KioskText } from './kiosk-text.ts';

const FILLS = {
  cream: earth.cream,
  oil: earth.oil,
  'base-clay': earth.kaolin,
  'tint-clay': null,
  'mineral-colour': null,
  humectant: earth.humectant,
  acid: earth.acid,
  botanical: earth.vitamin,
  preservative: earth.preservative,
} satisfies Record<MaskView['layers'][number]['hatch'], string | null>;

/** A column draws the square root of what it is given, and cuts a cream of more than half: so a thickness goes in squared. */
const drawnPpm = (thicknessIndex: number): number => thicknessIndex ** 2 * 1000;
const CUT_CREAM_PPM = 900_000;

/** Layers top down; what tints the mask has the mask's own colours. */
export const layersOf = ({ layers, colour }: Pick<MaskView, 'layers' | 'colour'>, { t }: KioskText): readonly CoreLayer[] =>
  layers.map(({ hatch, name, thicknessIndex }) => ({
    name: name ?? t(hatch === 'oil' ? 'layer-oil' : 'layer-cream'),
    hatch,
    fill: FILLS[hatch] ?? (hatch === 'tint-clay' ? colour.dryHex : colour.wetHex),
    sharePpm: hatch === 'cream' ? CUT_CREAM_PPM : drawnPpm(thicknessIndex),
  }));

/** The shade's name; a second mask of the same shade says how it differs. */
export function maskTitle(mask: MaskView, shown: readonly MaskView[], { t }: KioskText): string {
  const isRepeated = shown.findIndex((other) => other.shadeName === mask.shadeName) !== shown.indexOf(mask);
  if (!isRepeated) return mask.shadeName;
  return t(mask.role === 'mildest' ? 'name-milder' : 'name-simpler', { shade: mask.shadeName });
}

/** "With niacinamide and panthenol." */
export function madeWith({ activeNames }: Pick<MaskView, 'activeNames'>, { t, lang }: KioskText): string {
  if (activeNames.length === 0) return t('without-actives');
  const actives = new Intl.ListFormat(lang, { type: 'conjunction' }).format(activeNames.map((name) => name.toLowerCase()));
  return t('with-actives', { actives });
}

export function chosenFor(mask: MaskView, text: KioskText): string {
  const made = madeWith(mask, text);
  if (mask.chosenFor.length === 0) return text.t('chosen-for-colour', { made });
  return text.t('chosen-for', { concerns: mask.chosenFor.join('. '), made });
}

/** How many short cautions a card holds; all of them stand on the page before the order. */
const SHORT_COUNT = 2;

export const careWords = ({ cautions }: Pick<MaskView, 'cautions'>): string =>
  cautions
    .slice(0, SHORT_COUNT)
    .map((caution) => caution.short)
    .join(' ');

export const coreLabel = (name: string, layers: readonly CoreLayer[], { t }: KioskText): DrawingLabel => ({
  title: t('core-title', { name }),
  description: t('core-description', { names: layers.map((layer) => layer.name).join(', ') }),
});
