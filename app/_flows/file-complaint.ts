// Somebody comes back with a jar, or writes about one. What they said stands apart from the fact, so that it can be erased alone.
import { findComplaint, insertComplaint, insertComplaintPerson, insertComplaintStep } from '#db/complaints.ts';
import { findJar } from '#db/jars.ts';
import type { COMPLAINT_KINDS, COMPLAINT_STEPS, SERIOUSNESS } from '#db/schema-afterwards.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { batchCode, parseBatchCode } from '#lib/label/batch-code.ts';
import type { Flow } from './flow.ts';
import { record, staffOf, stampOf } from './flow.ts';

export interface ComplaintAsked {
  /** As printed on the label; spaces, hyphens and small letters are forgiven. */
  readonly jarCode: string;
  readonly kind: (typeof COMPLAINT_KINDS)[number];
  readonly seriousness: (typeof SERIOUSNESS)[number];
  readonly said: string;
  /** Empty where the person wants no answer. */
  readonly contact: string;
}

export type ComplaintRefusal = { readonly kind: 'no-jar-code' | 'no-such-jar' };

/** The ledger names jar, kind and seriousness, never what was said or by whom. */
export function fileComplaint(flow: Flow, asked: ComplaintAsked): Result<{ readonly complaintId: string }, ComplaintRefusal> {
  const typed = parseBatchCode(asked.jarCode);
  if (!typed.ok) return refuse({ kind: 'no-jar-code' });
  const jarCode = batchCode(typed.value);
  return flow.db.write((tx) => {
    if (!findJar(tx, jarCode)) return refuse({ kind: 'no-such-jar' } as const);
    const { kind, seriousness, said, contact } = asked;
    const id = flow.newId();
    insertComplaint(tx, { id, jarCode, kind, seriousness, byAccountId: staffOf(flow).accountId, ...stampOf(tx, flow.now) });
    insertComplaintPerson(tx, { complaintId: id, said, contact });
    record(tx, flow, { kind: 'complaint-filed', body: { complaintId: id, jarCode, kind, seriousness } });
    return accept({ complaintId: id });
  });
}

export interface ComplaintStepAsked {
  readonly complaintId: string;
  readonly kind: (typeof COMPLAINT_STEPS)[number];
  readonly note: string;
}

/** What was done about it: clocks run between these. */
export const recordComplaintStep = (flow: Flow, asked: ComplaintStepAsked): Result<null, { readonly kind: 'no-such-complaint' }> =>
  flow.db.write((tx) => {
    const { complaintId, kind, note } = asked;
    if (!findComplaint(tx, complaintId)) return refuse({ kind: 'no-such-complaint' } as const);
    insertComplaintStep(tx, { complaintId, kind, note, byAccountId: staffOf(flow).accountId, atMs: flow.now });
    record(tx, flow, { kind: `complaint-${kind}`, body: { complaintId } });
    return accept(null);
  });
