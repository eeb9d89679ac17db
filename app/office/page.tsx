import { connection } from 'next/server';
import type { ReactNode } from 'react';
import type { SignedEdition } from '#app/_flows/list-editions.ts';
import { signedEditions } from '#app/_flows/list-editions.ts';
import type { RulebookView } from '#app/_flows/read-rulebook.ts';
import { readRulebook } from '#app/_flows/read-rulebook.ts';
import type { ComplaintRow } from '#app/_flows/show-complaints.ts';
import { showComplaints } from '#app/_flows/show-complaints.ts';
import type { StopRow } from '#app/_flows/show-stops.ts';
import { showStops } from '#app/_flows/show-stops.ts';
import { staffPage } from '#app/_server/page-actor.ts';
import { ButtonLink } from '#app/_ui/controls/button.tsx';
import type { RuledRow } from '#app/_ui/controls/section-head.tsx';
import { RuledList, SectionHead } from '#app/_ui/controls/section-head.tsx';
import type { EditionLayer } from '#app/_ui/drawing/edition-column.tsx';
import { EditionColumn } from '#app/_ui/drawing/edition-column.tsx';
import { Icon } from '#app/_ui/marks/icon.tsx';
import { checkRulebook } from '#lib/rulebook/check-rulebook.ts';
import { localDayIn } from '#lib/units/time.ts';
import styles from './office.module.css';
import { OfficePage } from './office-page.tsx';
import type { OfficeText } from './office-text.ts';
import { officeText } from './office-text.ts';
import { pairsNotJudged } from './pairs-not-judged.ts';

export const metadata = { title: 'Home – Office' };

export default async function OfficeHome(): Promise<ReactNode> {
  await connection();
  const { flow } = await staffPage(['formulator', 'manager'], '/office');
  const view = readRulebook(flow);
  const stops = showStops(flow).rows.filter((row) => row.lifted === null);
  const complaints = showComplaints(flow).filter((row) => row.steps.every((step) => step.kind !== 'closed'));
  const text = officeText();
  return (
    <OfficePage view={view} place="home" title={text.longDay(view.day)}>
      <div className={styles.columns}>
        <section className={styles.section} aria-labelledby="waiting">
          <SectionHead id="waiting" title={text.t('home-title')} />
          <RuledList rows={waitingRows(view, { stops, complaints }, text)} />
        </section>
        <section className={styles.section} aria-labelledby="editions">
          <SectionHead id="editions" title={text.t('home-edition')} />
          <EditionColumn editions={layers(view, signedEditions(flow), text)} />
        </section>
      </div>
    </OfficePage>
  );
}

interface Open {
  readonly stops: readonly StopRow[];
  readonly complaints: readonly ComplaintRow[];
}

function waitingRows({ draft, diff, day }: RulebookView, { stops, complaints }: Open, { t }: OfficeText): readonly RuledRow[] {
  if (!draft) return [{ id: 'none', title: t('no-rulebook'), note: t('no-rulebook-why') }];
  const notJudgedCount = pairsNotJudged(draft.book).length;
  const faultsCount = checkRulebook(draft.book.rulebook, day).filter((fault) => fault.weight === 'error').length;
  const widensCount = diff.filter((line) => line.effect === 'widens').length;
  const rows: readonly (RuledRow & { readonly count: number })[] = [
    {
      id: 'stops',
      count: stops.length,
      sign: <Icon name="hand" />,
      title: t('home-stops', { count: stops.length }),
      note: stops.map((row) => row.subject).join(', '),
      action: <ButtonLink href="/office/stops">{t('home-open-stops')}</ButtonLink>,
    },
    {
      id: 'complaints',
      count: complaints.length,
      sign: <Icon name="flag" />,
      title: t('home-complaints', { count: complaints.length }),
      note: complaints.map((row) => row.complaint.jarCode).join(', '),
      action: <ButtonLink href="/office/complaints">{t('home-open-complaints')}</ButtonLink>,
    },
    {
      id: 'faults',
      count: faultsCount,
      sign: <Icon name="flag" />,
      title: t('home-faults', { count: faultsCount }),
      note: t('home-faults-note'),
      action: <ButtonLink href="/office/publish#faults">{t('home-open-faults')}</ButtonLink>,
    },
    {
      id: 'pairs',
      count: notJudgedCount,
      sign: <Icon name="grid" />,
      title: t('home-not-judged', { count: notJudgedCount }),
      note: t('home-not-judged-note'),
      action: <ButtonLink href="/office/pairs#not-judged">{t('home-judge')}</ButtonLink>,
    },
    {
      id: 'draft',
      count: diff.length,
      sign: <Icon name="page" />,
      title: t('home-draft-waits', { count: diff.length }),
      note: t('home-draft-widens', { count: widensCount }),
      action: <ButtonLink href="/office/publish">{t('home-read-diff')}</ButtonLink>,
    },
  ];
  const waiting = rows.filter((row) => row.count > 0);
  return waiting.length > 0
    ? waiting
    : [{ id: 'nothing', sign: <Icon name="check" />, title: t('home-nothing'), note: t('home-nothing-note') }];
}

function layers(view: RulebookView, editions: readonly SignedEdition[], text: OfficeText): readonly EditionLayer[] {
  const { t, day } = text;
  const draft: readonly EditionLayer[] = view.draft
    ? [
        {
          id: 'draft',
          number: String((editions[0]?.head.editionNo ?? 0) + 1),
          title: t('edition-draft'),
          note: t('foot-draft', { count: view.diff.length }),
          state: 'draft',
        },
      ]
    : [];
  const published = editions.map(({ head, replacedByNo }): EditionLayer => {
    const isInForce = head.hash === view.inForce?.head.hash;
    const since = day(localDayIn(view.shop.zone, head.effectiveAtMs));
    return {
      id: head.hash,
      number: String(head.editionNo),
      title:
        replacedByNo === null
          ? t(isInForce ? 'edition-since' : 'edition-from', { day: since })
          : t('edition-replaced', { no: replacedByNo }),
      note: t('edition-variants', { count: text.number(Number(head.variantsCount)) }),
      state: isInForce ? 'in-force' : 'past',
    };
  });
  return [...draft, ...published];
}
