// Filing a complaint, and what was done about it.
import type { ComplaintInput, ComplaintOutput, ComplaintStepInput, ComplaintStepOutput } from '#lib/contracts/complaints.ts';
import type { Reply } from './send.ts';
import { send } from './send.ts';

export const fileComplaint = (input: ComplaintInput): Promise<Reply<ComplaintOutput>> => send('/api/office/complaint', input);
export const recordComplaintStep = (input: ComplaintStepInput): Promise<Reply<ComplaintStepOutput>> =>
  send('/api/office/complaint-step', input);
