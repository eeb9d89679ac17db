'use client';
import type { ReactNode } from 'react';
import { CodePanel } from '#app/_ui/cards/code-panel.tsx';
import { Bar } from '#app/_ui/controls/bar.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { RuledList, SectionHead } from '#app/_ui/controls/section-head.tsx';
import { JarDrawing } from '#app/_ui/drawing/jar-drawing.tsx';
import { Spine } from '#app/_ui/drawing/spine.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { Icon } from '#app/_ui/marks/icon.tsx';
import { massUg } from '#lib/units/mass.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { cautionIcon, cautionWords } from './caution-words.ts';
import styles from './kiosk.module.css';
import type { KioskPageProps, Receipt } from './kiosk-props.ts';
import type { KioskText } from './kiosk-text.ts';
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
  const hasOwn = receipt.notOnJar.length > 0;
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('code-place')}
      titleSize="outcome"
      flow={hasOwn ? 'list' : 'follow'}
      spine={<Spine total={total} answered={total} asking={false} />}
      shown={
        <>
          <PageHeading text={text}>{t('code-title')}</PageHeading>
          <span className="type-second">{t('code-note')}</span>
        </>
      }
      bar={
        <Bar>
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
          <JarDrawing layers={layersOf(receipt.picture, text)} {...(hasOwn ? { width: 270, height: 300 } : { width: 360, height: 400 })} />
        </div>
        <RuledList
          top
          rows={(['pay', 'mix', 'collect'] as const).map((step, index) => ({
            id: step,
            sign: <b className="type-heading">{index + 1}</b>,
            title: t(`code-${step}`),
            note: t(`code-${step}-note`, { count: receipt.aheadCount, hasOwn: hasOwn ? 'yes' : 'no' }),
          }))}
        />
      </div>
      {hasOwn && <NotOnJar cautions={receipt.notOnJar} lang={show.lang} text={text} />}
      <Notice tone="ok" title={t('code-wiped')}>
        {t('code-wiped-note')}
      </Notice>
      <Button size="small" wide aria-pressed={hasMoreTime} onClick={onMoreTime}>
        {t(hasMoreTime ? 'more-time-on' : 'more-time')}
      </Button>
    </KioskFrame>
  );
}

interface NotOnJarProps {
  readonly cautions: Receipt['notOnJar'];
  readonly lang: string;
  readonly text: KioskText;
}

/** A label tells everybody the same: what follows from an answer is said here once more, in full, and kept nowhere. */
const NotOnJar = ({ cautions, lang, text: { t } }: NotOnJarProps): ReactNode => (
  <section className={styles.stack}>
    <SectionHead title={t('code-own')} />
    <RuledList
      rows={cautions.map(({ id, text }) => {
        const { title, rest } = cautionWords(text, lang);
        return { id, sign: <Icon name={cautionIcon(id)} size="1.25em" />, title, note: rest };
      })}
    />
  </section>
);

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
