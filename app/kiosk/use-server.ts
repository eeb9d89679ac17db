'use client';
// What a visit asks of the server, and what it does while the server is away: it keeps everything, asks for health every few seconds,
// and goes on by itself. An order that was sent and not answered is sent again with its key.
import { useCallback, useEffect, useRef, useState } from 'react';
import { readHealth } from '#app/_client/kiosk-health.ts';
import { findMasks } from '#app/_client/kiosk-masks.ts';
import { placeOrder } from '#app/_client/kiosk-order.ts';
import { newRequestKey } from '#app/_client/request-key.ts';
import type { Reply } from '#app/_client/send.ts';
import { pageOf } from '#lib/answers/visit.ts';
import type { KioskShow } from '#lib/contracts/kiosk-show.ts';
import type { KioskAction, KioskVisitState, Talk, Wish } from './kiosk-props.ts';
import { masksOf } from './kiosk-props.ts';
import { kioskText } from './kiosk-text.ts';
import { maskTitle } from './mask-words.ts';

const RETRY_MS = 5_000;
const QUIET: Talk = { kind: 'quiet' };

export interface Asker {
  readonly show: KioskShow;
  readonly counterCode: string;
  readonly visit: KioskVisitState;
  readonly dispatch: (action: KioskAction) => void;
  /** Another edition is in force: what to show from now on. */
  readonly adopt: (show: KioskShow) => void;
}

export interface Server {
  readonly talk: Talk;
  readonly order: () => void;
  /** Puts aside what was said of the last question. */
  readonly forget: () => void;
  /** The visit is over: an order of it that was not answered is nobody's business any more. */
  readonly leave: () => void;
}

/** An order that was sent keeps its key for as long as it is the same order of the same visit. */
interface Sent {
  readonly content: string;
  readonly requestKey: string;
}

export function useServer(asker: Asker): Server {
  const [talk, setTalk] = useState<Talk>(QUIET);
  const latest = useRef(asker);
  latest.current = asker;
  const sent = useRef<Sent | null>(null);

  const ask = useCallback(async (wish: Wish): Promise<void> => {
    setTalk({ kind: 'asking', wish });
    setTalk(await (wish === 'masks' ? askMasks(latest) : askOrder(latest, sent)));
  }, []);

  const wantsMasks = pageOf(asker.visit).kind === 'results' && asker.visit.found === null;
  useEffect(() => {
    if (wantsMasks && talk.kind === 'quiet') void ask('masks');
  }, [wantsMasks, talk.kind, ask]);

  const waitsFor = talk.kind === 'offline' ? talk.wish : null;
  useEffect(() => {
    if (waitsFor === null) return undefined;
    const timer = setInterval(() => {
      void readHealth().then((health) => (health ? ask(waitsFor) : undefined));
    }, RETRY_MS);
    return () => clearInterval(timer);
  }, [waitsFor, ask]);

  const order = useCallback(() => void ask('order'), [ask]);
  const forget = useCallback(() => setTalk(QUIET), []);
  const leave = useCallback(() => {
    sent.current = null;
    setTalk(QUIET);
  }, []);
  return { talk, order, forget, leave };
}

type Latest = { readonly current: Asker };

/** A fresh copy of the visit's part of every call, in the form of the wire. */
const visitFields = ({ show, visit }: Asker) => ({
  editionHash: show.editionHash,
  lang: show.lang,
  jarSizeId: show.jarSizes[0]?.id ?? '',
  answers: visit.answers.map(({ questionId, optionIds }) => ({ questionId, optionIds: [...optionIds] })),
});

async function askMasks(latest: Latest): Promise<Talk> {
  const asked = latest.current;
  const reply = await findMasks(visitFields(asked));
  // Whoever changed an answer or the language meanwhile asks anew.
  if (latest.current.visit.answers !== asked.visit.answers || latest.current.show.lang !== asked.show.lang) return QUIET;
  if (reply.kind !== 'answer') return awayOr(reply, 'masks');
  if (reply.body.ok) latest.current.dispatch({ kind: 'found', found: reply.body });
  else if (reply.body.refusal.kind === 'edition-moved') latest.current.adopt(reply.body.refusal.show);
  else return { kind: 'problem', detail: reply.body.refusal.kind };
  return QUIET;
}

async function askOrder(latest: Latest, sent: { current: Sent | null }): Promise<Talk> {
  const asked = latest.current;
  const masks = masksOf(asked.visit);
  const mask = masks.find((one) => one.token === asked.visit.chosenToken);
  if (!mask) return QUIET;
  const { tickedIds, hasReadAll } = asked.visit;
  const { counterCode } = asked;
  const order = { ...visitFields(asked), token: mask.token, counterCode, tickedCautionIds: [...tickedIds].sort(), hasReadAll };
  const content = JSON.stringify(order);
  const { requestKey } = sent.current?.content === content ? sent.current : { requestKey: newRequestKey() };
  sent.current = { content, requestKey };
  const reply = await placeOrder({ ...order, requestKey });
  // Whoever left meanwhile, or chose anew, is not shown this answer.
  if (latest.current.visit.answers !== asked.visit.answers || latest.current.visit.chosenToken !== asked.visit.chosenToken) return QUIET;
  if (reply.kind !== 'answer') return awayOr(reply, 'order');
  if (!reply.body.ok) return refusedOrder(latest, reply.body.refusal);
  const { ok: _, ...receipt } = reply.body;
  const title = maskTitle(mask, masks, kioskText(asked.show.lang));
  const picture = { layers: mask.layers, colour: mask.colour };
  const notOnJar = mask.cautions.filter((caution) => !caution.isOnJar);
  latest.current.dispatch({ kind: 'ordered', receipt: { ...receipt, title, picture, notOnJar } });
  return QUIET;
}

type OrderRefusal = Extract<Extract<Awaited<ReturnType<typeof placeOrder>>, { kind: 'answer' }>['body'], { ok: false }>['refusal'];

function refusedOrder(latest: Latest, refusal: OrderRefusal): Talk {
  if (refusal.kind === 'no-longer-offered') return { kind: 'pulled' };
  if (refusal.kind !== 'edition-moved') return { kind: 'problem', detail: refusal.kind };
  latest.current.adopt(refusal.show);
  return refusal.changed.includes('mask') ? { kind: 'pulled' } : QUIET;
}

/** A server that is away or cannot store just now is asked again; anything else is for staff, with the number of the fault. */
function awayOr(reply: Exclude<Reply<unknown>, { kind: 'answer' }>, wish: Wish): Talk {
  if (reply.kind === 'unreachable' || reply.problem.isRetryable) return { kind: 'offline', wish };
  return { kind: 'problem', detail: reply.problem.faultId ?? reply.problem.kind };
}
