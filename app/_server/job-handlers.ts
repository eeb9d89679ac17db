// The work of each kind of job: pure functions of lib, given a way to report and to stop.
import { createHash } from 'node:crypto';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { impactOf } from '#lib/variants/impact.ts';
import { countVariants } from '#lib/variants/permitted.ts';
import type { JobControl, JobHandlers } from './jobs.ts';
import { bookOf } from './open-editions.ts';

export const jobHandlers = {
  'hash-document': (document) => createHash('sha256').update(canonicalJson(document)).digest('hex'),
  'count-variants': ({ document, day }, control) => countPermitted(document, day, control),
  'impact-of': ({ before, after, day, askedKeys }) => impactOf(bookOf(before), bookOf(after), day, askedKeys),
} satisfies JobHandlers;

const countPermitted = (document: string, day: LocalDay, control: JobControl): number | null =>
  countVariants(bookOf(document), day, (doneThousandths) => {
    control.report(doneThousandths);
    return !control.isCancelled();
  });
