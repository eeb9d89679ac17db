// The end of a jar at the bench: released or held, and what became of a held one.
import { and, asc, eq, isNull, max } from 'drizzle-orm';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { holdDecision, jarRelease, labelPrint } from './schema-release.ts';

export type JarRelease = Row<typeof jarRelease>;
export type HoldDecision = Row<typeof holdDecision>;
export type LabelPrint = Row<typeof labelPrint>;

const byJar = prepared((orm) =>
  orm
    .select()
    .from(jarRelease)
    .where(eq(jarRelease.jarCode, given('jarCode')))
    .prepare(),
);
const decisionOf = prepared((orm) =>
  orm
    .select()
    .from(holdDecision)
    .where(eq(holdDecision.jarCode, given('jarCode')))
    .prepare(),
);
const undecided = prepared((orm) =>
  orm
    .select({ release: jarRelease })
    .from(jarRelease)
    .leftJoin(holdDecision, eq(holdDecision.jarCode, jarRelease.jarCode))
    .where(and(eq(jarRelease.outcome, 'held'), isNull(holdDecision.jarCode)))
    .orderBy(asc(jarRelease.atMs))
    .prepare(),
);
const copies = prepared((orm) =>
  orm
    .select({ copyNo: max(labelPrint.copyNo) })
    .from(labelPrint)
    .where(eq(labelPrint.jarCode, given('jarCode')))
    .prepare(),
);
const insertPrint = inserting(labelPrint);

export const insertRelease: (tx: Writing, row: JarRelease) => void = inserting(jarRelease);
export const insertHoldDecision: (tx: Writing, row: HoldDecision) => void = inserting(holdDecision);
export const findRelease = (tx: Reading, jarCode: string): JarRelease | undefined => byJar(tx).get({ jarCode });
export const findHoldDecision = (tx: Reading, jarCode: string): HoldDecision | undefined => decisionOf(tx).get({ jarCode });

/** Held jars that nobody has decided on, oldest first. */
export const listHeldJars = (tx: Reading): readonly JarRelease[] =>
  undecided(tx)
    .all()
    .map(({ release }) => release);

/** How often the label was printed; the last print has this number. */
export const countLabelPrints = (tx: Reading, jarCode: string): number => copies(tx).get({ jarCode })?.copyNo ?? 0;

/** Notes a print of the label. @returns its number: from 2 on it is a copy and says so */
export function insertLabelPrint(tx: Writing, row: Omit<LabelPrint, 'copyNo'>): number {
  const copyNo = countLabelPrints(tx, row.jarCode) + 1;
  insertPrint(tx, { ...row, copyNo });
  return copyNo;
}
