'use client';
import type { ReactNode } from 'react';
import { CautionCard } from '#app/_ui/cards/caution-card.tsx';
import { Bar } from '#app/_ui/controls/bar.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import { ChoiceRow } from '#app/_ui/controls/choice-row.tsx';
import { RuledList } from '#app/_ui/controls/section-head.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { Icon } from '#app/_ui/marks/icon.tsx';
import { moneyMinor } from '#lib/units/money.ts';
import type { StepProps } from './kiosk-step.tsx';
import { PageHeading } from './kiosk-step.tsx';
import { kioskText } from './kiosk-text.ts';
import styles from './kiosk.module.css';

/** All cautions of the mask: those that need a tick of their own first, then the directions with one tick for all. Nothing is ticked by itself. */
export function CautionsPage({ show, state, dispatch, onBack, onMore, onOrder }: StepProps): ReactNode {
  const { t, money } = kioskText();
  const mask = state.masks.find((one) => one.token === state.chosenToken);
  if (!mask) return null;
  const own = mask.cautions.filter((caution) => caution.mustTick);
  const shared = mask.cautions.filter((caution) => !caution.mustTick);
  const isReady = own.every((caution) => state.ticked.includes(caution.id)) && state.hasReadDirections;
  const price = money(moneyMinor(mask.priceMinor), show.currency);
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('cautions-place')}
      flow="list"
      shown={
        <>
          <PageHeading>{t('cautions-title')}</PageHeading>
          <p className="type-second">{t('cautions-note')}</p>
        </>
      }
      bar={
        <Bar>
          <Button icon="arrow-start" onClick={onBack}>
            {t('back')}
          </Button>
          {isReady ? (
            <Button kind="primary" data-main="" onClick={onOrder} aria-busy={state.isBusy}>
              {state.isBusy ? t('ordering') : t('order', { price })}
            </Button>
          ) : (
            <Button notReady data-main="">
              {t('not-ticked')}
            </Button>
          )}
          <Button icon="menu" onClick={onMore}>
            {t('more')}
          </Button>
        </Bar>
      }
    >
      <div className={styles.list}>
        {own.map((caution) => (
          <CautionCard
            key={caution.id}
            icon="hand"
            title={caution.short}
            tick={{ name: caution.id, label: t('tick-caution'), checked: state.ticked.includes(caution.id), onChange: (isOn) => dispatch({ kind: 'tick', cautionId: caution.id, isOn }) }}
          >
            <p>{caution.text}</p>
          </CautionCard>
        ))}
        <RuledList plain rows={shared.map((caution) => ({ id: caution.id, sign: <Icon name="info" size="1.4em" />, title: caution.text }))} />
        <ChoiceRow
          type="checkbox"
          alone
          name="directions"
          label={t('tick-directions')}
          checked={state.hasReadDirections}
          onChange={(event) => dispatch({ kind: 'read-directions', isOn: event.target.checked })}
        />
      </div>
    </KioskFrame>
  );
}
