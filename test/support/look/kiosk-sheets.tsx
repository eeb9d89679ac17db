// The customer's pages.
import type { FunctionComponent, ReactNode } from 'react';
import { CautionCard } from '#app/_ui/cards/caution-card.tsx';
import { CodePanel } from '#app/_ui/cards/code-panel.tsx';
import { MaskCard, MaskCards } from '#app/_ui/cards/mask-card.tsx';
import { Bar } from '#app/_ui/controls/bar.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import { ChoiceOr, ChoiceRow, ChoiceRows } from '#app/_ui/controls/choice-row.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { Disclosure } from '#app/_ui/controls/disclosure.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { RuledList } from '#app/_ui/controls/section-head.tsx';
import type { CoreLayer } from '#app/_ui/drawing/core-column.tsx';
import { EmptyScene } from '#app/_ui/drawing/empty-scene.tsx';
import { GroundSection } from '#app/_ui/drawing/ground-section.tsx';
import { JarDrawing } from '#app/_ui/drawing/jar-drawing.tsx';
import { PartMark, Spine } from '#app/_ui/drawing/spine.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { Icon } from '#app/_ui/marks/icon.tsx';
import { fernBank, heatherMoor, rustSeam } from './sample-layers.data.ts';

const ignore = (): void => undefined;

const usualBar = (word = 'Continue'): ReactNode => (
  <Bar>
    <Button icon="arrow-start">Back</Button>
    <Button kind="primary" iconEnd="arrow-end" data-main="">
      {word}
    </Button>
    <Button icon="menu">More</Button>
  </Bar>
);

const Attract = (): ReactNode => (
  <KioskFrame
    brand="Marlpit Lane"
    place="Clay masks, mixed for you"
    picture={<GroundSection />}
    shown={
      <>
        <h1 className="type-display">Make a clay mask that suits you</h1>
        <p className="type-second">13 short questions. No camera. No name. We wipe your answers. This is not health advice.</p>
      </>
    }
  >
    <Button kind="primary" size="large" iconEnd="arrow-end" spread wide>
      <span className="look-start">
        Start
        <span className="look-start-note">About 3 minutes</span>
      </span>
    </Button>
    <div className="look-languages">
      {['English', 'Français', 'Deutsch', 'Español', 'العربية'].map((language, index) => (
        <Button key={language} size="small" aria-pressed={index === 0}>
          {language}
        </Button>
      ))}
    </div>
    <div className="look-languages">
      <Button kind="quiet" size="small" icon="text-size">
        Bigger text
      </Button>
      <Button kind="quiet" size="small" icon="sound">
        Read aloud
      </Button>
      <Button kind="quiet" size="small" icon="lock">
        Your answers
      </Button>
    </div>
  </KioskFrame>
);

const treatments = [
  'A peel, laser or needle treatment',
  'Waxing, threading or shaving',
  'A cream with vitamin A, such as retinol',
  'Any product with an acid in its name',
];

const Question = (): ReactNode => (
  <KioskFrame
    brand="Marlpit Lane"
    place="Question 7 of 13"
    spine={<Spine total={13} answered={6} asking />}
    shown={
      <>
        <p className="look-part type-label">
          <PartMark part={2} parts={3} />
          Part 2 of 3: Your skin
        </p>
        <h1 className="type-title">In the last 7 days, have you had or used any of these there?</h1>
        <p className="type-second">We ask so that we can leave out things that may sting.</p>
      </>
    }
    bar={usualBar()}
  >
    <p className="type-label">Choose all that are right.</p>
    <ChoiceRows>
      {treatments.map((label, index) => (
        <ChoiceRow key={label} type="checkbox" name="week" label={label} defaultChecked={index % 2 === 1} />
      ))}
      <ChoiceOr word="or" />
      <ChoiceRow type="checkbox" name="week" label="None of these" />
      <ChoiceRow type="checkbox" name="week" label="I am not sure" note="We will leave out acids and scent, to be careful" />
      <ChoiceRow type="checkbox" name="week" label="I would rather not say" note="We will leave out acids and scent, to be careful" />
    </ChoiceRows>
  </KioskFrame>
);

const wishes = [
  'بشرة تبدو أقل لمعانًا',
  'بشرة أقل جفافًا أو شدًّا',
  'بشرة تبدو أكثر إشراقًا',
  'بشرة أنعم ملمسًا',
  'مسام تبدو أنظف',
  'بشرة تشعر بالهدوء',
];

