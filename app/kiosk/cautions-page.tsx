'use client';
import type { ReactNode } from 'react';
import { CautionCard } from '#app/_ui/cards/caution-card.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import { ChoiceRow } from '#app/_ui/controls/choice-row.tsx';
import { RuledList } from '#app/_ui/controls/section-head.tsx';
import { CoreColumn } from '#app/_ui/drawing/core-column.tsx';
import { Spine } from '#app/_ui/drawing/spine.tsx';
import { Swatch } from '#app/_ui/drawing/swatch.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { Icon } from '#app/_ui/marks/icon.tsx';
import { askedQuestions } from '#lib/answers/visit-answers.ts';
import type { MaskView } from '#lib/contracts/kiosk-masks.ts';
import { massUg } from '#lib/units/mass.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { cautionIcon, cautionWords } from './caution-words.ts';
import styles from './kiosk.module.css';
import { KioskBar } from './kiosk-bar.tsx';
import type { KioskPageProps } from './kiosk-props.ts';
import { masksOf } from './kiosk-props.ts';
import { layersOf, madeWith, maskTitle } from './mask-words.ts';
import { PageHeading } from './page-heading.tsx';

/** All cautions that are owed: those with a tick of their own first, the others under one tick. Nothing is ticked by itself. */
export function CautionsPage(props: KioskPageProps & { readonly isOrdering: boolean }): ReactNode {
  const { show, visit, dispatch, text, onMore } = props;
  const { t } = text;
  const mask = masksOf(visit).find((one) => one.token === visit.chosenToken);
  if (!mask) return null;
  const total = askedQuestions(visit).length;
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('cautions-place')}
      titleSize="results"
      flow="follow"
      spine={<Spine total={total} answered={total} asking={false} />}
      shown={<PageHeading text={text}>{t('cautions-title')}</PageHeading>}
      bar={
        <KioskBar text={text} onMore={onMore}>
          <OrderButton {...props} mask={mask} />
        </KioskBar>
      }
    >
      <MaskSummary {...props} mask={mask} />
      {mask.cautions
        .filter((caution) => caution.mustTick)
        .map((caution) => {
          const { title, rest } = cautionWords(caution.text, show.lang);
          return (
            <CautionCard
              key={caution.id}
              icon={cautionIcon(caution.id)}
              title={title}
              tick={{
                name: caution.id,
                label: t('tick-caution'),
                checked: visit.tickedIds.includes(caution.id),
                onChange: (isOn) => dispatch({ kind: 'tick', cautionId: caution.id, isOn }),
              }}
            >
              {rest}
            </CautionCard>
          );
        })}
      <RuledList
        top
        rows={mask.cautions
          .filter((caution) => !caution.mustTick)
          .map((caution) => {
            const { title, rest } = cautionWords(caution.text, show.lang);
            return { id: caution.id, sign: <Icon name={cautionIcon(caution.id)} size="1.25em" />, title, note: rest };
          })}
      />
      <ChoiceRow
        type="checkbox"
        alone
        name="all"
        label={t('tick-all')}
        checked={visit.hasReadAll}
        onChange={(event) => dispatch({ kind: 'read-all', isOn: event.target.checked })}
      />
    </KioskFrame>
  );
}

function OrderButton({
  show,
  visit,
  text,
  onOrder,
  isOrdering,
  mask,
}: KioskPageProps & { readonly isOrdering: boolean; readonly mask: MaskView }): ReactNode {
  const { t, money } = text;
  const isReady = visit.hasReadAll && mask.cautions.every((caution) => !caution.mustTick || visit.tickedIds.includes(caution.id));
  if (!isReady) {
    return (
      <Button notReady data-main="">
        {t('not-ticked')}
      </Button>
    );
  }
  return (
    <Button kind="primary" iconEnd="arrow-end" data-main="" aria-busy={isOrdering} onClick={isOrdering ? undefined : onOrder}>
      {isOrdering ? t('ordering') : t('order', { price: money(moneyMinor(mask.priceMinor), show.currency) })}
    </Button>
  );
}

/** The chosen mask once more, so that nobody orders the wrong one. */
function MaskSummary({ show, visit, text, mask }: KioskPageProps & { readonly mask: MaskView }): ReactNode {
  const { t, money, target } = text;
  return (
    <section className={styles.mask}>
      <div className={styles.maskCore}>
        <CoreColumn layers={layersOf(mask, text)} width={96} frame="none" />
      </div>
      <div className={styles.maskSwatch}>
        <Swatch wet={[mask.colour.wetHex]} dry={[mask.colour.dryHex]} wetWord={t('wet')} dryWord={t('dry')} />
      </div>
      <div className={styles.maskText}>
        <div>
          <h2 className="type-heading">{maskTitle(mask, masksOf(visit), text)}</h2>
          <p className="type-small type-second">{madeWith(mask, text)}</p>
          <p className="type-small type-second">
            {t('jar-line', { net: target(massUg(show.jarSizes[0]?.netUg ?? 0)), colour: mask.colour.name })}
          </p>
        </div>
        <p className="type-heading">{money(moneyMinor(mask.priceMinor), show.currency)}</p>
      </div>
    </section>
  );
}
