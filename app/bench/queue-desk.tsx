'use client';
// The queue: the next order large, the others behind it, and whether the bench is fit. It looks again every few seconds.
import type { ReactNode } from 'react';
import { useEffect, useState } from 'react';
import { claim } from '#app/_client/bench-acts.ts';
import { queueWatch } from '#app/_client/bench-looks.ts';
import { newRequestKey } from '#app/_client/request-key.ts';
import type { Reply } from '#app/_client/send.ts';
import { signOut } from '#app/_client/sign-in.ts';
import { classNames } from '#app/_ui/class-names.ts';
import { Button, ButtonLink } from '#app/_ui/controls/button.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import type { RuledRow } from '#app/_ui/controls/section-head.tsx';
import { RuledList, SectionHead } from '#app/_ui/controls/section-head.tsx';
import type { CoreLayer } from '#app/_ui/drawing/core-column.tsx';
import { CoreColumn } from '#app/_ui/drawing/core-column.tsx';
import { JarDrawing } from '#app/_ui/drawing/jar-drawing.tsx';
import { BenchFrame } from '#app/_ui/frames/bench-frame.tsx';
import { StateWord } from '#app/_ui/marks/state-mark.tsx';
import type { BenchKey } from '#app/_ui/text/bench/en.ts';
import { Digits } from '#app/_ui/weighing/digits.tsx';
import type { BenchQueue } from '#lib/contracts/bench-queue.ts';
import { massUg } from '#lib/units/mass.ts';
import { instantMs } from '#lib/units/time.ts';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import { layerOf } from './rail-steps.ts';
import { problemWords, SignInAgain } from './reply-words.tsx';
import { noteOf } from './use-desk.ts';

const LOOK_EVERY_MS = 4_000;

type Row = BenchQueue['rows'][number];

const isOut = (reply: Reply<unknown>): boolean => reply.kind === 'problem' && reply.problem.kind === 'signed-out';

export function QueueDesk({ initial, who }: { readonly initial: BenchQueue; readonly who: string }): ReactNode {
  const { t } = benchText();
  const [queue, setQueue] = useState(initial);
  const [note, setNote] = useState<string | null>(null);
  const [isSignedOut, setSignedOut] = useState(false);
  useEffect(() => {
    const watch = queueWatch();
    const timer = setInterval(() => {
      void watch().then((reply) => {
        if (reply.kind === 'answer') setQueue(reply.body);
        setSignedOut(isOut(reply));
        setNote(reply.kind === 'unreachable' ? t('queue-offline') : reply.kind === 'problem' ? problemWords(reply.problem) : null);
      });
    }, LOOK_EVERY_MS);
    return () => clearInterval(timer);
  }, [t]);

  const tell = (told: string | null, isOut: boolean): void => {
    setNote(told);
    setSignedOut(isOut);
  };
  const inHand = queue.rows.filter((row) => row.stage === 'claimed' || row.stage === 'mixing');
  const waiting = queue.rows.filter((row) => row.stage === 'placed');
  const mine = inHand.find((row) => row.isMine);
  const next = mine ?? waiting.find((row) => row.stops.length === 0) ?? waiting[0];
  const others = queue.rows.filter((row) => row !== next);
  const of = (...stages: readonly Row['stage'][]): readonly Row[] => others.filter((row) => stages.includes(row.stage));
  return (
    <BenchFrame word={t('bench')} place={queue.shopName} skip={t('skip-queue')} end={<SignOut who={who} />}>
      <div className={styles.queue}>
        <div className={styles.queueMain}>
          {note !== null && <Notice tone="care" role="alert" title={note} {...(isSignedOut && { end: <SignInAgain /> })} />}
          {next ? <NextOrder row={next} zone={queue.zone} isMine={next === mine} onNote={tell} /> : <Nothing />}
        </div>
        <div className={styles.side}>
          <div className={styles.lists}>
            <Rows head="queue-then" rows={of('placed')} zone={queue.zone} end />
            <Rows head="queue-in-hand" rows={of('claimed', 'mixing')} zone={queue.zone} />
            <Rows head="queue-ready" rows={of('ready')} zone={queue.zone} />
            <Rows head="queue-held" rows={of('held', 'jar-held')} zone={queue.zone} />
          </div>
          <Chips queue={queue} />
        </div>
      </div>
    </BenchFrame>
  );
}

function SignOut({ who }: { readonly who: string }): ReactNode {
  const { t } = benchText();
  const leave = async (): Promise<void> => {
    await signOut();
    window.location.assign('/sign-in');
  };
  return (
    <>
      <span>{who}</span>
      <button type="button" className={styles.leave} onClick={() => void leave()}>
        {t('sign-out')}
      </button>
    </>
  );
}

/** Signs that fit two lines in the large size. */
const LONG_NAME = 34;

const coreLayers = (row: Row): readonly CoreLayer[] =>
  row.layers.map((layer) => ({ name: layer.name, sharePpm: layer.sharePpm, ...layerOf(layer) }));

