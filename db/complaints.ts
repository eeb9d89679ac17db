// Complaints about jars. What a person said stands apart, so that it can be erased while the fact stays.
import { and, asc, eq, gte, lte, max } from 'drizzle-orm';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import type { WeekRange } from './sales.ts';
import { complaint, complaintPerson, complaintStep } from './schema-afterwards.ts';

export type Complaint = Row<typeof complaint>;
export type ComplaintPerson = Row<typeof complaintPerson>;
export type ComplaintStep = Row<typeof complaintStep>;

export interface ComplaintView {
  readonly complaint: Complaint;
  /** Null once erased. */
  readonly person: ComplaintPerson | null;
}

const withPerson = eq(complaintPerson.complaintId, complaint.id);
const byId = prepared((orm) =>
  orm
    .select({ complaint, person: complaintPerson })
    .from(complaint)
    .leftJoin(complaintPerson, withPerson)
    .where(eq(complaint.id, given('id')))
    .prepare(),
);
const ofJar = prepared((orm) =>
  orm
    .select()
    .from(complaint)
    .where(eq(complaint.jarCode, given('jarCode')))
    .orderBy(asc(complaint.atMs))
    .prepare(),
);
const ofWeeks = prepared((orm) =>
  orm
    .select()
    .from(complaint)
    .where(and(gte(complaint.isoWeek, given('fromWeek')), lte(complaint.isoWeek, given('toWeek'))))
    .orderBy(asc(complaint.atMs))
    .prepare(),
);
const steps = prepared((orm) =>
  orm
    .select()
    .from(complaintStep)
    .where(eq(complaintStep.complaintId, given('complaintId')))
    .orderBy(asc(complaintStep.stepNo))
    .prepare(),
);
const lastStep = prepared((orm) =>
  orm
    .select({ stepNo: max(complaintStep.stepNo) })
    .from(complaintStep)
    .where(eq(complaintStep.complaintId, given('complaintId')))
    .prepare(),
);
const insertStep = inserting(complaintStep);

export const insertComplaint: (tx: Writing, row: Complaint) => void = inserting(complaint);
export const insertComplaintPerson: (tx: Writing, row: ComplaintPerson) => void = inserting(complaintPerson);
export const insertComplaintStep = (tx: Writing, row: Omit<ComplaintStep, 'stepNo'>): void =>
  insertStep(tx, { ...row, stepNo: (lastStep(tx).get({ complaintId: row.complaintId })?.stepNo ?? 0) + 1 });

export const findComplaint = (tx: Reading, id: string): ComplaintView | undefined => byId(tx).get({ id });
export const listComplaintsOfJar = (tx: Reading, jarCode: string): readonly Complaint[] => ofJar(tx).all({ jarCode });
export const listComplaints = (tx: Reading, range: WeekRange): readonly Complaint[] => ofWeeks(tx).all({ ...range });
export const listComplaintSteps = (tx: Reading, complaintId: string): readonly ComplaintStep[] => steps(tx).all({ complaintId });
