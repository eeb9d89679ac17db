// The one code path that takes anything away: bodies of ledger rows past the retention, and personal data past its use. Each erasure
// leaves its own fact; the chain of the ledger stays whole.
import type { InstantMs, LocalDay } from '#lib/units/time.ts';
import { addMonths } from '#lib/units/time.ts';
import type { Writing } from './connection.ts';
import { appendLedger } from './ledger.ts';
import { prepared } from './query.ts';
import { stampIn } from './shop.ts';

/** A recall may still need to reach a customer for this long after the use-by of the jar, or after an order that came to nothing. */
const CONTACT_MONTHS = 6;

export interface Purging {
  readonly retentionYears: number;
  readonly atMs: InstantMs;
  readonly newId: () => string;
}

export interface Purged {
  readonly bodiesCount: number;
  readonly contactsCount: number;
  readonly complaintsCount: number;
}

type Erasure = { readonly atMs: InstantMs; readonly beforeDay: LocalDay };

const markBodies = prepared((orm) =>
  orm.$client.prepare<[Erasure]>(`
    INSERT INTO purged (seq_no, at_ms, reason)
    SELECT l.seq_no, @atMs, 'retention' FROM ledger l JOIN ledger_body b ON b.seq_no = l.seq_no WHERE l.local_day < @beforeDay`),
);
const eraseBodies = prepared((orm) => orm.$client.prepare('DELETE FROM ledger_body WHERE seq_no IN (SELECT seq_no FROM purged)'));

const markContacts = prepared((orm) =>
  orm.$client.prepare<[Erasure]>(`
    INSERT INTO contact_erased (order_id, reason, at_ms)
    SELECT c.order_id, 'no longer needed', @atMs FROM contact c
    LEFT JOIN jar j ON j.order_id = c.order_id
    LEFT JOIN jar_release r ON r.jar_code = j.batch_code
    LEFT JOIN order_end e ON e.order_id = c.order_id
    WHERE coalesce(r.use_by_day, e.local_day) < @beforeDay`),
);
const eraseContacts = prepared((orm) => orm.$client.prepare('DELETE FROM contact WHERE order_id IN (SELECT order_id FROM contact_erased)'));

const markComplaints = prepared((orm) =>
  orm.$client.prepare<[Erasure]>(`
    INSERT INTO complaint_erased (complaint_id, reason, at_ms)
    SELECT p.complaint_id, 'retention', @atMs FROM complaint_person p JOIN complaint c ON c.id = p.complaint_id WHERE c.local_day < @beforeDay`),
);
const eraseComplaints = prepared((orm) =>
  orm.$client.prepare('DELETE FROM complaint_person WHERE complaint_id IN (SELECT complaint_id FROM complaint_erased)'),
);

/** Erases what has had its time. Afterwards `checkpoint()`, so that the WAL forgets it too. Older backups still hold it. */
export function purge(tx: Writing, { retentionYears, atMs, newId }: Purging): Purged {
  const stamp = stampIn(tx, atMs);
  const retained = { atMs, beforeDay: addMonths(stamp.localDay, -12 * retentionYears) };
  const bodiesCount = markBodies(tx).run(retained).changes;
  const contactsCount = markContacts(tx).run({ atMs, beforeDay: addMonths(stamp.localDay, -CONTACT_MONTHS) }).changes;
  const complaintsCount = markComplaints(tx).run(retained).changes;
  eraseBodies(tx).run();
  eraseContacts(tx).run();
  eraseComplaints(tx).run();
  const purged = { bodiesCount, contactsCount, complaintsCount };
  const body = { ...purged, retentionYears };
  appendLedger(tx, {
    ...stamp,
    id: newId(),
    kind: 'purged',
    schemaVersionNo: 1,
    body,
    accountId: null,
    stationId: null,
    editionHash: null,
  });
  return purged;
}
