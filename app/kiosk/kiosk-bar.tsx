'use client';
// The bar of every page of a visit: Back, the one blue action, More.
import type { ReactNode } from 'react';
import { Bar } from '#app/_ui/controls/bar.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import type { KioskText } from './kiosk-text.ts';
import { goBack } from './use-history.ts';

export interface KioskBarProps {
  readonly text: KioskText;
  readonly onMore: () => void;
  /** The blue action, with `data-main`. */
  readonly children: ReactNode;
  readonly canGoBack?: boolean;
}

export const KioskBar = ({ text: { t }, onMore, children, canGoBack = true }: KioskBarProps): ReactNode => (
  <Bar>
    {canGoBack && (
      <Button icon="arrow-start" onClick={goBack}>
        {t('back')}
      </Button>
    )}
    {children}
    <Button icon="menu" onClick={onMore}>
      {t('more')}
    </Button>
  </Bar>
);
