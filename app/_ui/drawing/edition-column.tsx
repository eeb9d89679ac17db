// Editions as a core: the oldest lies at the bottom, the draft on top, unfilled and dashed.
import type { ReactNode } from 'react';
import { useId } from 'react';
import { classNames } from '../class-names.ts';
import { earth } from './earth.data.ts';
import styles from './edition-column.module.css';
import { INK } from './lightness.ts';
import type { Stratum } from './strata.tsx';
import { Strata, StrataDefs } from './strata.tsx';

export interface EditionLayer {
  readonly id: string;
  readonly number: string;
  readonly title: ReactNode;
  readonly note?: ReactNode;
  readonly state: 'draft' | 'in-force' | 'past';
}

const WIDTH = 82;

const ground: readonly Stratum[] = [
  { hatch: 'tint-clay', fill: earth.illite },
  { hatch: 'humectant', fill: earth.ochre },
  { hatch: 'oil', fill: earth.rust },
  { hatch: 'botanical', fill: earth.rose },
  { hatch: 'tint-clay', fill: earth.slate },
  { hatch: 'base-clay', fill: earth.kaolin },
];

/** Newest first; each row stands beside its layer. */
export function EditionColumn({ editions }: { readonly editions: readonly EditionLayer[] }): ReactNode {
  return (
    <ol className={styles.column}>
      {editions.map((edition, index) => (
        <li key={edition.id} className={classNames(styles.row, styles[edition.state])}>
          <Layer draft={edition.state === 'draft'} above={above(editions, index)} stratum={stratumOf(editions, index)} />
          <span className={styles.words}>
            <span className={classNames(styles.number, 'type-heading')}>{edition.number}</span>
            <span className={styles.text}>
              <span className="type-strong">{edition.title}</span>
              {edition.note && <span className="type-small type-second">{edition.note}</span>}
            </span>
          </span>
        </li>
      ))}
    </ol>
  );
}

const stratumOf = (editions: readonly EditionLayer[], index: number): Stratum => {
  const published = editions.slice(0, index).filter(({ state }) => state !== 'draft').length;
  return ground[published % ground.length] ?? { hatch: 'cream', fill: earth.cream };
};

const blank: Stratum = { hatch: 'cream', fill: '#FFFFFF' };

const above = (editions: readonly EditionLayer[], index: number): Stratum =>
  index === 0 || editions[index - 1]?.state === 'draft' ? blank : stratumOf(editions, index - 1);

// The seam lies a little under the row's edge, so that its waves stay inside the row.
const SEAM_AT = 5;

function Layer(props: { readonly draft: boolean; readonly above: Stratum; readonly stratum: Stratum }): ReactNode {
  const id = `edition-${useId()}`;
  const strata = [props.above, props.stratum];
  return (
    <span className={styles.layer} aria-hidden="true">
      <svg width={props.draft ? WIDTH + 6 : WIDTH} height="100%" className={styles.fill} aria-hidden="true">
        {props.draft ? (
          <rect x={1.5} y={1.5} width={WIDTH + 3} height="110%" fill="none" stroke={INK} strokeWidth={3} strokeDasharray="7 5" />
        ) : (
          <svg y={SEAM_AT} height="100%" overflow="visible" aria-hidden="true">
            <defs>
              <StrataDefs id={id} strata={strata} scale={0.95} />
            </defs>
            <Strata id={id} strata={strata} tops={[0, 0]} width={WIDTH} seam={2.5} wobble={3} />
          </svg>
        )}
      </svg>
    </span>
  );
}
