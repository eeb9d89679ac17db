// The kiosk's page: spine, top line, what is shown, what can be touched, bar. Nothing above the reach line can be touched.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import { BrandMark } from '../drawing/brand-mark.tsx';
import styles from './kiosk-frame.module.css';

export interface KioskFrameProps {
  readonly brand: string;
  /** Where in the visit: "Question 7 of 12". */
  readonly place: ReactNode;
  readonly spine?: ReactNode;
  /** A picture that takes the height that is left, above the title. */
  readonly picture?: ReactNode;
  /** Title and what is only read. */
  readonly shown: ReactNode;
  /** Everything that can be touched but the bar. */
  readonly children?: ReactNode;
  readonly bar?: ReactNode;
  /** px from the top above which nothing may be touched; from the height at which the panel hangs. */
  readonly reachLinePx?: number;
  /** Choices hang low (a question), follow the text with the last one low (a page to read), or fill the page closely (a list). */
  readonly flow?: 'low' | 'follow' | 'list';
  readonly titleSize?: 'question' | 'results' | 'outcome';
}

export function KioskFrame(props: KioskFrameProps): ReactNode {
  const { brand, place, spine, picture, shown, children, bar, reachLinePx = 0, flow = 'low', titleSize = 'question' } = props;
  return (
    <div data-face="kiosk" className={classNames(styles.kiosk, 'type-body')}>
      <div className={styles.page}>
        {spine && <div className={styles.spine}>{spine}</div>}
        <main
          className={classNames(
            styles.main,
            spine !== undefined && styles.spined,
            flow === 'list' && styles.close,
            picture !== undefined && styles.pictured,
          )}
          data-title={titleSize}
        >
          <div className={styles.upper}>
            <ReachSpacer heightPx={reachLinePx} />
            <div className={styles.shown}>
              <div className={styles.topLine}>
                <span className={styles.brand}>
                  <BrandMark heightEm={1.3} />
                  {brand}
                </span>
                <span className="type-small type-second">{place}</span>
              </div>
              {!picture && shown}
            </div>
          </div>
          {picture && <div className={styles.picture}>{picture}</div>}
          {picture && <div className={styles.shown}>{shown}</div>}
          {children && <div className={classNames(styles.touched, styles[flow])}>{children}</div>}
        </main>
      </div>
      {bar}
    </div>
  );
}

// Keeps the reading part at least as high as the reach line; a drawing without ink, since height comes from the installation.
const ReachSpacer = ({ heightPx }: { readonly heightPx: number }): ReactNode =>
  heightPx > 0 ? <svg width={1} height={heightPx} className={styles.reach} aria-hidden="true" /> : null;
