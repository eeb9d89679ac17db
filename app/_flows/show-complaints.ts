// Every complaint with its jar and what was done about it, newest first: for the office.
import type { Complaint, ComplaintStep } from '#db/complaints.ts';
import { findComplaint, listComplaintSteps, listComplaints } from '#db/complaints.ts';
import { findOrderByJar } from '#db/orders.ts';
import { listAccounts } from '#db/people.ts';
import { addDays, isoWeek } from '#lib/units/time.ts';
import { editionByHash } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import { stampOf } from './flow.ts';
import { jarName } from './jar-picture.ts';

/** How far back the page looks: what is older is in the ledger. */
const DAYS_SHOWN = 3 * 366;

export interface ComplaintRow {
  readonly complaint: Complaint;
  /** Null once erased. */
  readonly said: string | null;
  readonly contact: string | null;
  readonly maskName: string;
  readonly by: string;
  readonly steps: readonly (ComplaintStep & { readonly by: string })[];
}

export function showComplaints(flow: Flow): readonly ComplaintRow[] {
  return flow.db.read((tx) => {
    const { localDay } = stampOf(tx, flow.now);
    const people = new Map(listAccounts(tx).map((account) => [account.id, account.name]));
    const person = (id: string): string => people.get(id) ?? id;
    const range = { fromWeek: isoWeek(addDays(localDay, -DAYS_SHOWN)), toWeek: isoWeek(localDay) };
    return [...listComplaints(tx, range)].reverse().map((complaint) => {
      const about = findComplaint(tx, complaint.id)?.person ?? null;
      const order = findOrderByJar(tx, complaint.jarCode)?.order;
      const edition = order && editionByHash(tx, flow, order.editionHash);
      return {
        complaint,
        said: about?.said ?? null,
        contact: about?.contact ?? null,
        maskName: order && edition ? jarName(edition.book, order.plan.variant, 'en') : complaint.jarCode,
        by: person(complaint.byAccountId),
        steps: listComplaintSteps(tx, complaint.id).map((step) => ({ ...step, by: person(step.byAccountId) })),
      };
    });
  });
}
