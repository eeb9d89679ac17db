// The work of each kind of job: pure functions of lib, given a way to report and to stop.
import { createHash } from 'node:crypto';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { allVariants } from '#lib/variants/enumerate.ts';
import { impactOf } from '#lib/variants/impact.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import type { JobControl, JobHandlers } from './jobs.ts';
import { bookOf } from './open-editions.ts';

export const jobHandlers = {
  'hash-document': (document) => createHash('sha256').update(canonicalJson(document)).digest('hex'),
  'count-variants': ({ document, day }, control) => countPermitted(document, day, control),
  'impact-of': ({ before, after, day, askedKeys }) => impactOf(bookOf(before), bookOf(after), day, askedKeys),
} satisfies JobHandlers;

/** Asks every variant; stops between two of them when it is no longer wanted. */
function countPermitted(document: string, day: LocalDay, control: JobControl): number | null {
  const book = bookOf(document);
  const variants = [...allVariants(book)];
  let permittedCount = 0;
  for (const [index, variant] of variants.entries()) {
    if (control.isCancelled()) return null;
    if (index % 64 === 0) control.report(Math.floor((1000 * index) / variants.length));
    if (judgeVariant(book, variant, { day }).verdict.kind === 'permitted') permittedCount += 1;
  }
  return permittedCount;
}
