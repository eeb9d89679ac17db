// One edit of the one draft. Whoever edits an older revision than the newest is told so, and nothing is lost.

import type { Reading } from '#db/connection.ts';
import type { DraftHead, DraftMoved } from '#db/drafts.ts';
import { findLatestDraft, saveDraft } from '#db/drafts.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { draftText } from '#lib/edition/canonical.ts';
import type { BlankWords, NothingToChange } from '#lib/edition/change.ts';
import { applyChange } from '#lib/edition/change.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { checkRulebook } from '#lib/rulebook/check-rulebook.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { SoundnessFault } from '#lib/rulebook/soundness-fault.ts';
import type { AskedChange } from './draft-change.ts';
import { signedChange } from './draft-change.ts';
import type { Flow } from './flow.ts';
import { record, staffOf } from './flow.ts';

export interface OpenDraft {
  readonly head: DraftHead;
  readonly book: Book;
}

/** The newest revision, opened. Null before anything was imported. */
export function latestDraft(tx: Reading, flow: Flow): OpenDraft | null {
  const found = findLatestDraft(tx);
  if (!found) return null;
  const { document, ...head } = found;
  return { head, book: flow.editions.book(head.sha256, () => document) };
}

export type ChangeRefusal = DraftMoved | NothingToChange | BlankWords | { readonly kind: 'no-draft' };

export interface ChangeOrder {
  readonly parentRevisionNo: number;
  readonly change: AskedChange;
}

/** Saves the draft with one change as a new revision. */
export function changeDraft(flow: Flow, { parentRevisionNo, change }: ChangeOrder): Result<DraftHead, ChangeRefusal> {
  return flow.db.write((tx): Result<DraftHead, ChangeRefusal> => {
    const draft = latestDraft(tx, flow);
    if (!draft) return refuse({ kind: 'no-draft' });
    const changed = applyChange(draft.book.rulebook, signedChange(tx, flow, change));
    if (!changed.ok) return changed;
    return save(tx, flow, { rulebook: changed.value, parentRevisionNo, changed: change.kind });
  });
}

export type ImportRefusal = DraftMoved | { readonly kind: 'unsound'; readonly faults: readonly SoundnessFault[] };

/** Puts a whole sound document in the draft's place; null starts the very first draft. Nothing imported is published by itself. */
export function importDraft(
  flow: Flow,
  { parentRevisionNo, rulebook }: { readonly parentRevisionNo: number | null; readonly rulebook: Rulebook },
): Result<DraftHead, ImportRefusal> {
  const faults = checkRulebook(rulebook).filter((fault) => fault.weight === 'error');
  if (faults.length > 0) return refuse({ kind: 'unsound', faults });
  return flow.db.write((tx) => save(tx, flow, { rulebook, parentRevisionNo, changed: 'import' }));
}

interface Revision {
  readonly rulebook: Rulebook;
  readonly parentRevisionNo: number | null;
  readonly changed: string;
}

function save(
  tx: Parameters<typeof saveDraft>[0],
  flow: Flow,
  { rulebook, parentRevisionNo, changed }: Revision,
): Result<DraftHead, DraftMoved> {
  const saved = saveDraft(tx, {
    parentRevisionNo,
    document: draftText(rulebook),
    byAccountId: staffOf(flow).accountId,
    changed,
    atMs: flow.now,
  });
  if (saved.ok)
    record(tx, flow, { kind: 'draft-changed', body: { revisionNo: saved.value.revisionNo, sha256: saved.value.sha256, changed } });
  return saved.ok ? accept(saved.value) : saved;
}