const Arabic = (): ReactNode => (
  <KioskFrame
    brand="Marlpit Lane"
    place="السؤال 3 من 13"
    spine={<Spine total={13} answered={2} asking />}
    shown={
      <>
        <p className="look-part type-label">
          <PartMark part={1} parts={3} />
          الجزء 1 من 3: قناعك
        </p>
        <h1 className="type-title">ماذا تريد أن يفعل القناع لبشرتك؟</h1>
        <p className="type-second">نسأل لكي نعرض عليك الأقنعة الأقرب إلى ما طلبت.</p>
      </>
    }
    bar={
      <Bar>
        <Button icon="arrow-start">رجوع</Button>
        <Button kind="primary" iconEnd="arrow-end" data-main="">
          متابعة
        </Button>
        <Button icon="menu">المزيد</Button>
      </Bar>
    }
  >
    <p className="type-label">اختر إجابة واحدة أو اثنتين.</p>
    <ChoiceRows>
      {wishes.map((label, index) => (
        <ChoiceRow key={label} type="checkbox" name="wish" label={label} defaultChecked={index % 3 === 0} />
      ))}
      <ChoiceOr word="أو" />
      <ChoiceRow type="checkbox" name="wish" label="أريد قناعًا لطيفًا فحسب" />
    </ChoiceRows>
  </KioskFrame>
);

interface Mask {
  readonly name: string;
  readonly price: string;
  readonly why: string;
  readonly layers: readonly CoreLayer[];
  readonly wet: string;
  readonly dry: string;
  readonly rows: readonly (readonly [string, string])[];
}

const masks: readonly Mask[] = [
  {
    name: 'Fern Bank',
    price: '£16',
    why: 'Closest to what you asked for. Soft green.',
    layers: fernBank,
    wet: '#8C9A79',
    dry: '#B4BEA2',
    rows: [
      ['Chosen for', 'Less shine. Smoother feel.'],
      ['Good', 'Leaves a soft, matt look. Known for this clay. Not tested in our mask.'],
      ['Less good', 'Can feel tight if you let it dry.'],
      ['Care', 'Try a little first. Not on broken skin.'],
    ],
  },
  {
    name: 'Heather Moor',
    price: '£14',
    why: 'The mildest of the three. Dusty pink.',
    layers: heatherMoor,
    wet: '#B98780',
    dry: '#D8B0A8',
    rows: [
      ['Chosen for', 'Smoother feel. Gentle on dry areas.'],
      ['Good', 'In our shop, 31 of 40 people told us that it rinsed off easily.'],
      ['Less good', 'Does less for shine.'],
      ['Care', 'Try a little first. Not on broken skin.'],
    ],
  },
  {
    name: 'Rust Seam',
    price: '£16',
    why: 'A different colour. Rust brown.',
    layers: rustSeam,
    wet: '#A45C40',
    dry: '#C88C75',
    rows: [
      ['Chosen for', 'Less shine. Skin that looks brighter.'],
      ['Good', 'Spreads thin and even. How it looks and feels. No test.'],
      ['Less good', 'May mark light towels.'],
      ['Care', 'Try a little first. Rinse well.'],
    ],
  },
];

const Results = (): ReactNode => (
  <KioskFrame
    brand="Marlpit Lane"
    place="Your masks"
    titleSize="results"
    flow="list"
    shown={
      <>
        <h1 className="type-title">3 masks fit your answers</h1>
        <p className="type-second">They are in no special order. Colours can differ a little.</p>
      </>
    }
    bar={usualBar()}
  >
    <MaskCards>
      {masks.map((mask, index) => (
        <MaskCard
          key={mask.name}
          group="mask"
          value={mask.name}
          title={mask.name}
          price={mask.price}
          why={mask.why}
          layers={mask.layers}
          swatch={{ wet: [mask.wet], dry: [mask.dry], wetWord: 'Wet', dryWord: 'Dry' }}
          rows={mask.rows.map(([head, text]) => ({ head, text }))}
          chosen={index === 0}
          onChoose={ignore}
        />
      ))}
    </MaskCards>
    <div className="look-two">
      <Button size="small">Compare side by side</Button>
      <Button size="small">Why not the others?</Button>
    </div>
  </KioskFrame>
);

const cautions = [
  ['clock', 'Leave it on for 10 minutes', 'Rinse before it cracks. Use it once a week at most.'],
  ['eye', 'Keep it out of your eyes', 'If some gets in, rinse with lots of clean water.'],
  ['broken-skin', 'Not on cut, sore or burnt skin', 'Wait until the skin has healed.'],
  ['hand', 'Stop if it stings or burns', 'Rinse it off at once. Do not use it again.'],
  ['no-children', 'Keep it away from children', 'It is not for anyone under 16.'],
] as const;

