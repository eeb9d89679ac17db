// A recipe as a drill core: picture, data, progress mark and brand in one drawing.
import type { ReactNode } from 'react';
import { useId } from 'react';
import { classNames } from '../class-names.ts';
import styles from './core-column.module.css';
import { isCut, layerTops, layerUnits } from './core-layout.ts';
import type { Hatch } from './hatch.tsx';
import type { DrawingLabel } from './picture.tsx';
import { Picture } from './picture.tsx';
import { CutMark, Strata, StrataDefs } from './strata.tsx';

export interface CoreLayer {
  readonly name: string;
  readonly hatch: Hatch;
  readonly fill: string;
  readonly sharePpm: number;
  /** The true share in the reader's words, such as "1.5". */
  readonly shareText?: string;
  /** A second line under the name. */
  readonly note?: string;
}

export interface CoreColumnProps {
  readonly layers: readonly CoreLayer[];
  readonly width: number;
  /** Height in px; left out, the column fills the height of its parent. */
  readonly height?: number;
  /** Least height of a layer; rows beside the column need more than the usual 12 px. */
  readonly leastLayerPx?: number;
  readonly frame?: 'all' | 'none';
  /** What a screen reader hears; without it the column is decoration. */
  readonly label?: DrawingLabel;
}

const FLUID_HEIGHT_PX = 436;

export function CoreColumn({ layers, width, height, leastLayerPx, frame = 'all', label }: CoreColumnProps): ReactNode {
  const id = `core-${useId()}`;
  const units = layerUnits(layers, height ?? FLUID_HEIGHT_PX, leastLayerPx);
  const seam = width < 60 ? 1.75 : 2.5;
  const cut = layers.length > 1 ? layers.findIndex(isCut) : -1;
  return (
    <span
      className={classNames(
        styles.column,
        height === undefined && styles.fluid,
        frame === 'all' && (width < 60 ? styles.thin : styles.frame),
      )}
    >
      <Picture id={id} label={label} width={width} height={height ?? '100%'} className={styles.drawing}>
        <defs>
          <StrataDefs id={id} strata={layers} scale={Math.max(0.42, Math.min(width / 100, 1.25))} />
        </defs>
        <Strata id={id} strata={layers} tops={layerTops(units)} width={width} seam={seam} />
        {cut === 0 && width >= 60 && <CutMark width={width} seam={seam} />}
      </Picture>
    </span>
  );
}
