'use client';
// Pages for what the server has to say, or cannot say just now. Calm as every other page; the answers are kept.
import type { ReactNode } from 'react';
import { Bar } from '#app/_ui/controls/bar.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import { EmptyScene } from '#app/_ui/drawing/empty-scene.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { KioskBar } from './kiosk-bar.tsx';
import type { KioskPageProps, Wish } from './kiosk-props.ts';
import { PageHeading } from './page-heading.tsx';

/** While masks are looked for. Usually gone before it is read. */
export const WaitingPage = ({ show, text, onMore }: KioskPageProps): ReactNode => (
  <CalmPage show={show} text={text} title={text.t('waiting-title')} lines={[]}>
    <Bar>
      <Button icon="menu" onClick={onMore}>
        {text.t('more')}
      </Button>
    </Bar>
  </CalmPage>
);

/** An order that was sent stays sent: only waiting, or wiping everything, is offered then. */
export function OfflinePage({ show, text, onMore, onWipe, wish }: KioskPageProps & { readonly wish: Wish }): ReactNode {
  const { t } = text;
  return (
    <CalmPage
      show={show}
      text={text}
      title={t('offline-title')}
      lines={[t(wish === 'order' ? 'offline-order' : 'offline-text')]}
      second={t('offline-next')}
    >
      <KioskBar text={text} onMore={onMore} canGoBack={wish === 'masks'}>
        <Button data-main="" onClick={onWipe}>
          {t('wipe-now')}
        </Button>
      </KioskBar>
    </CalmPage>
  );
}

export function PulledPage({ show, text, onMore, onLookAgain }: KioskPageProps): ReactNode {
  const { t } = text;
  return (
    <CalmPage show={show} text={text} title={t('pulled-title')} lines={[t('pulled-text')]}>
      <KioskBar text={text} onMore={onMore} canGoBack={false}>
        <Button kind="primary" iconEnd="arrow-end" data-main="" onClick={onLookAgain}>
          {t('look-again')}
        </Button>
      </KioskBar>
    </CalmPage>
  );
}

export function ProblemPage({ show, text, onMore, onWipe, detail }: KioskPageProps & { readonly detail: string }): ReactNode {
  const { t } = text;
  return (
    <CalmPage show={show} text={text} title={t('problem-title')} lines={[t('problem-text', { detail })]} second={t('problem-next')}>
      <KioskBar text={text} onMore={onMore}>
        <Button kind="primary" data-main="" onClick={onWipe}>
          {t('done')}
        </Button>
      </KioskBar>
    </CalmPage>
  );
}

interface CalmPageProps extends Pick<KioskPageProps, 'show' | 'text'> {
  readonly title: string;
  readonly lines: readonly string[];
  readonly second?: string;
  /** The bar. */
  readonly children: ReactNode;
}

const CalmPage = ({ show, text, title, lines, second, children }: CalmPageProps): ReactNode => (
  <KioskFrame
    brand={show.shopName}
    place={text.t('outcome-place')}
    titleSize="outcome"
    flow="follow"
    shown={
      <>
        <EmptyScene />
        <PageHeading text={text}>{title}</PageHeading>
        {lines.map((line) => (
          <span key={line} role="status">
            {line}
          </span>
        ))}
        {second !== undefined && <span className="type-second">{second}</span>}
      </>
    }
    bar={children}
  />
);
