'use client';
import type { ReactNode } from 'react';
import { useEffect } from 'react';
import { CodePanel } from '#app/_ui/cards/code-panel.tsx';
import { Bar } from '#app/_ui/controls/bar.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import { JarDrawing } from '#app/_ui/drawing/jar-drawing.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { moneyMinor } from '#lib/units/money.ts';
import type { StepProps } from './kiosk-step.tsx';
import { PageHeading } from './kiosk-step.tsx';
import { kioskText } from './kiosk-text.ts';

const GONE_AFTER_MS = 60_000;

/** The code stands for a minute, then the page is wiped like any other. */
export function CodePage({ show, code, priceMinor }: StepProps & { readonly code: string; readonly priceMinor: number }): ReactNode {
  const { t, money } = kioskText();
  useEffect(() => {
    const timer = setTimeout(() => window.location.replace('/kiosk'), GONE_AFTER_MS);
    return () => clearTimeout(timer);
  }, []);
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('code-place')}
      titleSize="outcome"
      flow="follow"
      picture={<JarDrawing width={420} height={520} />}
      shown={
        <>
          <PageHeading>{t('code-title')}</PageHeading>
          <p className="type-second">{t('code-wipe')}</p>
        </>
      }
      bar={
        <Bar>
          <Button kind="primary" data-main="" onClick={() => window.location.replace('/kiosk')}>
            {t('done')}
          </Button>
        </Bar>
      }
    >
      <CodePanel word={t('code-word')} code={code} note={t('code-note', { price: money(moneyMinor(priceMinor), show.currency) })} />
    </KioskFrame>
  );
}
