// The rows beside a core: name left, true share on the point, each row as high as its layer.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import { PointNumber } from '../figure/point-number.tsx';
import type { CoreLayer } from './core-column.tsx';
import { CoreColumn } from './core-column.tsx';
import { layerUnits } from './core-layout.ts';
import styles from './core-rows.module.css';
import type { DrawingLabel } from './picture.tsx';

// Two lines of text.
const ROW_PX = 50;

export function CoreRows(props: {
  readonly layers: readonly CoreLayer[];
  readonly width: number;
  readonly height: number;
  readonly label: DrawingLabel;
  /** Heads of the two columns, such as "Layers, not to scale" and "% of the jar". */
  readonly heads?: { readonly name: string; readonly share: string };
  readonly decimalSign?: '.' | ',';
}): ReactNode {
  const { layers, width, height, label, heads, decimalSign = '.' } = props;
  const units = layerUnits(layers, height, ROW_PX);
  return (
    <div className={styles.core}>
      {heads && (
        <p className={classNames(styles.heads, 'type-small', 'type-second')}>
          <span>{heads.name}</span>
          <span>{heads.share}</span>
        </p>
      )}
      <div className={styles.body}>
        <CoreColumn layers={layers} width={width} height={height} leastLayerPx={ROW_PX} label={label} />
        <ol className={styles.rows}>
          {layers.map((layer, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a layer is its place
            <li key={index} className={classNames(styles.row, styles[`u${units[index]}`])}>
              <span className={styles.name}>
                <span className="type-strong">{layer.name}</span>
                {layer.note && <span className="type-small type-second">{layer.note}</span>}
              </span>
              {layer.shareText && <PointNumber text={layer.shareText} decimalSign={decimalSign} wholeDigits={2} fractionDigits={2} />}
            </li>
          ))}
        </ol>
      </div>
    </div>
  );
}
