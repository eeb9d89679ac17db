// The work of each kind of job: pure functions of lib, given a way to report and to stop.
import { createHash } from 'node:crypto';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { JobHandlers } from './jobs.ts';

export const jobHandlers = {
  'hash-document': (document) => createHash('sha256').update(canonicalJson(document)).digest('hex'),
} satisfies JobHandlers;
