'use client';
// The measured pH decides. Outside the window there are three ways: measure again, one approved correction by two people, or hold the jar.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { check, correctPh } from '#app/_client/bench-acts.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import type { BenchDoing } from '#lib/contracts/bench-view.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { massUg } from '#lib/units/mass.ts';
import styles from './bench.module.css';
import { benchText, phDigits, spokenName } from './bench-text.ts';
import type { StepProps } from './desk-frame.tsx';
import { DeskFrame, StepBody } from './desk-frame.tsx';
import { HoldDialog } from './hold-dialog.tsx';
import { hundredthsOf } from './read-decimal.ts';
import { SecondReading } from './second-person.tsx';
import { TypedWeight } from './typed-weight.tsx';

type PhDoing = Extract<BenchDoing, { kind: 'ph' }>;

export function PhStep(props: StepProps & { readonly doing: PhDoing }): ReactNode {
  const { desk, doing } = props;
  const { t } = benchText();
  const [text, setText] = useState('');
  const [mistake, setMistake] = useState<'ph-mistake' | 'ph-range' | null>(null);
  const [way, setWay] = useState<'measure' | 'hold' | 'correct'>('measure');
  const range = { min: phDigits(doing.minPhX100), max: phDigits(doing.maxPhX100) };
  const submit = async (event: FormEvent): Promise<void> => {
    event.preventDefault();
    const phX100 = hundredthsOf(text);
    setMistake(phX100 === null ? 'ph-mistake' : phX100 > 1400 ? 'ph-range' : null);
    if (phX100 === null || phX100 > 1400) return;
    if (await desk.act((requestKey) => check({ requestKey, orderId: desk.view.orderId, check: { kind: 'ph', phX100 } }))) setText('');
  };
  if (way === 'correct' && doing.correction)
    return <Correcting {...props} correction={doing.correction} onBack={() => setWay('measure')} />;
  return (
    <DeskFrame
      {...props}
      actions={
        <Button kind="primary" type="submit" form="ph-form">
          {t('ph-do')}
        </Button>
      }
    >
      <StepBody title={t('ph-title')} note={`${t('ph-note', range)} ${doing.method}.`}>
        <form id="ph-form" className={styles.narrow} onSubmit={(event) => void submit(event)} noValidate>
          <TextField
            id="ph"
            label={t('ph-field')}
            error={mistake === null ? undefined : t(mistake)}
            value={text}
            onChange={(event) => setText(event.target.value)}
            inputMode="decimal"
            autoComplete="off"
            align="end"
            dir="ltr"
          />
        </form>
        {doing.lastPhX100 !== null && (
          <Notice tone="care" role="alert" title={t('ph-out-title', { ph: phDigits(doing.lastPhX100), ...range })}>
            <p>
              {t('ph-out-note')}{' '}
              {doing.correction && t('ph-out-correct', { name: spokenName(doing.correction.line), most: mostOf(doing.correction) })}
            </p>
            <span className={styles.pair}>
              {doing.correction && (
                <Button size="small" onClick={() => setWay('correct')}>
                  {t('ph-correct')}
                </Button>
              )}
              <Button size="small" onClick={() => setWay('hold')}>
                {t('ph-hold')}
              </Button>
            </span>
          </Notice>
        )}
      </StepBody>
      {way === 'hold' && <HoldDialog desk={desk} onClose={() => setWay('measure')} />}
    </DeskFrame>
  );
}

/** The most that the scale can show without going over. */
function mostOf({ mostUg, scale }: NonNullable<PhDoing['correction']>): string {
  return benchText().reading(massUg(mostUg - (mostUg % scale.stepUg)), massUg(scale.stepUg));
}

/** Lot, weight twice, then the second person's own reading. */
function Correcting(
  props: StepProps & { readonly correction: NonNullable<PhDoing['correction']>; readonly onBack: () => void },
): ReactNode {
  const { desk, correction, onBack } = props;
  const { t } = benchText();
  const [lotCode, setLotCode] = useState('');
  const [typed, setTyped] = useState<MassUg | null>(null);
  const [isTyping, setTyping] = useState(false);
  const name = spokenName(correction.line);
  const back = <Button onClick={onBack}>{t('go-back')}</Button>;
  if (typed !== null)
    return (
      <DeskFrame {...props} bare actions={back}>
        <SecondReading
          name={name}
          scale={correction.scale}
          isBusy={desk.isBusy}
          onSign={(second) =>
            void desk
              .act((requestKey) => correctPh({ requestKey, orderId: desk.view.orderId, lotCode, massUg: typed, againUg: typed, second }))
              .then(onBack)
          }
        />
      </DeskFrame>
    );
  const isNamed = lotCode.trim() !== '';
  return (
    <DeskFrame
      {...props}
      bare
      actions={
        <>
          {back}
          <Button kind="primary" notReady={!isNamed} onClick={isNamed ? () => setTyping(true) : undefined}>
            {t(isNamed ? 'type-weight' : 'ph-correct-lot')}
          </Button>
        </>
      }
    >
      <StepBody title={name} note={t('ph-correct-note', { most: mostOf(correction) })}>
        <TextField
          id="correction-lot"
          label={t('lot-field')}
          hint={t('lot-note-any')}
          icon="scan"
          value={lotCode}
          onChange={(event) => setLotCode(event.target.value)}
          autoComplete="off"
          spellCheck={false}
          dir="ltr"
        />
      </StepBody>
      {isTyping && (
        <TypedWeight label={name} scale={correction.scale} onClose={() => setTyping(false)} onDone={(first) => setTyped(first)} />
      )}
    </DeskFrame>
  );
}
