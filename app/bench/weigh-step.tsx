'use client';
// One weighing: the right lot first, then the weight, then the record. Whatever is missing stands on the button in words.
import type { ReactNode } from 'react';
import { useState } from 'react';
import { weigh } from '#app/_client/bench-acts.ts';
import { classNames } from '#app/_ui/class-names.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import type { WeighingState } from '#app/_ui/marks/weighing-mark.tsx';
import { formatRangeGrams, readingDigits, targetDigits } from '#app/_ui/text/format-grams.ts';
import { Gauge } from '#app/_ui/weighing/gauge.tsx';
import { nearUg } from '#app/_ui/weighing/gauge-scale.ts';
import { LotChip } from '#app/_ui/weighing/lot-chip.tsx';
import { StateLegend, StateLine } from '#app/_ui/weighing/state-line.tsx';
import { WeighingHead } from '#app/_ui/weighing/weighing-head.tsx';
import type { BenchDoing } from '#lib/contracts/bench-view.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { massUg } from '#lib/units/mass.ts';
import { bandStateOf } from '#lib/weighing/band.ts';
import styles from './bench.module.css';
import { benchText, shownName, spokenName } from './bench-text.ts';
import type { StepProps } from './desk-frame.tsx';
import { DeskFrame } from './desk-frame.tsx';
import { LotEntry } from './lot-entry.tsx';
import { Portions } from './portions.tsx';
import type { SignedReading } from './second-person.tsx';
import { SecondReading } from './second-person.tsx';
import { TypedWeight } from './typed-weight.tsx';

const LONG_NAME_LENGTH = 20;
/** From here on the digits are five, and stand a little smaller: still 60 minutes of arc at a metre. */
const TEN_GRAMS_UG = 10_000_000;

type Weighing = Extract<BenchDoing, { kind: 'weigh' }>;

/** In the band or over it, it was typed twice alike. */
type Typed = MassUg;

export function WeighStep(props: StepProps & { readonly doing: Weighing }): ReactNode {
  const { desk, doing } = props;
  const { t } = benchText();
  const [lotCode, setLotCode] = useState<string | null>(null);
  const [typed, setTyped] = useState<Typed | null>(null);
  const [isTyping, setTyping] = useState(false);
  const [isSecond, setSecond] = useState(false);
  const state = stateOf(doing, typed);

  const send = async (second: SignedReading | null): Promise<void> => {
    if (typed === null || lotCode === null) return;
    const { orderId } = desk.view;
    const entry = { orderId, lineNo: doing.lineNo, lotCode, massUg: typed, againUg: typed, isPoured: state === 'heavy' };
    const isDone = await desk.act((requestKey) => weigh({ requestKey, ...entry, second }));
    if (!isDone && second !== null) setSecond(false);
  };
  const record = (): void => (doing.needsSecondPerson ? setSecond(true) : void send(null));

  if (isSecond) {
    return (
      <DeskFrame {...props} bare actions={<Button onClick={() => setSecond(false)}>{t('go-back')}</Button>}>
        <SecondReading name={spokenName(doing.line)} scale={doing.scale} isBusy={desk.isBusy} onSign={(signed) => void send(signed)} />
      </DeskFrame>
    );
  }
  return (
    <DeskFrame
      {...props}
      actions={<Actions doing={doing} typed={typed} hasLot={lotCode !== null} onType={() => setTyping(true)} onRecord={record} />}
    >
      <div
        className={classNames(
          styles.weighing,
          spokenName(doing.line).length > LONG_NAME_LENGTH && styles.long,
          typed !== null && typed >= TEN_GRAMS_UG && styles.heavy,
        )}
      >
        <Head doing={doing} typed={typed} lotCode={lotCode} />
        {doing.portionsUg.length > 1 && <Portions portionsUg={doing.portionsUg} />}
        {lotCode === null ? (
          <LotEntry orderId={desk.view.orderId} expected={doing.lotCode} cautions={doing.cautions} onRight={setLotCode} />
        ) : (
          <Reading doing={doing} typed={typed} state={state} onType={() => setTyping(true)} />
        )}
      </div>
      {isTyping && (
        <TypedWeight
          label={spokenName(doing.line)}
          hint={`${t(doing.isTopUp ? 'top-up' : 'weigh')} ${benchText().target(massUg(doing.wantedUg))}`}
          scale={doing.scale}
          needsSecond={(first) => bandStateOf(doing, first) !== 'light'}
          onDone={(first) => {
            setTyped(first);
            setTyping(false);
          }}
          onClose={() => setTyping(false)}
        />
      )}
    </DeskFrame>
  );
}

/** Instead of a reading; after some was taken out, what the scale should come to. */
function silentWords({ isLeftOver, wantedUg, scale }: Weighing): string {
  const { t, reading } = benchText();
  return isLeftOver ? t('left-in-boat', { mass: reading(massUg(wantedUg), massUg(scale.stepUg)) }) : t('nothing-typed');
}