function NextOrder(props: {
  readonly row: Row;
  readonly zone: string;
  readonly isMine: boolean;
  readonly onNote: (note: string | null, isSignedOut: boolean) => void;
}): ReactNode {
  const { row, zone, isMine, onNote } = props;
  const { t, target, time } = benchText();
  const take = async (): Promise<void> => {
    const reply = await claim({ requestKey: newRequestKey(), orderId: row.orderId });
    if (reply.kind === 'answer' && reply.body.ok) return window.location.assign(`/bench/order/${row.orderId}`);
    onNote(noteOf(reply), isOut(reply));
  };
  return (
    <section className={styles.next} aria-labelledby="next">
      <CoreColumn layers={coreLayers(row)} width={120} frame="none" />
      <div className={styles.nextText}>
        <p className="type-label type-second">
          {isMine ? t('queue-mine') : t('queue-next', { time: time(instantMs(row.placedAtMs), zone) })}
        </p>
        <Digits look="code" text={row.shortCode} />
        <h1 id="next" className={classNames(styles.nextName, row.name.length > LONG_NAME && styles.nextLong)}>
          {row.name}
        </h1>
        <dl className={styles.facts}>
          <dt className="type-second">{t('queue-jar')}</dt>
          <dd className="type-strong">{target(massUg(row.netUg))}</dd>
          <dt className="type-second">{t('queue-steps')}</dt>
          <dd className="type-strong">{t('queue-steps-value', { weighings: row.weighingsCount, checks: row.checksCount })}</dd>
          <dt className="type-second">{t('queue-wear')}</dt>
          <dd className="type-strong">{t(row.hasDust ? 'queue-wear-dust' : 'queue-wear-none')}</dd>
        </dl>
        {row.stops.length > 0 && <StateWord tone="stop">{t('queue-stopped', { reasons: row.stops.join('; ') })}</StateWord>}
        {isMine ? (
          <ButtonLink kind="primary" iconEnd="arrow-end" wide href={`/bench/order/${row.orderId}`}>
            {t('queue-go-on')}
          </ButtonLink>
        ) : (
          <span className={styles.takes}>
            <ButtonLink kind="quiet" size="small" href={`/bench/order/${row.orderId}`}>
              {t('queue-open')}
            </ButtonLink>
            <ButtonLink kind="quiet" size="small" icon="printer" href={`/bench/print/card/${row.orderId}`} target="_blank">
              {t('print-card')}
            </ButtonLink>
            <Button kind="primary" iconEnd="arrow-end" wide onClick={() => void take()}>
              {t('queue-take')}
            </Button>
          </span>
        )}
      </div>
    </section>
  );
}

function Nothing(): ReactNode {
  const { t } = benchText();
  return (
    <section className={styles.nothing}>
      <JarDrawing width={190} height={210} />
      <h1 className="type-title">{t('queue-empty')}</h1>
      <p>{t('queue-empty-note')}</p>
    </section>
  );
}

function Rows(props: { readonly head: BenchKey; readonly rows: readonly Row[]; readonly zone: string; readonly end?: boolean }): ReactNode {
  const { head, rows, zone, end } = props;
  const { t, time } = benchText();
  if (rows.length === 0) return null;
  return (
    <section>
      <SectionHead title={t(head)} {...(end && { end: t('queue-ordered') })} />
      <RuledList
        rows={rows.map(
          (row): RuledRow => ({
            id: row.orderId,
            sign: <CoreColumn layers={coreLayers(row)} width={40} height={72} />,
            title: (
              <a className={styles.rowLink} href={`/bench/order/${row.orderId}`}>
                {row.shortCode} {row.name}
              </a>
            ),
            note: <RowNote row={row} />,
            end: time(instantMs(row.placedAtMs), zone),
          }),
        )}
      />
    </section>
  );
}

function RowNote({ row }: { readonly row: Row }): ReactNode {
  const { t, target } = benchText();
  const net = target(massUg(row.netUg));
  if (row.stops.length > 0) return <StateWord tone="stop">{t('queue-stopped', { reasons: row.stops.join('; ') })}</StateWord>;
  if (row.stage === 'held') return <StateWord tone="care">{t('queue-row-held', { net, why: row.heldBecause ?? '' })}</StateWord>;
  if (row.stage === 'jar-held') return <StateWord tone="care">{t('queue-row-jar-held', { net })}</StateWord>;
  if (row.stage === 'ready') return t('queue-row-ready', { net });
  if (row.by !== null) return t('queue-row-by', { net, who: row.by });
  return t(row.isOfOlderEdition ? 'queue-row-older' : 'queue-row', { net });
}

function Chips({ queue }: { readonly queue: BenchQueue }): ReactNode {
  const { t, target } = benchText();
  return (
    <section className={styles.chips}>
      {queue.scales.length === 0 && <Chip isOk={false} text={t('chip-no-scale')} />}
      {queue.scales.map((scale) => (
        <Chip
          key={scale.code}
          isOk={scale.isFit}
          text={
            scale.isFit
              ? t('chip-scale-ok', { code: scale.code, step: target(massUg(scale.stepUg)) })
              : t('chip-scale-open', { code: scale.code })
          }
          href="/bench/fitness"
        />
      ))}
      <Chip isOk={queue.isMeterFit} text={t(queue.isMeterFit ? 'chip-meter-ok' : 'chip-meter-open')} href="/bench/fitness" />
      <Chip
        isOk={queue.editionNo !== null}
        text={queue.editionNo === null ? t('chip-no-edition') : t('chip-edition', { no: queue.editionNo })}
      />
    </section>
  );
}

const Chip = ({ isOk, text, href }: { readonly isOk: boolean; readonly text: string; readonly href?: string }): ReactNode => (
  <p className={isOk ? styles.chip : styles.chipOpen}>
    <StateWord tone={isOk ? 'ok' : 'care'}>{!isOk && href ? <a href={href}>{text}</a> : text}</StateWord>
  </p>
);
