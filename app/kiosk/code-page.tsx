'use client';
import type { ReactNode } from 'react';
import { CodePanel } from '#app/_ui/cards/code-panel.tsx';
import { Bar } from '#app/_ui/controls/bar.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { RuledList } from '#app/_ui/controls/section-head.tsx';
import { JarDrawing } from '#app/_ui/drawing/jar-drawing.tsx';
import { Spine } from '#app/_ui/drawing/spine.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { massUg } from '#lib/units/mass.ts';
import { moneyMinor } from '#lib/units/money.ts';
import styles from './kiosk.module.css';
import type { KioskPageProps, Receipt } from './kiosk-props.ts';
import { layersOf } from './mask-words.ts';
import { PageHeading } from './page-heading.tsx';

/** The code to show at the counter. The answers are gone by now; the page clears itself when nobody is there. */
export function CodePage({ show, visit, text, onWipe, hasMoreTime, onMoreTime }: KioskPageProps): ReactNode {
  const { t, money, target } = text;
  const { receipt } = visit;
  if (!receipt) return null;
  const line = {
    name: receipt.title,
    net: target(massUg(show.jarSizes[0]?.netUg ?? 0)),
    price: money(moneyMinor(receipt.priceMinor), show.currency),
  };
  const total = show.questions.length;
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('code-place')}
      titleSize="outcome"
      flow="follow"
      spine={<Spine total={total} answered={total} asking={false} />}
      shown={
        <>
          <PageHeading text={text}>{t('code-title')}</PageHeading>
          <span className="type-second">{t('code-note')}</span>
        </>
      }
      bar={
        <Bar>
          <Button aria-pressed={hasMoreTime} onClick={onMoreTime}>
            {t(hasMoreTime ? 'more-time-on' : 'more-time')}
          </Button>
          <Button kind="primary" data-main="" onClick={onWipe}>
            {t('done')}
          </Button>
        </Bar>
      }
    >
      <CodePanel
        word={t('code-word')}
        code={receipt.code}
        note={t('code-line', line)}
        symbol={<CodeSymbol receipt={receipt} title={t('code-symbol')} />}
      />
      <div className={styles.next}>
        <div className={styles.jar}>
          <JarDrawing layers={layersOf(receipt.picture, text)} width={360} height={400} />
        </div>
        <RuledList
          top
          rows={(['pay', 'mix', 'collect'] as const).map((step, index) => ({
            id: step,
            sign: <b className="type-heading">{index + 1}</b>,
            title: t(`code-${step}`),
            note: t(`code-${step}-note`, { count: receipt.aheadCount }),
          }))}
        />
      </div>
      <Notice tone="ok" title={t('code-wiped')}>
        {t('code-wiped-note')}
      </Notice>
    </KioskFrame>
  );
}

/** The quiet zone is four modules wide (ISO/IEC 18004, 5.3.8): two here, and more than two by the white of the panel around. */
const QUIET = 2;

function CodeSymbol({ receipt, title }: { readonly receipt: Receipt; readonly title: string }): ReactNode {
  const side = receipt.symbol.sideCount + 2 * QUIET;
  return (
    <svg viewBox={`${-QUIET} ${-QUIET} ${side} ${side}`} shapeRendering="crispEdges" role="img">
      <title>{title}</title>
      <rect x={-QUIET} y={-QUIET} width={side} height={side} fill="#FFFFFF" />
      <path d={receipt.symbol.path} fill="#000000" />
    </svg>
  );
}
