'use client';
// Where an order stands, and the one way to change it: send an act, show what the server says. Nothing is assumed to have worked.
import { useCallback, useMemo, useRef, useState } from 'react';
import { orderWatch } from '#app/_client/bench-looks.ts';
import { newRequestKey } from '#app/_client/request-key.ts';
import type { Reply } from '#app/_client/send.ts';
import type { BenchOutput, BenchView } from '#lib/contracts/bench-view.ts';
import { benchText } from './bench-text.ts';
import { refusalWords } from './refusal-words.ts';
import { problemWords } from './reply-words.tsx';

export interface Desk {
  readonly view: BenchView;
  /** What to tell the mixer; null: nothing. */
  readonly note: string | null;
  /** The last act was not done because nobody is signed in any more. */
  readonly isSignedOut: boolean;
  readonly isBusy: boolean;
  readonly say: (note: string | null) => void;
  /** Sends an act. True when it was done. */
  readonly act: (call: (requestKey: string) => Promise<Reply<BenchOutput>>) => Promise<boolean>;
  /** Looks again, after something that this page did itself. */
  readonly refresh: () => Promise<void>;
  /** Looks again; what was done meanwhile in other hands or on another page is told. */
  readonly watch: () => Promise<void>;
}

const TRIES_COUNT = 4;
const PAUSE_MS = 1_000;
const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, PAUSE_MS));

export function useDesk(initial: BenchView): Desk {
  const { t } = benchText();
  const [view, setView] = useState(initial);
  const shown = useRef(initial);
  const [note, say] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);
  const [isSignedOut, setSignedOut] = useState(false);
  const running = useRef(false);
  /** Acts so far: a look that began before the last one comes too late. */
  const actsCount = useRef(0);

  const show = useCallback((now: BenchView): void => {
    shown.current = now;
    setView(now);
  }, []);

  const lookAgain = useMemo(() => orderWatch(initial.orderId), [initial.orderId]);
  const newer = useCallback(async (): Promise<BenchView | null> => {
    if (running.current) return null;
    const before = actsCount.current;
    const reply = await lookAgain();
    return reply.kind === 'answer' && reply.body.ok && actsCount.current === before ? reply.body.view : null;
  }, [lookAgain]);
  const refresh = useCallback(async (): Promise<void> => {
    const now = await newer();
    if (now) show(now);
  }, [newer, show]);
  const watch = useCallback(async (): Promise<void> => {
    const now = await newer();
    if (!now) return;
    if (isDoneElsewhere(shown.current, now)) say(t('done-elsewhere'));
    show(now);
  }, [newer, show, t]);

  const act = useCallback<Desk['act']>(
    async (call) => {
      if (running.current) return false;
      running.current = true;
      actsCount.current += 1;
      setBusy(true);
      say(null);
      const reply = await persistently(call, () => say(t('unreachable'))).finally(() => {
        running.current = false;
        setBusy(false);
      });
      setSignedOut(reply.kind === 'problem' && reply.problem.kind === 'signed-out');
      const told = noteOf(reply);
      say(told);
      if (reply.kind === 'answer' && reply.body.ok) show(reply.body.view);
      else if (reply.kind === 'answer') await refresh();
      return told === null;
    },
    [refresh, show, t],
  );
  return { view, note, isSignedOut, isBusy, say, act, refresh, watch };
}

/** What the page is about: one step, or one weighing of it. */
export function stepKey({ doing, stage, batchUg }: Pick<BenchView, 'doing' | 'stage' | 'batchUg'>): string {
  return doing.kind === 'weigh' ? `weigh-${doing.lineNo}-${doing.weighingNo}-${batchUg}` : `${stage}-${doing.kind}`;
}

/** The checks of the day have a page of their own, and their forms look again by themselves. */
export const isDoneElsewhere = (before: BenchView, now: BenchView): boolean =>
  before.isMine &&
  now.isMine &&
  (before.stage === 'claimed' || before.stage === 'mixing') &&
  before.doing.kind !== 'fitness' &&
  stepKey(before) !== stepKey(now);

/** The same act with the same key, so that a reply that got lost does no harm. */
async function persistently(call: (requestKey: string) => Promise<Reply<BenchOutput>>, onSilence: () => void): Promise<Reply<BenchOutput>> {
  const requestKey = newRequestKey();
  const attempt = async (triesLeft: number): Promise<Reply<BenchOutput>> => {
    const reply = await call(requestKey);
    if (reply.kind !== 'unreachable' || triesLeft === 0) return reply;
    onSilence();
    await pause();
    return attempt(triesLeft - 1);
  };
  return attempt(TRIES_COUNT);
}

/** What a reply leaves to be told; null: it was done. */
export function noteOf(reply: Reply<BenchOutput>): string | null {
  const { t } = benchText();
  if (reply.kind === 'unreachable') return t('unreachable');
  if (reply.kind === 'problem') return problemWords(reply.problem);
  return reply.body.ok ? null : refusalWords(reply.body.refusal);
}
