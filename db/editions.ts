// Published editions: numbered, frozen, named by the hash of their canonical bytes.
import { asc, desc, eq, lte } from 'drizzle-orm';
import type { InstantMs } from '#lib/units/time.ts';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { edition, editionSignature } from './schema-editions.ts';
import { sha256 } from './sha256.ts';

export type Edition = Row<typeof edition>;
export type EditionHead = Omit<Edition, 'document'>;
export type EditionSignature = Row<typeof editionSignature>;

const headColumns = {
  editionNo: edition.editionNo,
  hash: edition.hash,
  variantsCount: edition.variantsCount,
  publishedAtMs: edition.publishedAtMs,
  effectiveAtMs: edition.effectiveAtMs,
  authorAccountId: edition.authorAccountId,
  approverAccountId: edition.approverAccountId,
  fromRevisionNo: edition.fromRevisionNo,
};

const inForce = prepared((orm) =>
  orm
    .select(headColumns)
    .from(edition)
    .where(lte(edition.effectiveAtMs, given('atMs')))
    .orderBy(desc(edition.editionNo))
    .limit(1)
    .prepare(),
);
const byHash = prepared((orm) =>
  orm
    .select(headColumns)
    .from(edition)
    .where(eq(edition.hash, given('hash')))
    .prepare(),
);
const document = prepared((orm) =>
  orm
    .select({ document: edition.document })
    .from(edition)
    .where(eq(edition.hash, given('hash')))
    .prepare(),
);
const heads = prepared((orm) => orm.select(headColumns).from(edition).orderBy(desc(edition.editionNo)).prepare());
const signatures = prepared((orm) =>
  orm
    .select()
    .from(editionSignature)
    .where(eq(editionSignature.editionHash, given('hash')))
    .orderBy(asc(editionSignature.atMs))
    .prepare(),
);
const insert = inserting(edition);

/**
 * The edition that decides at an instant: the highest number among those whose hour has come, so that one which waited never undoes a
 * younger one. Undefined before the first.
 */
export const findEditionInForce = (tx: Reading, atMs: InstantMs): EditionHead | undefined => inForce(tx).get({ atMs });
export const findEdition = (tx: Reading, hash: string): EditionHead | undefined => byHash(tx).get({ hash });

/** The canonical JSON of an edition. Keep what is made from it by hash: it never changes. */
export const findEditionDocument = (tx: Reading, hash: string): string | undefined => document(tx).get({ hash })?.document;

/** Every edition without its document, newest first. */
export const listEditions = (tx: Reading): readonly EditionHead[] => heads(tx).all();

/** The one with the highest number, in force or waiting for its hour. */
export const findNewestEdition = (tx: Reading): EditionHead | undefined => listEditions(tx)[0];

export interface NewEdition extends Omit<Edition, 'editionNo' | 'hash' | 'document'> {
  /** The bytes to freeze, once the number that stands in them is known. */
  readonly documentOf: (editionNo: number) => string;
}

/** Freezes a document. @returns its head, with the next number and the hash of the document */
export function insertEdition(tx: Writing, { documentOf, ...rest }: NewEdition): EditionHead {
  const editionNo = (findNewestEdition(tx)?.editionNo ?? 0) + 1;
  const text = documentOf(editionNo);
  const head = { ...rest, editionNo, hash: sha256(text) };
  insert(tx, { ...head, document: text });
  return head;
}

export const insertEditionSignature: (tx: Writing, row: EditionSignature) => void = inserting(editionSignature);
export const listEditionSignatures = (tx: Reading, hash: string): readonly EditionSignature[] => signatures(tx).all({ hash });
