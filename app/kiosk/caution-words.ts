// How a caution stands on the page: its first sentence is its title. The text itself is the formulator's and is never shortened.
import type { IconName } from '#app/_ui/marks/icon.tsx';

export interface CautionWords {
  readonly title: string;
  readonly rest: string;
}

/** "Keep it out of your eyes. If some gets in, …" → title without its point, and the rest. */
export function cautionWords(text: string, lang: string): CautionWords {
  const [first = '', ...others] = Array.from(new Intl.Segmenter(lang, { granularity: 'sentence' }).segment(text), ({ segment }) => segment);
  return { title: first.trim().replace(/[.。]$/, ''), rest: others.join('').trim() };
}

/** Common ids have a sign of their own; any other caution has the sign for "to know". */
const SIGNS: Readonly<Record<string, IconName>> = {
  eyes: 'eye',
  'broken-skin': 'broken-skin',
  time: 'clock',
  children: 'no-children',
  'try-first': 'dab',
  sting: 'hand',
  sun: 'sun',
  towels: 'drop',
};

export const cautionIcon = (id: string): IconName => SIGNS[id] ?? 'info';
