// Evidence files by the hash of their bytes, which lie in the data folder.
import { asc, eq } from 'drizzle-orm';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { evidenceFile } from './schema-shop.ts';

export type EvidenceFile = Row<typeof evidenceFile>;

const bySha256 = prepared((orm) =>
  orm
    .select()
    .from(evidenceFile)
    .where(eq(evidenceFile.sha256, given('sha256')))
    .prepare(),
);
const all = prepared((orm) => orm.select().from(evidenceFile).orderBy(asc(evidenceFile.atMs)).prepare());

export const insertEvidenceFile: (tx: Writing, row: EvidenceFile) => void = inserting(evidenceFile);
export const findEvidenceFile = (tx: Reading, sha256: string): EvidenceFile | undefined => bySha256(tx).get({ sha256 });
export const listEvidenceFiles = (tx: Reading): readonly EvidenceFile[] => all(tx).all();
