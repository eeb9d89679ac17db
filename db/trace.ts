// From a lot forwards to every jar that holds some of it, and from a jar back to every lot in it, through all batches made at the bench.
import type { Reading } from './connection.ts';
import { prepared } from './query.ts';

export interface JarOfLot {
  readonly jarCode: string;
  readonly orderId: string;
  /** The lot that was weighed in: the asked one, or a batch made from it. */
  readonly lotId: string;
}

const jarsOfLot = prepared((orm) =>
  orm.$client.prepare<[string], JarOfLot>(`
    WITH RECURSIVE made(lot_id) AS (
      VALUES (?) UNION SELECT p.lot_id FROM made JOIN lot_parent p ON p.parent_lot_id = made.lot_id
    )
    SELECT DISTINCT j.batch_code AS jarCode, j.order_id AS orderId, made.lot_id AS lotId
    FROM made JOIN lot_use u ON u.lot_id = made.lot_id JOIN jar j ON j.batch_code = u.jar_code
    ORDER BY j.batch_code, made.lot_id`),
);

/** Every jar that took something from a lot or from a batch made of it. Jars whose stuff went to waste are among them. */
export const listJarsOfLot = (tx: Reading, lotId: string): readonly JarOfLot[] => jarsOfLot(tx).all(lotId);

export interface LotOfJar {
  readonly lotId: string;
  readonly lotCode: string;
  /** Null: weighed into the jar itself. Otherwise the batch that was made from it. */
  readonly madeIntoLotId: string | null;
}

const lotsOfJar = prepared((orm) =>
  orm.$client.prepare<[string], LotOfJar>(`
    WITH RECURSIVE held(lot_id, into_lot_id) AS (
      SELECT DISTINCT u.lot_id, NULL FROM lot_use u WHERE u.jar_code = ?
      UNION SELECT p.parent_lot_id, p.lot_id FROM held JOIN lot_parent p ON p.lot_id = held.lot_id
    )
    SELECT l.id AS lotId, l.code AS lotCode, held.into_lot_id AS madeIntoLotId
    FROM held JOIN lot l ON l.id = held.lot_id
    ORDER BY l.code, held.into_lot_id`),
);

/** Every lot in a jar, and the lots that its batches were made from. */
export const listLotsOfJar = (tx: Reading, jarCode: string): readonly LotOfJar[] => lotsOfJar(tx).all(jarCode);
