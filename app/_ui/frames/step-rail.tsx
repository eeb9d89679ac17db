// The steps of one jar: names only. Weights stand nowhere in the rail, so a wrong one cannot be read off.
import type { ReactNode } from 'react';
import { useId } from 'react';
import { classNames } from '../class-names.ts';
import type { Hatch } from '../drawing/hatch.tsx';
import { HatchPattern } from '../drawing/hatch.tsx';
import { markOn } from '../drawing/lightness.ts';
import { Icon } from '../marks/icon.tsx';
import { BenchName } from '../weighing/bench-name.tsx';
import styles from './step-rail.module.css';

export interface RailStep {
  readonly id: string;
  readonly number: string;
  readonly name: string;
  readonly spokenName?: string;
  readonly state: 'done' | 'current' | 'to-come';
  /** What a step adds to the core; checks add nothing. */
  readonly layer?: { readonly hatch: Hatch; readonly fill: string };
}

export function StepRail(props: { readonly label: string; readonly doneWord: string; readonly steps: readonly RailStep[] }): ReactNode {
  return (
    <nav aria-label={props.label} className={styles.rail} data-screen-only="">
      <ol className={styles.steps}>
        {props.steps.map((step) => (
          <li
            key={step.id}
            className={classNames(styles.step, styles[step.state])}
            aria-current={step.state === 'current' ? 'step' : undefined}
          >
            <Layer step={step} />
            <span className={styles.number}>{step.number}</span>
            <span className={styles.name}>
              <BenchName name={step.name} spokenName={step.spokenName} />
            </span>
            <span className={styles.sign}>
              {step.state === 'done' && (
                <>
                  <Icon name="check" size="1em" />
                  <span className="for-readers">{props.doneWord}</span>
                </>
              )}
              {step.state === 'current' && (
                <svg className={styles.here} width="0.5em" height="0.75em" viewBox="0 0 10 14" aria-hidden="true" data-mirror="">
                  <path d="M0 0L10 7L0 14Z" fill="currentColor" />
                </svg>
              )}
            </span>
          </li>
        ))}
      </ol>
    </nav>
  );
}

function Layer({ step }: { readonly step: RailStep }): ReactNode {
  const id = `step-${useId()}`;
  const shown = step.state === 'current' ? ({ hatch: 'oil', fill: '#E5EDF8' } as const) : step.state === 'done' ? step.layer : undefined;
  return (
    <span className={styles.layer} aria-hidden="true">
      {shown && (
        <svg width="100%" height="100%" className={styles.fill} aria-hidden="true">
          <defs>
            <HatchPattern
              id={id}
              hatch={shown.hatch}
              ink={step.state === 'current' ? '#1D4E9E' : markOn(shown.fill)}
              strength={0.8}
              scale={0.85}
            />
          </defs>
          <rect width="100%" height="100%" fill={shown.fill} />
          <rect width="100%" height="100%" fill={`url(#${id})`} />
        </svg>
      )}
    </span>
  );
}
