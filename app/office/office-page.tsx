// The frame around every office page: sections, the edition in force at their foot, and who is signed in.
import type { ReactNode } from 'react';
import type { RulebookView } from '#app/_flows/read-rulebook.ts';
import { ButtonLink } from '#app/_ui/controls/button.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import type { OfficeGroup } from '#app/_ui/frames/office-frame.tsx';
import { OfficeFrame } from '#app/_ui/frames/office-frame.tsx';
import type { IconName } from '#app/_ui/marks/icon.tsx';
import type { OfficeKey } from '#app/_ui/text/office/en.ts';
import styles from './office.module.css';
import { officeText } from './office-text.ts';
import { SignedIn } from './signed-in.tsx';

export type OfficePlace =
  | 'home'
  | 'materials'
  | 'offer'
  | 'pairs'
  | 'cautions'
  | 'publish'
  | 'editions'
  | 'review'
  | 'stops'
  | 'complaints'
  | 'people'
  | 'examples';

interface Section {
  readonly place: OfficePlace;
  readonly href: string;
  readonly word: OfficeKey;
  readonly icon: IconName;
}

const GROUPS: readonly { readonly id: string; readonly heading?: OfficeKey; readonly sections: readonly Section[] }[] = [
  { id: 'home', sections: [{ place: 'home', href: '/office', word: 'nav-home', icon: 'home' }] },
  {
    id: 'rulebook',
    heading: 'nav-rulebook',
    sections: [
      { place: 'materials', href: '/office/materials', word: 'nav-materials', icon: 'drop' },
      { place: 'offer', href: '/office/offer', word: 'nav-offer', icon: 'strata' },
      { place: 'pairs', href: '/office/pairs', word: 'nav-pairs', icon: 'grid' },
      { place: 'cautions', href: '/office/cautions', word: 'nav-cautions', icon: 'hand' },
      { place: 'publish', href: '/office/publish', word: 'nav-publish', icon: 'page' },
      { place: 'editions', href: '/office/editions', word: 'nav-editions', icon: 'book' },
    ],
  },
  {
    id: 'shop',
    heading: 'nav-shop',
    sections: [
      { place: 'review', href: '/office/review', word: 'nav-review', icon: 'chart' },
      { place: 'stops', href: '/office/stops', word: 'nav-stops', icon: 'hand' },
      { place: 'complaints', href: '/office/complaints', word: 'nav-complaints', icon: 'flag' },
      { place: 'people', href: '/office/people', word: 'nav-people', icon: 'people' },
      { place: 'examples', href: '/office/examples', word: 'nav-examples', icon: 'book' },
    ],
  },
];

export function OfficePage(props: {
  readonly view: Pick<RulebookView, 'shop' | 'inForce' | 'draft' | 'diff'>;
  readonly place: OfficePlace;
  readonly title: string;
  readonly actions?: ReactNode;
  /** `saved` of the page's address: the revision that the form before it made. */
  readonly saved?: string | string[] | undefined;
  readonly panel?: { readonly label: string; readonly body: ReactNode };
  readonly children: ReactNode;
}): ReactNode {
  const { view, place, title, actions, saved, panel, children } = props;
  const { t } = officeText();
  const groups: readonly OfficeGroup[] = GROUPS.map(({ id, heading, sections }) => ({
    id,
    ...(heading && { heading: t(heading) }),
    links: sections
      .filter(({ place: at }) => at !== 'examples' || view.shop.isDemo)
      .map(({ place: at, href, word, icon }) => ({ href, label: t(word), icon, current: at === place })),
  }));
  const foot = (
    <p>
      <span className="type-strong">{view.inForce ? t('foot-in-force', { no: view.inForce.head.editionNo }) : t('foot-none')}</span>
      <br />
      <span className="type-small type-second">{t('foot-draft', { count: view.diff.length })}</span>
    </p>
  );
  return (
    <OfficeFrame
      brand={view.shop.name}
      place={view.shop.notice === '' ? t('office') : view.shop.notice}
      skip={t('skip')}
      navLabel={t('nav')}
      groups={groups}
      foot={foot}
      title={title}
      actions={
        <>
          {actions}
          <SignedIn />
        </>
      }
      {...(panel && { panel })}
    >
      {view.draft && saved === String(view.draft.head.revisionNo) && <Saved no={view.draft.head.revisionNo} />}
      {children}
    </OfficeFrame>
  );
}

/** Stays until the next page: what was saved, and that nobody is offered it yet. */
function Saved({ no }: { readonly no: number }): ReactNode {
  const { t } = officeText();
  return (
    <div className={styles.saved}>
      <Notice
        tone="ok"
        role="status"
        title={t('saved', { no })}
        end={<ButtonLink href="/office/publish">{t('home-read-diff')}</ButtonLink>}
      >
        {t('saved-why')}
      </Notice>
    </div>
  );
}

/** What a page of the rulebook says while there is none. */
export function NoRulebook(): ReactNode {
  const { t } = officeText();
  return (
    <Notice tone="plain" title={t('no-rulebook')}>
      {t('no-rulebook-why')}
    </Notice>
  );
}
