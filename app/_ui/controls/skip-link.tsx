// The first stop of the keyboard on every page of the staff.
import type { ReactNode } from 'react';
import styles from './skip-link.module.css';

export const SkipLink = ({ target = 'main', children }: { readonly target?: string; readonly children: ReactNode }): ReactNode => (
  <a href={`#${target}`} className={styles.link}>
    {children}
  </a>
);
