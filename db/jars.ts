// A jar's facts at the bench. Each new one gets the jar's next number, and what it took from a lot leaves that lot in the same breath.
import { asc, eq, max } from 'drizzle-orm';
import { massDifferenceUg } from '#lib/units/mass.ts';
import type { LocalDay } from '#lib/units/time.ts';
import type { Reading, Writing } from './connection.ts';
import type { JarFacts } from './jar-facts.ts';
import { listJarFacts, lotFactsOf, takenByLotRecorded } from './jar-facts.ts';
import { massTakenByLot } from './lot-account.ts';
import { insertLotUse } from './lots.ts';
import { findOrderByJar } from './orders.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { freeReservations } from './reservations.ts';
import { clearance, jar, jarWaste, mend, reading, readingVoid } from './schema-bench.ts';
import { benchCheck, stepDone } from './schema-release.ts';

export type Jar = Row<typeof jar>;
export type Clearance = Row<typeof clearance>;
export type ReadingRow = Row<typeof reading>;
export type ReadingVoid = Row<typeof readingVoid>;
export type JarWaste = Row<typeof jarWaste>;
export type Mend = Row<typeof mend>;
export type StepDone = Row<typeof stepDone>;
export type BenchCheck = Row<typeof benchCheck>;

const byCode = prepared((orm) =>
  orm
    .select()
    .from(jar)
    .where(eq(jar.batchCode, given('batchCode')))
    .prepare(),
);
const lastNo = prepared((orm) =>
  orm
    .select({ batchNo: max(jar.batchNo) })
    .from(jar)
    .where(eq(jar.localDay, given('day')))
    .prepare(),
);
const clearances = prepared((orm) =>
  orm
    .select()
    .from(clearance)
    .where(eq(clearance.orderId, given('orderId')))
    .orderBy(asc(clearance.atMs))
    .prepare(),
);
const steps = prepared((orm) =>
  orm
    .select()
    .from(stepDone)
    .where(eq(stepDone.jarCode, given('jarCode')))
    .orderBy(asc(stepDone.atMs))
    .prepare(),
);
const checks = prepared((orm) =>
  orm
    .select()
    .from(benchCheck)
    .where(eq(benchCheck.jarCode, given('jarCode')))
    .orderBy(asc(benchCheck.atMs), asc(benchCheck.id))
    .prepare(),
);

export const insertJar: (tx: Writing, row: Jar) => void = inserting(jar);
export const insertClearance: (tx: Writing, row: Clearance) => void = inserting(clearance);
export const insertStepDone: (tx: Writing, row: StepDone) => void = inserting(stepDone);
export const insertBenchCheck: (tx: Writing, row: BenchCheck) => void = inserting(benchCheck);

export const findJar = (tx: Reading, batchCode: string): Jar | undefined => byCode(tx).get({ batchCode });
/** The running number that the next jar of a day gets. */
export const nextBatchNo = (tx: Reading, day: LocalDay): number => (lastNo(tx).get({ day })?.batchNo ?? 0) + 1;
export const listClearances = (tx: Reading, orderId: string): readonly Clearance[] => clearances(tx).all({ orderId });
export const listStepsDone = (tx: Reading, jarCode: string): readonly StepDone[] => steps(tx).all({ jarCode });
export const listBenchChecks = (tx: Reading, jarCode: string): readonly BenchCheck[] => checks(tx).all({ jarCode });

const insertReading = inserting(reading);
const insertVoid = inserting(readingVoid);
const insertWaste = inserting(jarWaste);
const insertMend = inserting(mend);

/** Makes the ids of the rows that go with a fact. */
type NewId = () => string;
type Unnumbered<T> = Omit<T, 'factNo'>;

/** Stores a reading, charges its lot and frees what the order had reserved there. @returns its number in the jar */
export function recordReading(tx: Writing, row: Unnumbered<ReadingRow>, newId: NewId): number {
  const factNo = nextFactNo(tx, row.jarCode);
  insertReading(tx, { ...row, factNo });
  settleLots(tx, { jarCode: row.jarCode, byAccountId: row.byAccountId, atMs: row.atMs, newId });
  const order = findOrderByJar(tx, row.jarCode)?.order;
  if (order) freeReservations(tx, { orderId: order.id, lotId: row.lotId, reason: 'used', atMs: row.atMs });
  return factNo;
}

export function recordReadingVoid(tx: Writing, row: Unnumbered<ReadingVoid>, newId: NewId): number {
  const factNo = nextFactNo(tx, row.jarCode);
  insertVoid(tx, { ...row, factNo });
  settleLots(tx, { jarCode: row.jarCode, byAccountId: row.byAccountId, atMs: row.atMs, newId });
  return factNo;
}

export function recordJarWaste(tx: Writing, row: Unnumbered<JarWaste>, newId: NewId): number {
  const factNo = nextFactNo(tx, row.jarCode);
  insertWaste(tx, { ...row, factNo });
  settleLots(tx, { jarCode: row.jarCode, byAccountId: row.byAccountId, atMs: row.atMs, newId });
  return factNo;
}

export function recordMend(tx: Writing, row: Unnumbered<Mend>, newId: NewId): number {
  const factNo = nextFactNo(tx, row.jarCode);
  insertMend(tx, { ...row, factNo });
  settleLots(tx, { jarCode: row.jarCode, byAccountId: row.byAccountId, atMs: row.atMs, newId });
  return factNo;
}

function nextFactNo(tx: Reading, jarCode: string): number {
  const { readings, voids, wastes, mends } = listJarFacts(tx, jarCode);
  return readings.length + voids.length + wastes.length + mends.length + 1;
}

type Settling = Pick<ReadingRow, 'jarCode' | 'byAccountId' | 'atMs'> & { readonly newId: NewId };

/** Brings each lot's uses by this jar to what the jar's facts now say. */
function settleLots(tx: Writing, { jarCode, byAccountId, atMs, newId }: Settling): void {
  const facts: JarFacts = listJarFacts(tx, jarCode);
  const recorded = takenByLotRecorded(tx, jarCode);
  for (const [lotId, takenUg] of massTakenByLot(lotFactsOf(facts))) {
    const leftMassUg = massDifferenceUg(takenUg - (recorded.get(lotId) ?? 0));
    if (leftMassUg !== 0)
      insertLotUse(tx, { id: newId(), lotId, kind: 'use', leftMassUg, leftCount: null, reason: 'jar', jarCode, byAccountId, atMs });
  }
}
