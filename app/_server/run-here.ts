// Jobs done at once on this thread: for commands and tests, which have nobody waiting.
import { jobHandlers } from './job-handlers.ts';
import type { JobHandlers, JobKind, JobOutcome, JobTable, RunJob } from './jobs.ts';

const control = { report: () => {}, isCancelled: () => false };

export const runHere: RunJob = async <K extends JobKind>(kind: K, input: JobTable[K]['input']): Promise<JobOutcome<K>> => {
  const handler: JobHandlers[K] = jobHandlers[kind];
  const output = handler(input, control);
  return output === null ? { kind: 'cancelled' } : { kind: 'done', output };
};
