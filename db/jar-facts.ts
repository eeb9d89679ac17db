// A jar's numbered facts read back: as rows for the record, as the fold of the bench wants them, and as lots see them.
import { and, asc, eq, isNotNull, isNull, sum } from 'drizzle-orm';
import { compareBy } from '#lib/base/compare.ts';
import { assertNever, invariant } from '#lib/base/invariant.ts';
import type { LocalDay } from '#lib/units/time.ts';
import type { BenchFact } from '#lib/weighing/readings.ts';
import type { Reading } from './connection.ts';
import type { LotFact } from './lot-account.ts';
import type { Row } from './query.ts';
import { given, prepared } from './query.ts';
import { jar, jarWaste, lotUse, mend, reading, readingVoid } from './schema-bench.ts';
import { benchCheck } from './schema-release.ts';

/** Each list in order of `factNo`, which is one row of numbers over all four. */
export interface JarFacts {
  readonly readings: readonly Row<typeof reading>[];
  readonly voids: readonly Row<typeof readingVoid>[];
  readonly wastes: readonly Row<typeof jarWaste>[];
  readonly mends: readonly Row<typeof mend>[];
}

const readingsOf = prepared((orm) =>
  orm
    .select()
    .from(reading)
    .where(eq(reading.jarCode, given('jarCode')))
    .orderBy(asc(reading.factNo))
    .prepare(),
);
const voidsOf = prepared((orm) =>
  orm
    .select()
    .from(readingVoid)
    .where(eq(readingVoid.jarCode, given('jarCode')))
    .orderBy(asc(readingVoid.factNo))
    .prepare(),
);
const wastesOf = prepared((orm) =>
  orm
    .select()
    .from(jarWaste)
    .where(eq(jarWaste.jarCode, given('jarCode')))
    .orderBy(asc(jarWaste.factNo))
    .prepare(),
);
const mendsOf = prepared((orm) =>
  orm
    .select()
    .from(mend)
    .where(eq(mend.jarCode, given('jarCode')))
    .orderBy(asc(mend.factNo))
    .prepare(),
);

export const listJarFacts = (tx: Reading, jarCode: string): JarFacts => ({
  readings: readingsOf(tx).all({ jarCode }),
  voids: voidsOf(tx).all({ jarCode }),
  wastes: wastesOf(tx).all({ jarCode }),
  mends: mendsOf(tx).all({ jarCode }),
});

const recorded = prepared((orm) =>
  orm
    .select({ lotId: lotUse.lotId, massUg: sum(lotUse.leftMassUg).mapWith(Number) })
    .from(lotUse)
    .where(and(eq(lotUse.jarCode, given('jarCode')), isNotNull(lotUse.leftMassUg)))
    .groupBy(lotUse.lotId)
    .prepare(),
);

/** Mass per lot that stands as used by a jar, in µg. */
export const takenByLotRecorded = (tx: Reading, jarCode: string): ReadonlyMap<string, number> =>
  new Map(
    recorded(tx)
      .all({ jarCode })
      .map(({ lotId, massUg }) => [lotId, massUg]),
  );

const measured = prepared((orm) =>
  orm
    .select({ jarCode: jar.batchCode })
    .from(jar)
    .innerJoin(benchCheck, and(eq(benchCheck.jarCode, jar.batchCode), eq(benchCheck.kind, 'ph'), eq(benchCheck.hasPassed, true)))
    .innerJoin(reading, eq(reading.jarCode, jar.batchCode))
    .leftJoin(readingVoid, eq(readingVoid.readingId, reading.id))
    .where(and(eq(jar.localDay, given('day')), eq(reading.lotId, given('lotId')), isNull(readingVoid.readingId)))
    .limit(1)
    .prepare(),
);

/** Whether the pH of a jar of that day that holds something of the lot was measured and found right. */
export const isLotPhMeasured = (tx: Reading, lotId: string, day: LocalDay): boolean => measured(tx).get({ lotId, day }) !== undefined;

export function lotFactsOf({ readings, voids, wastes, mends }: JarFacts): readonly LotFact[] {
  const facts: LotFact[] = [
    ...readings.map((row) => ({ ...row, kind: 'reading' as const })),
    ...voids.map((row) => ({ ...row, kind: 'void' as const })),
    ...wastes.map(({ factNo, lotId, massUg }) => ({ kind: 'take' as const, factNo, lotId, massUg })),
    ...mends.flatMap(({ factNo, lotId, massUg }) =>
      lotId === null || massUg === null ? [] : [{ kind: 'take' as const, factNo, lotId, massUg }],
    ),
  ];
  return facts.sort(compareBy((fact) => fact.factNo));
}

/** The facts as the fold of the bench reads them. A discarded jar has no fact of that: its order's view says so. */
export function listBenchFacts(tx: Reading, jarCode: string): readonly BenchFact[] {
  const { readings, voids, wastes, mends } = listJarFacts(tx, jarCode);
  const seqById = new Map(readings.map((row) => [row.id, row.factNo]));
  const facts: BenchFact[] = [
    ...readings.map(({ factNo, lineNo, weighingNo, lotId, massUg }) => ({
      kind: 'reading' as const,
      seq: factNo,
      lineNo,
      weighingNo,
      lotId,
      massUg,
    })),
    ...voids.map(({ factNo, readingId }) => ({ kind: 'void' as const, seq: factNo, voidedSeq: known(seqById.get(readingId)) })),
    ...wastes.map(({ factNo, lineNo, lotId, massUg }) => ({ kind: 'waste' as const, seq: factNo, lineNo, lotId, massUg })),
    ...mends.flatMap(mendFacts),
  ];
  return facts.sort(compareBy((fact) => fact.seq));
}

function mendFacts({ kind, factNo, newBatchMassUg, lines, stockId, lotId, massUg }: Row<typeof mend>): readonly BenchFact[] {
  switch (kind) {
    case 'grow':
      return [{ kind: 'grown', seq: factNo, batchUg: known(newBatchMassUg), lines: known(lines) }];
    case 'correct':
      return [{ kind: 'correction', seq: factNo, stockId: known(stockId), lotId: known(lotId), massUg: known(massUg) }];
    case 'discard':
      return [];
    default:
      return assertNever(kind);
  }
}

/** A CHECK of the table promises the value. */
function known<T>(value: T | null | undefined): T {
  invariant(value !== null && value !== undefined, 'a column that its row must fill is empty');
  return value;
}
