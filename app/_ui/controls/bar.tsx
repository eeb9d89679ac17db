// The kiosk's bar: Back, the one blue action, More. Always at the bottom, in reach of everybody.
import type { ReactNode } from 'react';
import styles from './bar.module.css';

/** Buttons in reading order; the one with `data-main` takes the width that is left. */
export const Bar = ({ children }: { readonly children: ReactNode }): ReactNode => <div className={styles.bar}>{children}</div>;
