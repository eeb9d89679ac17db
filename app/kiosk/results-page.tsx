'use client';
import type { ReactNode } from 'react';
import { useState } from 'react';
import { MaskCard, MaskCards } from '#app/_ui/cards/mask-card.tsx';
import { Bar } from '#app/_ui/controls/bar.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { Disclosure } from '#app/_ui/controls/disclosure.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { RuledList } from '#app/_ui/controls/section-head.tsx';
import type { CoreLayer } from '#app/_ui/drawing/core-column.tsx';
import { earth } from '#app/_ui/drawing/earth.data.ts';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { whyNot } from '#app/_client/kiosk.ts';
import { newRequestKey } from '#app/_client/request-key.ts';
import { answersOf } from '#lib/answers/visit.ts';
import type { MaskView, WhyNotOutput } from '#lib/contracts/kiosk.ts';
import { moneyMinor } from '#lib/units/money.ts';
import type { StepProps } from './kiosk-step.tsx';
import { PageHeading } from './kiosk-step.tsx';
import { kioskText } from './kiosk-text.ts';
import styles from './kiosk.module.css';
import { reasonKey } from './reason-text.ts';

const FILLS = {
  cream: earth.cream,
  oil: earth.oil,
  'base-clay': earth.kaolin,
  'tint-clay': earth.illite,
  acid: earth.acid,
  botanical: earth.botanical,
  preservative: earth.preservative,
  humectant: earth.vitamin,
} as const;

/** A picture, not a recipe: thickness comes in coarse steps. */
const layersOf = (mask: MaskView): readonly CoreLayer[] =>
  mask.layers.map((layer) => ({
    name: layer.name,
    hatch: layer.hatch,
    fill: layer.hatch === 'mineral-colour' ? mask.colour.wetHex : FILLS[layer.hatch],
    sharePpm: layer.thicknessIndex ** 2 * 1000,
  }));

export function ResultsPage(props: StepProps): ReactNode {
  const { show, state, dispatch, onBack, onMore } = props;
  const { t, money } = kioskText();
  const [isMissing, setMissing] = useState(false);
  const goOn = (): void => (state.chosenToken === null ? setMissing(true) : dispatch({ kind: 'go', step: { kind: 'cautions' } }));
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('results-place')}
      titleSize="results"
      flow="list"
      shown={
        <>
          <PageHeading>{t('results-title', { count: state.masks.length })}</PageHeading>
          <p className="type-second">{t(state.noActiveFits ? 'results-no-active' : 'results-note')}</p>
        </>
      }
      bar={
        <Bar>
          <Button icon="arrow-start" onClick={onBack}>
            {t('back')}
          </Button>
          <Button kind="primary" iconEnd="arrow-end" data-main="" onClick={goOn}>
            {t('continue')}
          </Button>
          <Button icon="menu" onClick={onMore}>
            {t('more')}
          </Button>
        </Bar>
      }
    >
      <div role="alert">{isMissing && state.chosenToken === null && <Notice tone="care" title={t('choose-mask')} />}</div>
      <MaskCards>
        {state.masks.map((mask) => (
          <MaskCard
            key={mask.token}
            group="mask"
            value={mask.token}
            title={mask.name}
            price={money(moneyMinor(mask.priceMinor), show.currency)}
            why={t(`why-${mask.role}`, { colour: mask.colour.name })}
            rows={[
              { head: t('row-chosen-for'), text: mask.chosenFor.length > 0 ? `${mask.chosenFor.join('. ')}.` : t('chosen-for-nothing') },
              { head: t('row-good'), text: t(`basis-${mask.good.basis}`, { text: mask.good.text }) },
              { head: t('row-less-good'), text: mask.lessGood },
              { head: t('row-care'), text: mask.cautions.slice(0, 2).map((caution) => caution.short).join(' ') },
            ]}
            layers={layersOf(mask)}
            coreLabel={{ title: t('core-title', { name: mask.name }), description: t('core-description', { names: mask.layers.map((layer) => layer.name).join(', ') }) }}
            swatch={{ wet: [mask.colour.wetHex], dry: [mask.colour.dryHex], wetWord: t('wet'), dryWord: t('dry') }}
            chosen={state.chosenToken === mask.token}
            onChoose={() => dispatch({ kind: 'pick', token: mask.token, requestKey: newRequestKey() })}
          />
        ))}
      </MaskCards>
      <WhyNot {...props} />
    </KioskFrame>
  );
}

type Rows = Extract<WhyNotOutput, { ok: true }>['rows'];

/** Asked for on demand, for the chosen mask or the first. */
function WhyNot({ show, state }: StepProps): ReactNode {
  const { t } = kioskText();
  const [rows, setRows] = useState<Rows | null>(null);
  const token = state.chosenToken ?? state.masks[0]?.token;
  const ask = async (): Promise<void> => {
    if (token === undefined) return;
    const answers = answersOf(show.questions, state.visit).map((answer) => ({ ...answer, optionIds: [...answer.optionIds] }));
    const reply = await whyNot({ editionHash: show.editionHash, token, answers });
    setRows(reply.kind === 'answer' && reply.body.ok ? reply.body.rows : []);
  };
  return (
    <>
      <Button wide onClick={() => void ask()}>
        {t('why-not')}
      </Button>
      <Dialog
        open={rows !== null}
        size="wide"
        title={t('why-not')}
        onClose={() => setRows(null)}
        actions={
          <Button kind="primary" wide onClick={() => setRows(null)}>
            {t('close')}
          </Button>
        }
      >
        <RuledList rows={(rows ?? []).map((row) => ({ id: `${row.part} ${row.name}`, title: row.name, note: row.fits ? t('why-not-fits') : <Reasons reasons={row.reasons} /> }))} />
      </Dialog>
    </>
  );
}

/** What an answer ruled out is said only to who asks for it: others may read along. */
function Reasons({ reasons }: { readonly reasons: Rows[number]['reasons'] }): ReactNode {
  const { t } = kioskText();
  const plain = [...new Set(reasons.filter((reason) => !reason.isPersonal).map((reason) => t(reasonKey(reason.code))))];
  const personal = reasons.filter((reason) => reason.isPersonal);
  return (
    <span className={styles.whyNot}>
      {plain.length > 0 && <span>{plain.join(' ')}</span>}
      {personal.length > 0 && (
        <>
          <span>{t('why-not-personal')}</span>
          <Disclosure summary={t('why-not-show')}>{t('why-personal')}</Disclosure>
        </>
      )}
    </span>
  );
}
