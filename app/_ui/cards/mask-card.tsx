// One mask that fits: core, colour, name, then the same rows in the same order on every card. The whole card chooses it.
import type { ReactNode } from 'react';
import { useId } from 'react';
import { ChoiceBox } from '../controls/choice-row.tsx';
import type { CoreLayer } from '../drawing/core-column.tsx';
import { CoreColumn } from '../drawing/core-column.tsx';
import type { DrawingLabel } from '../drawing/picture.tsx';
import type { SwatchProps } from '../drawing/swatch.tsx';
import { Swatch } from '../drawing/swatch.tsx';
import styles from './mask-card.module.css';

export interface MaskCardProps {
  /** Name of the radio group, and the value of this mask in it. */
  readonly group: string;
  readonly value: string;
  readonly title: string;
  readonly price: string;
  /** Why it is here, in one line: "The mildest of the three. Dusty pink." */
  readonly why: ReactNode;
  /** Of Chosen for, Good, Less good and Care those in which the masks differ. */
  readonly rows: readonly { readonly head: string; readonly text: ReactNode }[];
  readonly layers: readonly CoreLayer[];
  readonly coreLabel?: DrawingLabel;
  readonly swatch: Pick<SwatchProps, 'wet' | 'dry' | 'wetWord' | 'dryWord'>;
  readonly chosen?: boolean;
  readonly onChoose?: () => void;
  /** A button under the rows, such as "More about it". */
  readonly more?: ReactNode;
}

/** What holds for all of the cards, with the same heads. */
export const SharedRows = ({ title, rows }: { readonly title: string; readonly rows: MaskCardProps['rows'] }): ReactNode => (
  <section className={styles.shared}>
    <h2 className="type-label">{title}</h2>
    <Rows rows={rows} />
  </section>
);

const Rows = ({ rows }: Pick<MaskCardProps, 'rows'>): ReactNode => (
  <dl className={styles.rows}>
    {rows.map((row) => (
      <div key={row.head} className={styles.row}>
        <dt className="type-label">{row.head}</dt>
        <dd className={styles.detail}>{row.text}</dd>
      </div>
    ))}
  </dl>
);

/** Cards one above the other, or side by side where the page is wide and low. */
export const MaskCards = ({ children }: { readonly children: ReactNode }): ReactNode => <div className={styles.cards}>{children}</div>;

export function MaskCard(props: MaskCardProps): ReactNode {
  const { group, value, title, price, why, rows, layers, coreLabel, swatch, chosen, onChoose, more } = props;
  const id = `mask-${useId()}`;
  return (
    <article className={styles.card} aria-labelledby={`${id}-title`}>
      <div className={styles.look}>
        <CoreColumn layers={layers} width={108} frame="none" {...(coreLabel ? { label: coreLabel } : {})} />
        <div className={styles.swatch}>
          <Swatch {...swatch} />
        </div>
      </div>
      <div className={styles.text}>
        <h2 className={styles.head}>
          <label className={styles.label} htmlFor={`${id}-choose`}>
            <ChoiceBox
              type="radio"
              id={`${id}-choose`}
              name={group}
              value={value}
              checked={chosen}
              onChange={onChoose && (() => onChoose())}
              aria-describedby={`${id}-why`}
            />
            <span id={`${id}-title`} className="type-heading">
              {title}
            </span>
          </label>
          <span className={styles.price}>{price}</span>
        </h2>
        <div className={styles.body}>
          <p id={`${id}-why`} className={styles.why}>
            {why}
          </p>
          <Rows rows={rows} />
          {more && <div className={styles.more}>{more}</div>}
        </div>
      </div>
    </article>
  );
}
