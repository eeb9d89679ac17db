// From draft to edition: the gate, the freeze, the signature. What follows for open orders happens in the same transaction.

import type { Reading, Writing } from '#db/connection.ts';
import { findLatestDraft, listDrafts } from '#db/drafts.ts';
import type { EditionHead } from '#db/editions.ts';
import { findNewestEdition, insertEdition, insertEditionSignature, listEditions } from '#db/editions.ts';
import { readShop } from '#db/shop.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { draftText, editionText } from '#lib/edition/canonical.ts';
import type { DiffLine } from '#lib/edition/diff.ts';
import { diffRulebooks } from '#lib/edition/diff.ts';
import type { Gate } from '#lib/edition/publish-gate.ts';
import { publishGate, servedDraft } from '#lib/edition/publish-gate.ts';
import { checkRulebook } from '#lib/rulebook/check-rulebook.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { InstantMs, LocalDay } from '#lib/units/time.ts';
import { localDayIn } from '#lib/units/time.ts';
import { latestDraft } from './change-draft.ts';
import { newestEdition } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import { record, staffOf } from './flow.ts';
import { rejudgeOpenOrders } from './rejudge-open-orders.ts';

export interface PublishOrder {
  readonly revisionNo: number;
  /** Exact count of what the draft permits, made for the very document with this hash. */
  readonly counted: { readonly sha256: string; readonly variantsCount: number };
  readonly lookedAt: readonly string[];
  readonly reason: string;
  /** Null: at once. */
  readonly effectiveAtMs: InstantMs | null;
}

export type PublishRefusal =
  | { readonly kind: 'no-draft' }
  | { readonly kind: 'draft-moved'; readonly newestRevisionNo: number }
  /** The same request came twice, or somebody else was quicker. */
  | { readonly kind: 'already-published'; readonly editionNo: number }
  | { readonly kind: 'not-counted' }
  | { readonly kind: 'effective-in-the-past' }
  | { readonly kind: 'gate-closed'; readonly gate: Gate };

/** What the draft would publish, for whoever counts it off this thread, and the hash of the draft. Null before anything was imported. */
export function draftToCount(flow: Flow): { readonly document: string; readonly sha256: string; readonly day: LocalDay } | null {
  return flow.db.read((tx) => {
    const draft = latestDraft(tx, flow);
    if (!draft) return null;
    const document = draftText(servedDraft(draft.book.rulebook));
    return { document, sha256: draft.head.sha256, day: localDayIn(readShop(tx).zone, flow.now) };
  });
}

/** Freezes the draft as the next edition. */
export function publishEdition(flow: Flow, order: PublishOrder): Result<EditionHead, PublishRefusal> {
  const approverId = staffOf(flow).accountId;
  return flow.db.write((tx): Result<EditionHead, PublishRefusal> => {
    const draft = latestDraft(tx, flow);
    if (!draft) return refuse({ kind: 'no-draft' });
    if (draft.head.revisionNo !== order.revisionNo) return refuse({ kind: 'draft-moved', newestRevisionNo: draft.head.revisionNo });
    const newest = findNewestEdition(tx);
    if (newest?.fromRevisionNo === order.revisionNo) return refuse({ kind: 'already-published', editionNo: newest.editionNo });
    if (draft.head.sha256 !== order.counted.sha256) return refuse({ kind: 'not-counted' });
    if (order.effectiveAtMs !== null && order.effectiveAtMs < flow.now) return refuse({ kind: 'effective-in-the-past' });
    const { gate, authorIds } = askGate(tx, flow, { ...order, variantsCount: order.counted.variantsCount, draft: draft.book.rulebook });
    const [authorAccountId] = authorIds;
    if (gate.open.length > 0 || authorAccountId === undefined) return refuse({ kind: 'gate-closed', gate });
    const effectiveAtMs = order.effectiveAtMs ?? flow.now;
    const replaced = replacedBy(tx, effectiveAtMs).map((edition) => edition.editionNo);
    const head = insertEdition(tx, {
      documentOf: (editionNo) => editionText(servedDraft(draft.book.rulebook), editionNo),
      variantsCount: BigInt(order.counted.variantsCount),
      publishedAtMs: flow.now,
      effectiveAtMs,
      authorAccountId,
      approverAccountId: approverId,
      fromRevisionNo: draft.head.revisionNo,
    });
    sign(tx, flow, { head, order, replaced });
    rejudgeOpenOrders(tx, flow);
    return accept(head);
  });
}

interface Signed {
  readonly head: EditionHead;
  readonly order: PublishOrder;
  readonly replaced: readonly number[];
}

function sign(tx: Writing, flow: Flow, { head, order, replaced }: Signed): void {
  const { editionNo, hash, effectiveAtMs } = head;
  insertEditionSignature(tx, {
    editionHash: hash,
    accountId: head.approverAccountId,
    meaning: `I approve edition ${editionNo} for sale. ${order.reason}`.trim(),
    atMs: flow.now,
  });
  record(tx, flow, {
    kind: 'edition-published',
    body: { editionNo, hash, variantsCount: order.counted.variantsCount, effectiveAtMs, replacesEditionNos: [...replaced] },
    editionHash: hash,
  });
}

/** Editions that wait for their hour and will never come into force once a new one does at the given time. */
export const replacedBy = (tx: Reading, effectiveAtMs: InstantMs): readonly EditionHead[] =>
  listEditions(tx).filter((edition) => edition.effectiveAtMs >= effectiveAtMs);

interface GateAsked {
  readonly draft: Rulebook;
  readonly variantsCount: number;
  readonly lookedAt: readonly string[];
  readonly reason: string;
  readonly effectiveAtMs: InstantMs | null;
}

interface GateAnswer {
  readonly gate: Gate;
  readonly diff: readonly DiffLine[];
  /** Everybody who saved a revision since the last edition, latest first. */
  readonly authorIds: readonly string[];
}

/** The gate as it stands now. The draft is compared with the newest edition, in force or not: what waits was looked at by its own signer. */
export function askGate(tx: Reading, flow: Flow, { draft, variantsCount, lookedAt, reason, effectiveAtMs }: GateAsked): GateAnswer {
  const newest = newestEdition(tx, flow);
  const diff = newest ? diffRulebooks(newest.book.rulebook, servedDraft(draft)) : [];
  const authorIds = authorsSince(tx, newest?.head.fromRevisionNo ?? 0);
  const day = localDayIn(readShop(tx).zone, flow.now);
  const gate = publishGate({
    draft,
    faultsCount: checkRulebook(draft, day).filter((fault) => fault.weight === 'error').length,
    diff: newest ? diff : firstEdition(draft),
    variantsCount,
    authorIds,
    approverId: flow.actor.kind === 'staff' ? flow.actor.accountId : '',
    lookedAt,
    reason,
    day,
    replacesEditionNos: replacedBy(tx, effectiveAtMs ?? flow.now).map((edition) => edition.editionNo),
  });
  return { gate, diff, authorIds };
}

/** Against nothing, everything is new: one line stands for the whole document. */
const firstEdition = (draft: Rulebook): readonly DiffLine[] => [
  { key: 'first-edition', section: 'code', rowId: null, kind: 'added', field: null, before: null, after: draft.code, effect: 'offer' },
];

/** Everybody who saved a revision after this one, latest first. */
export function authorsSince(tx: Reading, revisionNo: number): readonly string[] {
  const newest = findLatestDraft(tx)?.revisionNo ?? 0;
  const revisions = listDrafts(tx, Math.max(0, newest - revisionNo));
  return [...new Set(revisions.map((revision) => revision.byAccountId))];
}
