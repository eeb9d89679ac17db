// A caution that needs its own tick: said whole, then agreed to. Calm frame, no sign of alarm.
import type { ReactNode } from 'react';
import { ChoiceRow } from '../controls/choice-row.tsx';
import type { IconName } from '../marks/icon.tsx';
import { Icon } from '../marks/icon.tsx';
import styles from './caution-card.module.css';

export interface CautionCardProps {
  readonly icon: IconName;
  readonly title: ReactNode;
  readonly children: ReactNode;
  readonly tick: {
    readonly name: string;
    readonly label: ReactNode;
    readonly checked?: boolean;
    readonly onChange?: (checked: boolean) => void;
  };
}

export function CautionCard({ icon, title, children, tick }: CautionCardProps): ReactNode {
  const { name, label, checked, onChange } = tick;
  return (
    <section className={styles.card}>
      <h2 className={styles.title}>
        <span className={styles.icon}>
          <Icon name={icon} size="1.25em" />
        </span>
        <span className={styles.words}>{title}</span>
      </h2>
      <div className={styles.text}>{children}</div>
      <ChoiceRow
        type="checkbox"
        name={name}
        label={label}
        checked={checked}
        onChange={onChange && ((event) => onChange(event.target.checked))}
      />
    </section>
  );
}
