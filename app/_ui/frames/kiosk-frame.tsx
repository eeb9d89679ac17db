// The kiosk's page: spine, top line, what is shown, what can be touched, bar. Nothing above the reach line can be touched.
import type { FormEvent, ReactNode } from 'react';
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
  /** The page asks one thing: what is shown becomes the legend of what can be touched, in a form that the bar's button may send. */
  readonly form?: KioskForm;
}

export interface KioskForm {
  readonly id: string;
  /** The heading that names the group, and the line that says why it is asked. */
  readonly labelledBy: string;
  readonly describedBy?: string;
  readonly onSubmit: (event: FormEvent) => void;
}

export function KioskFrame(props: KioskFrameProps): ReactNode {
  const { spine, picture, children, bar, flow = 'low', titleSize = 'question', form } = props;
  const touched = children && <div className={classNames(styles.touched, styles[flow])}>{children}</div>;
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
          {form ? (
            <form id={form.id} noValidate className={styles.bare} onSubmit={form.onSubmit}>
              <fieldset aria-labelledby={form.labelledBy} aria-describedby={form.describedBy} className={styles.bare}>
                <legend className={styles.upper}>
                  <Upper {...props} />
                </legend>
                {touched}
              </fieldset>
            </form>
          ) : (
            <>
              <div className={styles.upper}>
                <Upper {...props} />
              </div>
              {picture && <div className={styles.picture}>{picture}</div>}
              {picture && <div className={styles.shown}>{props.shown}</div>}
              {touched}
            </>
          )}
        </main>
      </div>
      {bar}
    </div>
  );
}

/** Reach spacer, top line and what is shown. A legend may hold headings and phrases only, so these are all spans. */
function Upper({ brand, place, picture, shown, reachLinePx = 0 }: KioskFrameProps): ReactNode {
  return (
    <>
      <ReachSpacer heightPx={reachLinePx} />
      <span className={styles.shown}>
        <span className={styles.topLine}>
          <span className={styles.brand}>
            <BrandMark heightEm={1.3} />
            {brand}
          </span>
          <span className="type-small type-second">{place}</span>
        </span>
        {!picture && shown}
      </span>
    </>
  );
}

// Keeps the reading part at least as high as the reach line; a drawing without ink, since height comes from the installation.
const ReachSpacer = ({ heightPx }: { readonly heightPx: number }): ReactNode =>
  heightPx > 0 ? <svg width={1} height={heightPx} className={styles.reach} aria-hidden="true" /> : null;
