// Predicted colour, wet over dry, hard edge, on a mid grey that flatters neither. No gloss, no gradient.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import { markOn } from './lightness.ts';
import styles from './swatch.module.css';

/** One colour, or lighter, predicted and darker where the prediction is coarse. */
export type SwatchColours = readonly [string] | readonly [string, string, string];

export interface SwatchProps {
  readonly wet: SwatchColours;
  readonly dry: SwatchColours;
  readonly wetWord: string;
  readonly dryWord: string;
  readonly size?: 'card' | 'large' | 'list';
}

export function Swatch({ wet, dry, wetWord, dryWord, size = 'card' }: SwatchProps): ReactNode {
  return (
    <span className={classNames(styles.panel, styles[size])}>
      <span className={styles.frame}>
        <Half colours={wet} word={wetWord} />
        <Half colours={dry} word={dryWord} />
      </span>
    </span>
  );
}

function Half({ colours, word }: { readonly colours: SwatchColours; readonly word: string }): ReactNode {
  const share = 100 / colours.length;
  return (
    <span className={styles.half}>
      <svg width="100%" height="100%" className={styles.colour} aria-hidden="true">
        {colours.map((colour, index) => (
          // Neighbouring steps overlap by a hair so that no seam shows.
          <rect key={colour} x={`${share * index}%`} width={`${share + 0.5}%`} height="100%" fill={colour} />
        ))}
      </svg>
      <span className={classNames(styles.word, markOn(colours[0]) === '#FFFFFF' && styles.light)}>{word}</span>
    </span>
  );
}
