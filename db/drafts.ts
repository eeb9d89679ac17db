// The one draft of the rulebook, as a line of revisions.
import { desc, eq } from 'drizzle-orm';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { draftRevision } from './schema-editions.ts';
import { sha256 } from './sha256.ts';

export type DraftRevision = Row<typeof draftRevision>;
export type DraftHead = Omit<DraftRevision, 'document'>;

const headColumns = {
  revisionNo: draftRevision.revisionNo,
  parentRevisionNo: draftRevision.parentRevisionNo,
  sha256: draftRevision.sha256,
  byAccountId: draftRevision.byAccountId,
  changed: draftRevision.changed,
  atMs: draftRevision.atMs,
};

const latest = prepared((orm) => orm.select().from(draftRevision).orderBy(desc(draftRevision.revisionNo)).limit(1).prepare());
const byNo = prepared((orm) =>
  orm
    .select()
    .from(draftRevision)
    .where(eq(draftRevision.revisionNo, given('revisionNo')))
    .prepare(),
);
const heads = prepared((orm) =>
  orm.select(headColumns).from(draftRevision).orderBy(desc(draftRevision.revisionNo)).limit(given('mostCount')).prepare(),
);
const insert = inserting(draftRevision);

export const findLatestDraft = (tx: Reading): DraftRevision | undefined => latest(tx).get();
export const findDraft = (tx: Reading, revisionNo: number): DraftRevision | undefined => byNo(tx).get({ revisionNo });

/** The latest revisions without their documents, newest first. */
export const listDrafts = (tx: Reading, mostCount: number): readonly DraftHead[] => heads(tx).all({ mostCount });

/** What was edited is no longer the newest: somebody else saved meanwhile. */
export interface DraftMoved {
  readonly kind: 'draft-moved';
  readonly newestRevisionNo: number;
}

/** Saves canonical JSON text as the child of the revision it was edited from (null for the very first). */
export function saveDraft(tx: Writing, draft: Omit<DraftRevision, 'revisionNo' | 'sha256'>): Result<DraftHead, DraftMoved> {
  const newestRevisionNo = findLatestDraft(tx)?.revisionNo ?? 0;
  if ((draft.parentRevisionNo ?? 0) !== newestRevisionNo) return refuse({ kind: 'draft-moved', newestRevisionNo });
  const { document, ...rest } = draft;
  const head = { ...rest, revisionNo: newestRevisionNo + 1, sha256: sha256(document) };
  insert(tx, { ...head, document });
  return accept(head);
}
