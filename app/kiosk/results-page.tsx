'use client';
import type { ReactNode } from 'react';
import { MaskCard, MaskCards, SharedRows } from '#app/_ui/cards/mask-card.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { moneyMinor } from '#lib/units/money.ts';
import styles from './kiosk.module.css';
import { KioskBar } from './kiosk-bar.tsx';
import type { KioskPageProps } from './kiosk-props.ts';
import { masksOf } from './kiosk-props.ts';
import { coreLabel, layersOf, maskTitle, rowsOfMasks } from './mask-words.ts';
import { PageHeading } from './page-heading.tsx';

const TITLE_ID = 'masks-title';

/** One to three masks, the same rows in the same order on each, so that people compare line by line. No score, no favourite. */
export function ResultsPage({ show, visit, dispatch, text, onMore }: KioskPageProps): ReactNode {
  const { t, money } = text;
  const masks = masksOf(visit);
  const pickedCount = masks.filter((mask) => mask.role !== 'own-choice').length;
  const { shared, own } = rowsOfMasks(masks, text);
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('results-place')}
      titleSize="results"
      flow="list"
      shown={
        <>
          <PageHeading id={TITLE_ID} text={text} isMistaken={visit.mistake !== null}>
            {t('results-title', { count: pickedCount })}
          </PageHeading>
          <span className="type-second">{t(noteKey(visit.found, masks.length))}</span>
        </>
      }
      bar={
        <KioskBar text={text} onMore={onMore}>
          <Button kind="primary" iconEnd="arrow-end" data-main="" onClick={() => dispatch({ kind: 'continue' })}>
            {t('continue')}
          </Button>
        </KioskBar>
      }
    >
      <div role="alert" className={styles.mistake}>
        {visit.mistake !== null && <Notice tone="care" title={t('mistake-choose-mask')} />}
      </div>
      {shared.length > 0 && <SharedRows title={t('results-shared')} rows={shared} />}
      <div role="radiogroup" aria-labelledby={TITLE_ID}>
        <MaskCards>
          {masks.map((mask, index) => {
            const title = maskTitle(mask, masks, text);
            const layers = layersOf(mask, text);
            return (
              <MaskCard
                key={mask.token}
                group="mask"
                value={mask.token}
                title={title}
                price={money(moneyMinor(mask.priceMinor), show.currency)}
                why={t(`why-${mask.role}`, { colour: mask.colour.name })}
                rows={own[index] ?? []}
                layers={layers}
                coreLabel={coreLabel(title, layers, text)}
                swatch={{ wet: [mask.colour.wetHex], dry: [mask.colour.dryHex], wetWord: t('wet'), dryWord: t('dry') }}
                chosen={visit.chosenToken === mask.token}
                onChoose={() => dispatch({ kind: 'choose-mask', token: mask.token })}
              />
            );
          })}
        </MaskCards>
      </div>
      <Button size="small" wide onClick={() => dispatch({ kind: 'see-why-not' })}>
        {t('why-not')}
      </Button>
    </KioskFrame>
  );
}

function noteKey(found: KioskPageProps['visit']['found'], count: number): 'results-no-active' | 'results-note' | 'results-note-one' {
  if (found?.kind === 'masks' && found.noActiveFits) return 'results-no-active';
  return count === 1 ? 'results-note-one' : 'results-note';
}