function stateOf(doing: Weighing, typed: Typed | null): WeighingState {
  if (typed === null) return 'no-reading';
  const state = bandStateOf(doing, typed);
  return state === 'in-band' ? 'stable' : state;
}

function Head({
  doing,
  typed,
  lotCode,
}: {
  readonly doing: Weighing;
  readonly typed: Typed | null;
  readonly lotCode: string | null;
}): ReactNode {
  const { t } = benchText();
  const stepUg = massUg(doing.scale.stepUg);
  const [name, spoken] = [shownName(doing.line), spokenName(doing.line)];
  return (
    <WeighingHead
      name={name}
      {...(name !== spoken && { spokenName: spoken })}
      end={lotCode !== null && <LotChip tone="ok" before={t('lot-before')} code={lotCode} after={t('lot-after')} />}
      weigh={{
        word: t(`${doing.isTopUp ? 'top-up' : 'weigh'}-${doing.container}`),
        target: targetDigits(massUg(doing.wantedUg), 'en'),
        unit: 'g',
        range: formatRangeGrams(massUg(doing.loUg), massUg(doing.hiUg), stepUg, 'en'),
      }}
      now={{
        word: t(typed === null ? 'on-scale' : 'on-scale-typed'),
        digits: typed === null ? silentWords(doing) : readingDigits(typed, stepUg, 'en'),
        unit: 'g',
        silent: typed === null,
      }}
    />
  );
}

function Reading(props: {
  readonly doing: Weighing;
  readonly typed: Typed | null;
  readonly state: WeighingState;
  readonly onType: () => void;
}): ReactNode {
  const { doing, typed, state, onType } = props;
  const { t, reading } = benchText();
  const stepUg = massUg(doing.scale.stepUg);
  const band = { targetUg: massUg(doing.wantedUg), loUg: massUg(doing.loUg), hiUg: massUg(doing.hiUg), stepUg };
  const words = stateWords(doing, typed, state);
  const digits = (mass: MassUg): string => readingDigits(mass, stepUg, 'en');
  return (
    <>
      <StateLine
        state={state}
        words={words}
        source={
          typed !== null &&
          state !== 'light' && (
            <Button size="small" kind="quiet" icon="undo" onClick={onType}>
              {t('type-again')}
            </Button>
          )
        }
      />
      <Gauge
        band={band}
        readingUg={typed}
        state={state}
        label={t('gauge-label', { state: words, lo: reading(band.loUg, stepUg), hi: reading(band.hiUg, stepUg) })}
        texts={{
          zero: '0',
          near: targetDigits(nearUg(band), 'en'),
          lo: digits(band.loUg),
          target: targetDigits(band.targetUg, 'en'),
          hi: digits(band.hiUg),
          inside: t('gauge-in'),
        }}
      />
      {hints(doing).length > 0 ? (
        <p className="type-small">{hints(doing).join('. ')}</p>
      ) : (
        <StateLegend
          state={state}
          words={{
            light: t('legend-light'),
            moving: t('legend-moving'),
            stable: t('legend-stable'),
            heavy: t('legend-heavy'),
            'no-reading': t('legend-no-reading'),
          }}
        />
      )}
    </>
  );
}

function stateWords(doing: Weighing, typed: Typed | null, state: WeighingState): string {
  const { t, target, reading } = benchText();
  if (typed === null) return t('state-none');
  if (state === 'light') return t('state-light', { mass: target(massUg(doing.wantedUg - typed)) });
  return state === 'heavy'
    ? t('state-heavy', { mass: reading(massUg(typed - doing.hiUg), massUg(doing.scale.stepUg)) })
    : t('state-stable');
}

/** What to know while pouring: of which lot. */
function hints(doing: Weighing): readonly string[] {
  const { t } = benchText();
  return [
    ...(doing.weighingsCount > 1 ? [t('of-lots', { no: doing.weighingNo, count: doing.weighingsCount })] : []),
    ...(doing.isSecondPaste ? [t('second-paste')] : []),
  ];
}

function Actions(props: {
  readonly doing: Weighing;
  readonly typed: Typed | null;
  readonly hasLot: boolean;
  readonly onType: () => void;
  readonly onRecord: () => void;
}): ReactNode {
  const { doing, typed, hasLot, onType, onRecord } = props;
  const { t, reading } = benchText();
  const state = stateOf(doing, typed);
  if (!hasLot) return <Button notReady>{t('not-yet-lot')}</Button>;
  if (typed === null || state === 'light')
    return (
      <Button kind="primary" onClick={onType}>
        {t(typed === null ? 'type-weight' : 'type-again')}
      </Button>
    );
  return (
    <Button kind="primary" iconEnd="arrow-end" onClick={onRecord}>
      {state === 'heavy'
        ? t('mend-it')
        : doing.needsSecondPerson
          ? t('ask-second')
          : t('record', { mass: reading(typed, massUg(doing.scale.stepUg)) })}
    </Button>
  );
}
