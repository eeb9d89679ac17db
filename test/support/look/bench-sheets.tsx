// The mixer's pages.
import type { FunctionComponent, ReactNode } from 'react';
import { useState } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { GramsField } from '#app/_ui/controls/grams-field.tsx';
import { Keypad } from '#app/_ui/controls/keypad.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { RuledList, SectionHead } from '#app/_ui/controls/section-head.tsx';
import { CoreColumn } from '#app/_ui/drawing/core-column.tsx';
import { earth } from '#app/_ui/drawing/earth.data.ts';
import { BenchFrame } from '#app/_ui/frames/bench-frame.tsx';
import type { RailStep } from '#app/_ui/frames/step-rail.tsx';
import { StepRail } from '#app/_ui/frames/step-rail.tsx';
import { JudgementMark } from '#app/_ui/marks/judgement-mark.tsx';
import { StateWord } from '#app/_ui/marks/state-mark.tsx';
import type { WeighingState } from '#app/_ui/marks/weighing-mark.tsx';
import { WeighingMark } from '#app/_ui/marks/weighing-mark.tsx';
import { formatRangeGrams, readingDigits, targetDigits } from '#app/_ui/text/format-grams.ts';
import { Digits } from '#app/_ui/weighing/digits.tsx';
import { Gauge } from '#app/_ui/weighing/gauge.tsx';
import { nearUg } from '#app/_ui/weighing/gauge-scale.ts';
import { LotChip } from '#app/_ui/weighing/lot-chip.tsx';
import { StateLegend, StateLine } from '#app/_ui/weighing/state-line.tsx';
import { WeighingHead } from '#app/_ui/weighing/weighing-head.tsx';
import { gramsToUg } from '#lib/units/mass.ts';
import { fernBank, greenPremix, heatherMoor, rustSeam, slateLedge } from './sample-layers.data.ts';

const Queue = (): ReactNode => (
  <BenchFrame word="Bench" place="Counter North" skip="To the queue" end="mixer  10:42">
    <div className="look-queue">
      <section className="look-next-order">
        <CoreColumn layers={fernBank} width={120} frame="none" />
        <div className="look-next-text">
          <p className="type-label type-second">Next, waiting 4 minutes</p>
          <Digits look="code" text="K7-204" />
          <h1 className="type-title">Fern Bank</h1>
          <dl className="look-facts">
            <dt className="type-second">Jar</dt>
            <dd className="type-strong">50 g</dd>
            <dt className="type-second">Steps</dt>
            <dd className="type-strong">7 weighings, 4 checks</dd>
            <dt className="type-second">Lots</dt>
            <dd className="type-strong">All 7 ready and in date</dd>
            <dt className="type-second">Wear</dt>
            <dd className="type-strong">Mask and goggles</dd>
          </dl>
          <Button kind="primary" iconEnd="arrow-end" wide>
            Take this order
          </Button>
        </div>
      </section>
      <section className="look-side">
        <SectionHead title="Then" end="Ordered" />
        <RuledList
          rows={[
            {
              id: '205',
              sign: <CoreColumn layers={heatherMoor} width={40} height={72} />,
              title: 'K7-205 Heather Moor',
              note: '50 g, ready',
              end: '10:39',
            },
            {
              id: '206',
              sign: <CoreColumn layers={rustSeam} width={40} height={72} />,
              title: 'K7-206 Rust Seam',
              note: '50 g, ready',
              end: '10:40',
            },
            {
              id: '207',
              sign: <CoreColumn layers={slateLedge} width={40} height={72} />,
              title: 'K7-207 Slate Ledge',
              note: <StateWord tone="care">30 g, lot on hold</StateWord>,
              end: '10:41',
            },
            {
              id: '118',
              sign: <CoreColumn layers={greenPremix} width={40} height={72} />,
              title: 'Green premix, 20 %',
              note: '200 g, make before 12:00',
              end: 'Today',
            },
          ]}
        />
        <div className="look-checks">
          <StateWord tone="ok">Scale heard, 0.01 g</StateWord>
          <StateWord tone="ok">Edition 14 in force</StateWord>
          <StateWord tone="ok">pH meter 4 and 7 set</StateWord>
          <StateWord tone="care">Labels: 12 left</StateWord>
        </div>
      </section>
    </div>
  </BenchFrame>
);

