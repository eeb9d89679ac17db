// The office: sections at the inline start, head with title and actions, content on one top line, an optional side panel. Breakpoints ask
// the page in the reader's own text size, so that large text folds the columns as a small window does.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import { SkipLink } from '../controls/skip-link.tsx';
import { BrandMark } from '../drawing/brand-mark.tsx';
import type { IconName } from '../marks/icon.tsx';
import { Icon } from '../marks/icon.tsx';
import styles from './office-frame.module.css';

export interface OfficeLink {
  readonly href: string;
  readonly label: string;
  readonly icon: IconName;
  readonly count?: string;
  readonly current?: boolean;
}

export interface OfficeGroup {
  readonly id: string;
  readonly heading?: string;
  readonly links: readonly OfficeLink[];
}

export interface OfficeFrameProps {
  readonly brand: string;
  readonly place: string;
  readonly skip: string;
  readonly navLabel: string;
  readonly groups: readonly OfficeGroup[];
  /** Edition in force, at the foot of the sections. */
  readonly foot?: ReactNode;
  readonly title: ReactNode;
  readonly actions?: ReactNode;
  /** Decision on top, effect under a rule, actions last. Below the content where the page is narrow: links to it end in #panel. */
  readonly panel?: { readonly label: string; readonly body: ReactNode };
  readonly children: ReactNode;
}

export function OfficeFrame(props: OfficeFrameProps): ReactNode {
  const { brand, place, skip, navLabel, groups, foot, title, actions, panel, children } = props;
  return (
    <div data-face="office" className={classNames(styles.page, 'type-body')}>
      <SkipLink>{skip}</SkipLink>
      <div className={styles.office}>
        <div className={styles.side} data-screen-only="">
          <p className={styles.brand}>
            <BrandMark heightEm={2} />
            <span className={styles.names}>
              <span className={styles.maker}>{brand}</span>
              <span className="type-small type-second">{place}</span>
            </span>
          </p>
          <nav aria-label={navLabel} className={styles.nav}>
            {groups.map((group) => (
              <div key={group.id}>
                {group.heading && <p className={styles.heading}>{group.heading}</p>}
                <ul>
                  {group.links.map((link) => (
                    <li key={link.href}>
                      <SideLink link={link} />
                    </li>
                  ))}
                </ul>
              </div>
            ))}
          </nav>
          {foot && <div className={styles.foot}>{foot}</div>}
        </div>
        <main id="main" className={styles.main} tabIndex={-1}>
          <div className={styles.head}>
            <h1 className="type-title">{title}</h1>
            {actions && <div className={styles.actions}>{actions}</div>}
          </div>
          {children}
        </main>
        {panel && (
          <aside id="panel" aria-label={panel.label} className={styles.panel} tabIndex={-1}>
            <div className={styles.held}>{panel.body}</div>
          </aside>
        )}
      </div>
    </div>
  );
}

const SideLink = ({ link }: { readonly link: OfficeLink }): ReactNode => (
  <a href={link.href} className={styles.link} aria-current={link.current ? 'page' : undefined}>
    <Icon name={link.icon} />
    <span className={styles.word}>{link.label}</span>
    {link.count && <span className={styles.count}>{link.count}</span>}
  </a>
);
