// From a mask as the server tells it to what its card draws and says.

import type { CoreLayer } from '#app/_ui/drawing/core-column.tsx';
import { earth } from '#app/_ui/drawing/earth.data.ts';
import type { DrawingLabel } from '#app/_ui/drawing/picture.tsx';
import type { KioskKey } from '#app/_ui/text/kiosk/en.ts';
import type { MaskView } from '#lib/contracts/kiosk-masks.ts';
import { midSentence } from '#lib/rulebook/language.ts';
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

const REPEATED = {
  closest: 'name-simpler',
  mildest: 'name-milder',
  'other-colour': 'name-simpler',
  'lower-price': 'name-simpler',
  'own-choice': 'name-own-choice',
} satisfies Record<MaskView['role'], KioskKey>;

/** The shade's name; a second mask of the same shade says how it differs. */
export function maskTitle(mask: MaskView, shown: readonly MaskView[], { t }: KioskText): string {
  const isRepeated = shown.findIndex((other) => other.shadeName === mask.shadeName) !== shown.indexOf(mask);
  if (!isRepeated) return mask.shadeName;
  return t(REPEATED[mask.role], { shade: mask.shadeName });
}

/** "With niacinamide and panthenol." */
export function madeWith({ activeNames }: Pick<MaskView, 'activeNames'>, { t, lang }: KioskText): string {
  if (activeNames.length === 0) return t('without-actives');
  const actives = new Intl.ListFormat(lang, { type: 'conjunction' }).format(activeNames.map(midSentence));
  return t('with-actives', { actives });
}

const ROWS = ['chosen-for', 'good', 'less-good', 'care'] as const;
type Row = (typeof ROWS)[number];
type Sentences = Readonly<Record<Row, readonly string[]>>;

/** A head of the cards with its text. */
export interface MaskRow {
  readonly head: string;
  readonly text: string;
}

/** How many short cautions a card holds; all of them stand on the page before the order. */
const SHORT_COUNT = 2;

function sentencesOf(mask: MaskView, text: KioskText): Sentences {
  const { t } = text;
  const { chosenFor, good, lessFor, lessGood, cautions } = mask;
  const bases = new Set(good.map(({ basis }) => basis));
  const [basis] = bases;
  const isOneBasis = bases.size === 1 && basis !== undefined;
  const concerns = lessFor.map((concern) => concern.toLowerCase()).join(', ');
  return {
    'chosen-for': [...(chosenFor.length > 0 ? chosenFor.map((concern) => `${concern}.`) : [t('chosen-for-colour')]), madeWith(mask, text)],
    good: isOneBasis ? [...good.map((one) => one.text), t(`basis-${basis}`)] : good.map((one) => `${one.text} ${t(`basis-${one.basis}`)}`),
    'less-good': [...(lessFor.length > 0 ? [t('less-for', { concerns })] : []), ...lessGood],
    care: cautions.map((caution) => caution.short),
  };
}

/** What holds for every mask is said once, above; each card says how its mask differs. The same rows in the same order on every card. */
export function rowsOfMasks(
  masks: readonly MaskView[],
  text: KioskText,
): { readonly shared: readonly MaskRow[]; readonly own: readonly (readonly MaskRow[])[] } {
  const { t } = text;
  const told = masks.map((mask) => sentencesOf(mask, text));
  const isShared = (row: Row, sentence: string): boolean => masks.length > 1 && told.every((one) => one[row].includes(sentence));
  const joined = (row: Row, sentences: readonly string[]): string =>
    (row === 'care' ? sentences.slice(0, SHORT_COUNT) : sentences).join(' ');
  const ownText = (one: Sentences, row: Row): string =>
    joined(
      row,
      one[row].filter((sentence) => !isShared(row, sentence)),
    );
  const sharedText = (row: Row): string =>
    joined(
      row,
      (told[0]?.[row] ?? []).filter((sentence) => isShared(row, sentence)),
    );
  const differing = ROWS.filter((row) => told.some((one) => ownText(one, row) !== ''));
  return {
    shared: ROWS.map((row) => ({ head: t(`row-${row}`), text: sharedText(row) })).filter((row) => row.text !== ''),
    own: told.map((one) => differing.map((row) => ({ head: t(`row-${row}`), text: ownText(one, row) || t('as-above') }))),
  };
}

export const coreLabel = (name: string, layers: readonly CoreLayer[], { t }: KioskText): DrawingLabel => ({
  title: t('core-title', { name }),
  description: t('core-description', { names: layers.map((layer) => layer.name).join(', ') }),
});