const names = [
  'Kaolin',
  'Illite, green',
  'Green premix',
  'Wetting oil',
  'Paste smooth',
  'Cream R2',
  'NIACINamide',
  'Panthenol 75 %',
  'Check pH',
  'Look and fill',
  'Label',
];
const layers: readonly RailStep['layer'][] = [
  { hatch: 'base-clay', fill: earth.kaolin },
  { hatch: 'tint-clay', fill: earth.illite },
  { hatch: 'mineral-colour', fill: earth.green },
  { hatch: 'oil', fill: earth.oil },
  undefined,
  { hatch: 'cream', fill: earth.cream },
];

const steps = names.map((name, index): RailStep => {
  const layer = layers[index];
  return {
    id: name,
    number: String(index + 1),
    name,
    state: index < 6 ? 'done' : index === 6 ? 'current' : 'to-come',
    ...(name === 'NIACINamide' ? { spokenName: 'Niacinamide' } : {}),
    ...(layer ? { layer } : {}),
  };
});

const stepUg = gramsToUg(0.01);
const band = { targetUg: gramsToUg(1.04), loUg: gramsToUg(0.99), hiUg: gramsToUg(1.09), stepUg };
const legend = { light: 'Add', moving: 'Hold still', stable: 'Record', heavy: 'Too much', 'no-reading': 'Not heard' } as const;

interface Moment {
  readonly state: WeighingState;
  readonly readingG: number | null;
  readonly words: string;
  readonly action: ReactNode;
}

const notYet = (state: WeighingState, words: string): ReactNode => (
  <Button notReady mark={<WeighingMark state={state} />}>
    {words}
  </Button>
);

const Weighing = ({ moment }: { readonly moment: Moment }): ReactNode => {
  const readingUg = moment.readingG === null ? null : gramsToUg(moment.readingG);
  const digits = readingUg === null ? '–' : readingDigits(readingUg, stepUg, 'en');
  return (
    <BenchFrame
      word="Bench"
      place="Counter North"
      code="K7-204"
      skip="To the weighing"
      end={
        <span className="look-row-of">
          <WeighingMark state={readingUg === null ? 'no-reading' : 'stable'} />
          {readingUg === null ? 'Scale not heard' : 'Scale heard'}
        </span>
      }
      rail={<StepRail label="Steps" doneWord="done" steps={steps} />}
      actions={
        <>
          <Button>Stop jar</Button>
          <Button>Something went wrong</Button>
          {moment.action}
        </>
      }
    >
      <div className="look-weigh">
        <WeighingHead
          name="NIACINamide"
          spokenName="Niacinamide"
          end={<LotChip tone="ok" before="Lot" code="NA-2207" after="is right" />}
          weigh={{
            word: 'Weigh',
            target: targetDigits(band.targetUg, 'en'),
            unit: 'g',
            range: formatRangeGrams(band.loUg, band.hiUg, stepUg, 'en'),
          }}
          now={{ word: 'On the scale now', digits, unit: 'g', silent: readingUg === null }}
        />
        <StateLine state={moment.state} words={moment.words} source={readingUg === null ? undefined : 'From scale'} />
        <Gauge
          band={band}
          readingUg={readingUg}
          state={moment.state}
          label={`${moment.words}. Range 0.99 to 1.09 g.`}
          texts={{ zero: '0', near: targetDigits(nearUg(band), 'en'), lo: '0.99', target: '1.04', hi: '1.09', inside: 'In' }}
        />
        <StateLegend state={moment.state} words={legend} />
      </div>
    </BenchFrame>
  );
};