const Cautions = (): ReactNode => (
  <KioskFrame
    brand="Marlpit Lane"
    place="Before you order"
    titleSize="results"
    flow="follow"
    spine={<Spine total={13} answered={13} asking={false} />}
    shown={<h1 className="type-title">Read these, then order</h1>}
    bar={usualBar('Order for £16')}
  >
    <CautionCard
      icon="dab"
      title="Try a little first"
      tick={{ name: 'C-TEST', label: 'I will try a little first', checked: true, onChange: ignore }}
    >
      Put a thin dab inside your elbow. Leave it for 10 minutes, then rinse. Do this twice a day for 7 days. If the skin goes red, itches or
      swells, do not use the mask.
    </CautionCard>
    <RuledList top rows={cautions.map(([icon, title, note]) => ({ id: icon, sign: <Icon name={icon} size="1.25em" />, title, note }))} />
    <ChoiceRow type="checkbox" label="I have read all of these" alone />
  </KioskFrame>
);

const Code = (): ReactNode => (
  <KioskFrame
    brand="Marlpit Lane"
    place="Your order"
    titleSize="outcome"
    flow="follow"
    spine={<Spine total={13} answered={13} asking={false} />}
    shown={
      <>
        <h1 className="type-title">Show this code at the counter</h1>
        <p className="type-second">The code does not hold your answers.</p>
      </>
    }
    bar={
      <Bar>
        <Button icon="printer">Print</Button>
        <Button>I need more time</Button>
        <Button kind="primary" data-main="">
          Done
        </Button>
      </Bar>
    }
  >
    <CodePanel word="Your code" code="K7-204" note="Fern Bank, 50 g, £16" symbol={<Icon name="grid" size={196} />} />
    <div className="look-next">
      <JarDrawing layers={fernBank} width={360} height={400} label={{ title: 'Your jar', description: 'Seven layers, drawn enlarged.' }} />
      <RuledList
        top
        rows={[
          { id: '1', sign: <b className="type-heading">1</b>, title: 'Pay at the counter', note: 'Show or say the code.' },
          {
            id: '2',
            sign: <b className="type-heading">2</b>,
            title: 'We mix your jar',
            note: 'About 9 minutes. 2 orders are before yours.',
          },
          { id: '3', sign: <b className="type-heading">3</b>, title: 'Pick it up', note: 'A card with all the cautions comes with it.' },
        ]}
      />
    </div>
    <Notice tone="ok" title="We have wiped your answers.">
      We keep only the recipe, its batch number and the cautions of the mask.
    </Notice>
  </KioskFrame>
);

const Outcome = (): ReactNode => (
  <KioskFrame
    brand="Marlpit Lane"
    place="Your answers"
    titleSize="outcome"
    spine={<Spine total={13} answered={8} asking />}
    shown={
      <>
        <EmptyScene />
        <h1 className="type-title">Please ask a pharmacist or doctor first</h1>
        <p>
          Some of your answers are about things we are not trained to judge. It may be nothing. They can tell you if a clay mask is fine for
          you.
        </p>
        <p className="type-second">We would be happy to see you again after that.</p>
      </>
    }
    bar={
      <Bar>
        <Button icon="arrow-start">Back</Button>
        <Button kind="primary" data-main="">
          Done
        </Button>
        <Button icon="menu">More</Button>
      </Bar>
    }
  >
    <Disclosure summary="Show why">
      <p>You told us that a doctor treats the skin there.</p>
    </Disclosure>
    <Button icon="page" iconEnd="arrow-end" spread wide>
      Take this page with me
    </Button>
    <Button icon="undo" iconEnd="arrow-end" spread wide>
      Change an answer
    </Button>
    <Button icon="person" iconEnd="arrow-end" spread wide>
      Talk to our staff
    </Button>
  </KioskFrame>
);

const Timeout = (): ReactNode => (
  <>
    <Question />
    <div data-face="kiosk">
      <Dialog
        open
        alert
        cover
        title="Are you still here?"
        onClose={ignore}
        actions={
          <>
            <Button kind="primary">I am still here</Button>
            <Button>Wipe them now</Button>
          </>
        }
      >
        <p>We will wipe your answers in 60 seconds, to keep them private.</p>
      </Dialog>
    </div>
  </>
);

export const kioskSheets: Readonly<Record<string, FunctionComponent>> = {
  attract: Attract,
  question: Question,
  arabic: Arabic,
  results: Results,
  cautions: Cautions,
  code: Code,
  outcome: Outcome,
  timeout: Timeout,
};
