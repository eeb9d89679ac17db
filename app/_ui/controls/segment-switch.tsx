// Two or three views of one thing. As radios it switches in place; as links it keeps the view in the address.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import type { IconName } from '../marks/icon.tsx';
import { Icon } from '../marks/icon.tsx';
import styles from './segment-switch.module.css';

export interface Segment {
  readonly value: string;
  readonly label: string;
  readonly icon?: IconName;
}

export function SegmentSwitch(props: {
  readonly legend: string;
  readonly name: string;
  readonly segments: readonly Segment[];
  readonly chosen?: string;
  /** The one shown first where the page needs no script. */
  readonly firstChosen?: string;
  readonly onChoose?: (value: string) => void;
}): ReactNode {
  const { legend, name, segments, chosen, firstChosen, onChoose } = props;
  return (
    <fieldset className={styles.switch}>
      <legend className="for-readers">{legend}</legend>
      {segments.map((segment) => (
        <label key={segment.value} className={styles.part}>
          <input
            type="radio"
            name={name}
            value={segment.value}
            className="for-readers"
            checked={chosen === undefined ? undefined : chosen === segment.value}
            defaultChecked={chosen === undefined ? firstChosen === segment.value : undefined}
            onChange={onChoose && (() => onChoose(segment.value))}
          />
          {segment.icon && <Icon name={segment.icon} size="1.1em" />}
          {segment.label}
        </label>
      ))}
    </fieldset>
  );
}

export function SegmentLinks(props: {
  readonly label: string;
  readonly segments: readonly (Segment & { readonly href: string })[];
  readonly current: string;
}): ReactNode {
  return (
    <nav aria-label={props.label} className={styles.switch}>
      {props.segments.map((segment) => (
        <a
          key={segment.value}
          href={segment.href}
          aria-current={segment.value === props.current ? 'page' : undefined}
          className={classNames(styles.part, segment.value === props.current && styles.current)}
        >
          {segment.icon && <Icon name={segment.icon} size="1.1em" />}
          {segment.label}
        </a>
      ))}
    </nav>
  );
}