const moments: Readonly<Record<string, Moment>> = {
  light: { state: 'light', readingG: 0.87, words: 'Add 0.17 g', action: notYet('light', 'Not yet: add more') },
  moving: { state: 'moving', readingG: 1.02, words: 'Hold still', action: notYet('moving', 'Not yet: hold still') },
  stable: {
    state: 'stable',
    readingG: 1.04,
    words: 'Record',
    action: (
      <Button kind="primary" iconEnd="arrow-end">
        Record 1.04 g
      </Button>
    ),
  },
  heavy: { state: 'heavy', readingG: 1.3, words: 'Too much by 0.21 g', action: <Button kind="primary">Mend it</Button> },
  'no-reading': { state: 'no-reading', readingG: null, words: 'Scale not heard', action: <Button kind="primary">Type the weight</Button> },
};

const rescueRows: readonly (readonly [string, string, string, string])[] = [
  ['Kaolin', '0.78', '0.98', '0.2'],
  ['Illite, green', '0.26', '0.33', '0.07'],
  ['Green premix', '0.26', '0.33', '0.07'],
  ['Wetting oil', '1.98', '2.47', '0.49'],
  ['Cream', '47.47', '59.34', '11.87'],
  ['Panthenol 75 %', '0.00', '0.26', '0.26'],
];

const ignore = (): void => undefined;

const Rescue = (): ReactNode => (
  <>
    <Weighing moment={moments.heavy ?? { state: 'heavy', readingG: 1.3, words: '', action: null }} />
    <div data-face="bench">
      <Dialog
        open
        size="wide"
        title="You poured 1.30 g. The most is 1.09 g"
        mark={<JudgementMark kind="never" size="1.3em" />}
        onClose={ignore}
      >
        <p>Nothing can be taken out again. You can grow the whole jar, or start over.</p>
        <div className="look-rescue">
          <section className="look-way">
            <h3 className="type-heading">Grow the mix from 52 g to 65 g</h3>
            <p className="type-small type-second">It fits the 120 mL vessel. The label still says 50 g.</p>
            <DataTable
              caption="Top up"
              density="compact"
              columns={[
                { id: 'name', head: 'Top up' },
                { id: 'in', head: 'In now, g', align: 'point', wholeDigits: 2 },
                { id: 'total', head: 'New total, g', align: 'point', wholeDigits: 2 },
                { id: 'add', head: 'Add, g', align: 'point', wholeDigits: 2 },
              ]}
              rows={rescueRows.map((cells) => ({ id: cells[0], cells }))}
            />
            <Button kind="primary" icon="person" wide>
              Ask a second person to check
            </Button>
          </section>
          <section className="look-way">
            <h3 className="type-heading">Discard and start over</h3>
            <p className="type-small type-second">52.05 g goes to waste. Say why. The order keeps its place.</p>
            <Button wide>Discard this mix</Button>
            <Button wide>Go back</Button>
          </section>
        </div>
      </Dialog>
    </div>
  </>
);

const Typed = (): ReactNode => {
  const [text, setText] = useState('1,04');
  return (
    <BenchFrame
      word="Bench"
      place="Counter North"
      code="K7-204"
      skip="To the weighing"
      rail={<StepRail label="Steps" doneWord="done" steps={steps} />}
      actions={
        <>
          <Button>Go back</Button>
          <Button kind="primary">Type it a second time</Button>
        </>
      }
    >
      <div className="look-typed">
        <div className="look-stack">
          <h1 className="type-heading">Type what the scale shows</h1>
          <GramsField
            id="typed"
            label="Niacinamide"
            hint="Weigh 1.04 g"
            lang="en"
            stepUg={stepUg}
            capacityUg={gramsToUg(600)}
            text={text}
            onText={setText}
            showMistake
          />
          <Notice tone="care" title="Two people">
            You type it twice. The second time you do not see the first.
          </Notice>
        </div>
        <Keypad
          label="Digits"
          decimalSign="."
          text={text}
          onText={setText}
          words={{ decimalSign: 'point', deleteLast: 'Delete the last' }}
        />
      </div>
    </BenchFrame>
  );
};

const weighingSheets = Object.fromEntries(Object.entries(moments).map(([name, moment]) => [name, () => <Weighing moment={moment} />]));

export const benchSheets: Readonly<Record<string, FunctionComponent>> = { queue: Queue, rescue: Rescue, typed: Typed, ...weighingSheets };
