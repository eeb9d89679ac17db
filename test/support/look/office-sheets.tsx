// The formulator's and the manager's pages, and one sheet of all pieces.
import type { FunctionComponent, ReactNode } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { ChoiceRow, ChoiceRows } from '#app/_ui/controls/choice-row.tsx';
import { DataTable } from '#app/_ui/controls/data-table.tsx';
import { SelectField, TextAreaField, TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { RuledList, SectionHead } from '#app/_ui/controls/section-head.tsx';
import { SegmentLinks } from '#app/_ui/controls/segment-switch.tsx';
import { TitleBlock } from '#app/_ui/controls/title-block.tsx';
import { CoreColumn } from '#app/_ui/drawing/core-column.tsx';
import { CoreRows } from '#app/_ui/drawing/core-rows.tsx';
import { earth } from '#app/_ui/drawing/earth.data.ts';
import { EditionColumn } from '#app/_ui/drawing/edition-column.tsx';
import { Swatch } from '#app/_ui/drawing/swatch.tsx';
import { Bars } from '#app/_ui/figure/bars.tsx';
import { Figure } from '#app/_ui/figure/figure.tsx';
import { LevelBar } from '#app/_ui/figure/level-bar.tsx';
import { Rates } from '#app/_ui/figure/rates.tsx';
import { RunChart } from '#app/_ui/figure/run-chart.tsx';
import { WindowBars } from '#app/_ui/figure/window-bars.tsx';
import type { OfficeGroup } from '#app/_ui/frames/office-frame.tsx';
import { OfficeFrame } from '#app/_ui/frames/office-frame.tsx';
import { iconPaths } from '#app/_ui/marks/icon.data.ts';
import type { IconName } from '#app/_ui/marks/icon.tsx';
import { Icon } from '#app/_ui/marks/icon.tsx';
import { JUDGEMENTS, JudgementMark } from '#app/_ui/marks/judgement-mark.tsx';
import { StateWord } from '#app/_ui/marks/state-mark.tsx';
import { WEIGHING_STATES, WeighingMark } from '#app/_ui/marks/weighing-mark.tsx';
import { fernBank, heatherMoor, rustSeam, slateLedge } from './sample-layers.data.ts';

const groups = (current: string): readonly OfficeGroup[] =>
  [
    { id: 'top', links: [['Home', 'home']] as const },
    {
      id: 'rulebook',
      heading: 'Rulebook',
      links: [
        ['Materials', 'drop', '64'],
        ['Shades', 'strata', '12'],
        ['Actives', 'flask', '16'],
        ['Pairs', 'grid', '7'],
        ['What-if jar', 'jar'],
        ['Cautions', 'hand'],
        ['Editions', 'book'],
      ] as const,
    },
    {
      id: 'shop',
      heading: 'Shop',
      links: [
        ['Stock and lots', 'tag', '3'],
        ['Review', 'chart'],
        ['Trace', 'trace'],
        ['Complaints', 'flag', '1'],
      ] as const,
    },
  ].map((group) => ({
    ...group,
    links: group.links.map(([label, icon, count]) => ({
      href: `#${label}`,
      label,
      icon: icon as IconName,
      current: label === current,
      ...(count ? { count } : {}),
    })),
  }));

const foot = (
  <div className="look-edition">
    <CoreColumn layers={fernBank.slice(1)} width={28} height={52} />
    <p>
      <b>Edition 14 in force</b>
      <br />
      <span className="type-small type-second">Draft 15 is open</span>
    </p>
  </div>
);

const frame = { brand: 'Marlpit Lane', place: 'Office', skip: 'To the page', navLabel: 'Sections', foot } as const;

const work = [
  ['grid', '7 pairs are not judged', 'They act as never. 412 variants wait on them.', '2 days', 'Judge them'],
  ['hand', '4 cautions have no Arabic text', 'Draft 15 cannot be published until they have.', '5 days', 'Open texts'],
  ['book', 'Draft 15 is ready for review', '2 lines widen use. A second formulator must look.', 'Today', 'Read the diff'],
  ['tag', '3 lots expire within 14 days', 'KA-0931, PA-0853 and R2-0118.', '9 Dec', 'Plan use'],
  ['flag', '1 complaint has no reply', 'Jar ML263220011X. Reply due in 4 days.', '29 Nov', 'Reply'],
] as const;

const Home = (): ReactNode => (
  <OfficeFrame
    {...frame}
    groups={groups('Home')}
    title="Wednesday 25 November"
    actions={
      <>
        <Button icon="search">Find anything</Button>
        <Button kind="destructive" icon="hand">
          Stop something
        </Button>
      </>
    }
  >
    <div className="look-columns">
      <div className="look-stack">
        <section>
          <SectionHead title="Waiting for you" end="Oldest first within each kind" />
          <RuledList
            rows={work.map(([icon, title, note, end, act]) => ({
              id: title,
              sign: <Icon name={icon} />,
              title,
              note,
              end,
              action: <Button size="small">{act}</Button>,
            }))}
          />
        </section>
        <Figure
          id="weeks"
          title="Both counters sold more jars since edition 14"
          description="Jars a week, 28 Sep to 22 Nov 2026"
          source="Source: released jars. n = 679"
          words={{ view: 'Show as', chart: 'Chart', table: 'Table' }}
          csv={{ href: '#csv', word: 'CSV' }}
          table={{
            caption: 'Jars a week',
            columns: [
              { id: 'week', head: 'Week from' },
              { id: 'north', head: 'Counter North', align: 'end' },
              { id: 'south', head: 'Counter South', align: 'end' },
            ],
            rows: [{ id: '28', cells: ['28 Sep', '38', '31'] }],
          }}
        >
          <RunChart
            label="Jars a week by counter"
            series={[
              { name: 'North', values: [38, 41, 36, 45, 49, 52, 58, 61] },
              { name: 'South', values: [31, 29, 34, 37, 36, 41, 44, 47] },
            ]}
            dates={['28 Sep', '5 Oct', '12', '19', '26', '2 Nov', '9', '16']}
            changes={[{ at: 5, text: 'Edition 14' }]}
            formatTick={String}
          />
        </Figure>
      </div>
      <div className="look-stack">
        <section>
          <SectionHead title="Editions" />
          <EditionColumn
            editions={[
              { id: '15', number: '15', title: 'Draft', note: '9 changes, 2 widen use', state: 'draft' },
              { id: '14', number: '14', title: 'In force since 3 Nov 2026', note: '38,214 variants', state: 'in-force' },
              { id: '13', number: '13', title: '12 Aug to 3 Nov 2026', note: '36,980 variants', state: 'past' },
              { id: '12', number: '12', title: '2 Jun to 12 Aug 2026', note: '35,102 variants', state: 'past' },
              { id: '11', number: '11', title: 'Stopped 2 Jun 2026', note: 'Wrong limit, 3 days', state: 'past' },
              { id: '10', number: '10', title: '14 Feb to 30 May 2026', note: '29,871 variants', state: 'past' },
            ]}
          />
        </section>
        <Notice tone="stop" title="1 stop in force" end={<a href="#open">Open</a>}>
          Lot SO-0344, lactic acid, 09:12
        </Notice>
        <Notice tone="plain" title="Both kiosks on edition 14" mark={<StateWord tone="ok">{''}</StateWord>} end={<a href="#open">Open</a>}>
          Last heard 10:42 and 10:41
        </Notice>
      </div>
    </div>
  </OfficeFrame>
);

const findings = [
  ['caution', 'Niacinamide with green premix: tint may drift.', 'Pair P-085'],
  ['caution', 'Dries fast. The card must say 10 minutes.', 'C-TIME'],
  ['fine', 'Exposure: margin of safety 640, floor 100.', 'Check 12'],
  ['fine', 'Every line can be weighed at 0.01 g.', 'Check 14'],
  ['fine', 'All 7 lots are on the shelf.', 'Check 15'],
] as const;

const WhatIf = (): ReactNode => (
  <OfficeFrame
    {...frame}
    groups={groups('What-if jar')}
    title="What-if jar"
    actions={
      <>
        <Button>Compare with…</Button>
        <Button>Add to test plan</Button>
        <Button kind="primary">Ask for approval</Button>
      </>
    }
  >
    <div className="look-three">
      <div className="look-stack">
        <div className="look-row-of">
          <span className="look-grow">
            <SelectField id="shade" label="Shade" options={[{ value: 'fern', label: 'Fern Bank' }]} />
          </span>
          <SelectField id="jar" label="Jar" options={[{ value: '50', label: '50 g' }]} />
        </div>
        <CoreRows
          layers={fernBank}
          width={94}
          height={560}
          heads={{ name: 'Layers, not to scale', share: '% of the jar' }}
          label={{
            title: 'Fern Bank with niacinamide and panthenol',
            description: 'Seven layers: 91.3 % cream, 3.8 % oil, 4.9 % additions drawn enlarged.',
          }}
        />
        <div className="look-row-of">
          <span className="look-grow">
            <Button icon="plus" wide>
              Add an active
            </Button>
          </span>
          <Button>What fits?</Button>
        </div>
      </div>
      <div className="look-stack">
        <Notice tone="ok" large title="Permitted, with 2 cautions">
          All 15 checks pass. Approval A-31, 28 Oct 2026.
        </Notice>
        <SectionHead title="pH 6.07, window 5.3 to 6.7" end="Error 0.3 each way" />
        <WindowBars
          label="pH windows of five parts and the prediction"
          axis={{ from: 3, to: 9, ticks: [3, 4, 5, 6, 7, 8, 9].map((at) => ({ at, text: String(at) })) }}
          windows={[
            { id: 'base', name: 'Base R2', from: 3.3, to: 7.5 },
            { id: 'niacinamide', name: 'Niacinamide', from: 5, to: 7 },
            { id: 'panthenol', name: 'Panthenol', from: 4, to: 7.5 },
            { id: 'green', name: 'Chromium oxide', from: 3, to: 9 },
          ]}
          common={{ from: 5, to: 7 }}
          prediction={{ name: 'Predicted', at: 6.07, error: 0.3 }}
        />
        <LevelBar name="Wetting" words="Needs 1.61 % of 3.8 % oil" usedPpm={422_000} />
        <LevelBar name="Allowance" words="4.9 % of 5 %, carriers counted" usedPpm={980_000} hatch="humectant" />
        <section>
          <SectionHead title="Findings" />
          <RuledList plain rows={findings.map(([kind, title, end]) => ({ id: title, sign: <JudgementMark kind={kind} />, title, end }))} />
        </section>
      </div>
      <div className="look-stack">
        <p className="type-label">Predicted colour</p>
        <div className="look-jar-swatch">
          <Swatch wet={['#8C9A79']} dry={['#B4BEA2']} wetWord="Wet" dryWord="Dry" />
        </div>
        <p>
          <b>Soft green</b>
          <br />
          <span className="type-small type-second">Error 1.8, measured 14 Oct</span>
        </p>
        <Button icon="printer">Print the card</Button>
      </div>
    </div>
  </OfficeFrame>
);

const bars = [
  { id: '1', name: 'Fern Bank', note: 'niacinamide 2 %, panthenol', value: 118, text: '118', fill: '#8C9A79', hatch: 'tint-clay' },
  { id: '2', name: 'Heather Moor', note: 'panthenol', value: 104, text: '104', fill: '#B98780', hatch: 'botanical' },
  { id: '3', name: 'Rust Seam', note: 'niacinamide 2 %', value: 92, text: '92', fill: '#A45C40', hatch: 'oil' },
  { id: '4', name: 'Slate Ledge', note: 'lactic acid 0.5 %', value: 71, text: '71', fill: '#66757B', hatch: 'base-clay' },
  { id: '5', name: 'Fern Bank', note: 'zinc PCA 0.5 %', value: 63, text: '63', fill: '#8C9A79', hatch: 'tint-clay' },
  { id: '6', name: '33 others', note: 'each sold fewer than 30', value: 111, text: '111', fill: '#FFFFFF', hatch: 'cream' },
] as const;

const figureWords = { view: 'Show as', chart: 'Chart', table: 'Table' } as const;

const Review = (): ReactNode => (
  <OfficeFrame {...frame} groups={groups('Review')} title="Review" actions={<Button icon="download">Download CSV</Button>}>
    <div className="look-columns">
      <Figure
        id="sold"
        title="Three combinations make up 46 % of sales"
        description="Jars sold, by combination"
        source="Source: released jars, both counters. n = 679. Colour and hatch show the shade."
        words={figureWords}
        table={{
          caption: 'Jars sold',
          columns: [
            { id: 'name', head: 'Combination' },
            { id: 'n', head: 'Jars', align: 'end' },
          ],
          rows: bars.map((bar) => ({ id: bar.id, cells: [`${bar.name}, ${bar.note}`, bar.text] })),
        }}
      >
        <Bars label="Jars sold, by combination" bars={bars} formatTick={String} />
      </Figure>
      <div className="look-stack">
        <Figure
          id="remade"
          title="Slate Ledge is remade more than the rest"
          description="Share of jars remade, with 95 % interval"
          source="Dashed: the rest, 17 of 608. A signal: the interval lies above it."
          words={figureWords}
          table={{ caption: 'Remade', columns: [{ id: 'name', head: 'Combination' }], rows: [] }}
        >
          <Rates
            label="Share of jars remade"
            restPercent={2.8}
            formatTick={(value) => `${value}`}
            rates={[
              { id: '1', name: 'Slate Ledge', percent: 7, lowPercent: 3, highPercent: 15.4, count: '5 of 71', signal: true },
              { id: '2', name: 'Rust Seam', percent: 4.3, lowPercent: 1.7, highPercent: 10.6, count: '4 of 92' },
              { id: '3', name: 'Fern Bank', percent: 2.5, lowPercent: 0.9, highPercent: 7.2, count: '3 of 118' },
            ]}
          />
        </Figure>
        <Figure
          id="refused"
          title="Scent stood in the way most often"
          description="Visits where the best match was refused, by reason"
          source="Counters only. Not linked to an order. n = 106"
          words={figureWords}
          table={{ caption: 'Refused', columns: [{ id: 'name', head: 'Reason' }], rows: [] }}
        >
          <Bars
            label="Visits refused, by reason"
            height="small"
            axis={false}
            formatTick={String}
            bars={[
              { id: '1', name: 'Scent not wanted', value: 41, text: '41' },
              { id: '2', name: 'Pair not judged', value: 29, text: '29' },
              { id: '3', name: 'Sun in the next 7 days', value: 24, text: '24' },
              { id: '4', name: 'Out of one part today', value: 12, text: '12' },
            ]}
          />
        </Figure>
      </div>
    </div>
  </OfficeFrame>
);

const Publish = (): ReactNode => (
  <OfficeFrame
    {...frame}
    groups={groups('Editions')}
    title="Draft 15 against edition 14"
    panel={{
      label: 'Publish',
      body: (
        <>
          <h2 className="type-heading">What 200 test answers get</h2>
          <Bars
            label="How often each shade is offered"
            height="small"
            axis={false}
            formatTick={String}
            bars={[
              { id: '1', name: 'Fern Bank', value: 64, before: 61, text: '61 to 64' },
              { id: '2', name: 'Heather Moor', value: 58, before: 58, text: '58 to 58' },
              { id: '3', name: 'Slate Ledge', value: 31, before: 40, text: '40 to 31' },
            ]}
          />
          <Notice tone="care" title="3 answer sets get no mask" end={<a href="#see">See them</a>} />
          <SectionHead title="Publish" />
          <StateWord tone="ok">The rulebook is sound</StateWord>
          <StateWord tone="ok">All texts exist in 5 languages</StateWord>
          <StateWord tone="open">1 line that widens use is not looked at</StateWord>
          <TextAreaField
            id="why"
            label="Why do you approve what widens use?"
            defaultValue="ST-118 held pH and colour for 12 weeks at 3 %."
          />
          <TextField
            id="password"
            label="Your password again"
            type="password"
            defaultValue="0123456789"
            autoComplete="current-password"
            error="Type the password that you sign in with."
          />
          <Button kind="primary" icon="lock" wide>
            Publish edition 15
          </Button>
          <p className="type-small type-second">This means: I approve edition 15 for sale.</p>
        </>
      ),
    }}
  >
    <div className="look-stack">
      <SectionHead title="Newly allowed" end={<StateWord tone="care">Widens use</StateWord>} />
      <DataTable
        caption="Newly allowed"
        columns={[
          { id: 'what', head: 'What' },
          { id: 'was', head: 'Was' },
          { id: 'now', head: 'Now' },
          { id: 'source', head: 'Source' },
        ]}
        rows={[
          {
            id: '1',
            look: 'care',
            cells: [
              'Lactic acid in Heather Moor, highest level',
              <del key="d">0.5 %</del>,
              <ins key="i" className="look-diff">
                1 %
              </ins>,
              'Stability run ST-118',
            ],
          },
          {
            id: '2',
            look: 'care',
            cells: [
              'Allantoin with Fern Bank',
              <del key="d">Not judged</del>,
              <ins key="i" className="look-diff">
                Fine
              </ins>,
              'Drawdown DR-0411',
            ],
          },
        ]}
      />
      <TitleBlock
        cells={[
          { label: 'Drawn up by', value: 'formulator', note: '24 Nov 2026, 16:02' },
          { label: 'To be approved by', value: 'second formulator', note: 'Not signed yet' },
          { label: 'Variants', value: '38,214 to 37,466', note: '2 of 9 widen use' },
          { label: 'Hash of the draft', value: '9f3a c21e 77d0', note: 'Base R2', code: true },
        ]}
      />
    </div>
  </OfficeFrame>
);

const Pieces = (): ReactNode => (
  <OfficeFrame {...frame} groups={groups('')} title="Pieces">
    <div className="look-stack">
      <SectionHead title="Icons" />
      <ul className="look-icons">
        {(Object.keys(iconPaths) as IconName[]).map((name) => (
          <li key={name} className="type-small">
            <Icon name={name} size={36} />
            {name}
          </li>
        ))}
      </ul>
      <SectionHead title="Marks" />
      <div className="look-row-of">
        {WEIGHING_STATES.map((state) => (
          <span key={state}>
            <WeighingMark state={state} size={44} /> {state}
          </span>
        ))}
        {JUDGEMENTS.map((kind) => (
          <span key={kind}>
            <JudgementMark kind={kind} size={44} /> {kind}
          </span>
        ))}
      </div>
      <SectionHead title="Buttons" />
      <div className="look-row-of">
        <Button kind="primary">Publish edition 15</Button>
        <Button>Compare with…</Button>
        <Button kind="quiet">Open</Button>
        <Button kind="destructive" icon="hand">
          Stop something
        </Button>
        <Button kind="destructive-now" icon="hand">
          Hold 2 jars now
        </Button>
        <Button notReady>Not yet: 1 line not looked at</Button>
        <SegmentLinks
          label="View"
          current="grid"
          segments={[
            { value: 'grid', label: 'Grid', icon: 'grid', href: '#grid' },
            { value: 'list', label: 'List of 120', href: '#list' },
          ]}
        />
      </div>
      <SectionHead title="Choices and fields" />
      <div className="look-columns">
        <ChoiceRows>
          {JUDGEMENTS.map((kind) => (
            <ChoiceRow
              key={kind}
              type="radio"
              name="judgement"
              label={kind}
              mark={<JudgementMark kind={kind} />}
              defaultChecked={kind === 'limit'}
            />
          ))}
        </ChoiceRows>
        <div className="look-stack">
          <TextField id="level" label="Level, %" defaultValue="6" unit="% of the jar" align="end" width="short" error="Give 5 or less" />
          <TextField id="find" label="Find" icon="search" placeholder="Material, lot, jar" />
        </div>
      </div>
      <SectionHead title="Cores" />
      <div className="look-row-of">
        {[fernBank, heatherMoor, rustSeam, slateLedge].map((layers) => (
          <CoreColumn key={layers.length} layers={layers} width={120} height={436} />
        ))}
        {[fernBank, heatherMoor, rustSeam, slateLedge].map((layers) => (
          <CoreColumn key={layers.length} layers={layers} width={44} height={76} />
        ))}
        <CoreColumn
          layers={[
            { name: 'Ochre', hatch: 'preservative', fill: earth.preservative, sharePpm: 500_000 },
            { name: 'Acid', hatch: 'acid', fill: earth.acid, sharePpm: 500_000 },
          ]}
          width={120}
          height={200}
        />
      </div>
    </div>
  </OfficeFrame>
);

export const officeSheets: Readonly<Record<string, FunctionComponent>> = {
  home: Home,
  'what-if': WhatIf,
  review: Review,
  publish: Publish,
  pieces: Pieces,
};
