// One flow to be run, as JSON, so that a child that is killed and the parent that asks again run the same.
import type { Flow, FlowActor } from '#app/_flows/flow.ts';
import type { OrderAsked } from '#app/_flows/place-order.ts';
import { placeOrder } from '#app/_flows/place-order.ts';
import type { ReadingAsked } from '#app/_flows/record-reading.ts';
import { recordReading } from '#app/_flows/record-reading.ts';
import { makeOpenEditions } from '#app/_server/open-editions.ts';
import { sha256 } from '#app/_server/services.ts';
import type { ShopDb } from '#db/connection.ts';
import { later, numberedIds } from '#test/support/shop-facts.ts';

export type KillJob = { readonly actor: FlowActor } & (
  | { readonly flow: 'place-order'; readonly asked: OrderAsked }
  | { readonly flow: 'record-reading'; readonly asked: ReadingAsked }
);

/** What the flow says; the same ids each time, so that two runs can be compared row by row. */
export function runJob(db: ShopDb, job: KillJob): unknown {
  const flow: Flow = { db, now: later(3), newId: numberedIds(500_000), sha256, actor: job.actor, editions: makeOpenEditions() };
  return job.flow === 'place-order' ? placeOrder(flow, job.asked) : recordReading(flow, job.asked);
}
