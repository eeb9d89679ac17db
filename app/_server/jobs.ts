// What the worker thread can be asked to do. Messages are plain data; one table names every kind with what goes in and comes out.

import type { LocalDay } from '#lib/units/time.ts';
import type { Impact } from '#lib/variants/impact.ts';

export type JobTable = {
  /** SHA-256 (hex) of the canonical bytes of a document. */
  'hash-document': { readonly input: unknown; readonly output: string };
  /** Exact number of variants that a rulebook's canonical text permits on a day. */
  'count-variants': { readonly input: { readonly document: string; readonly day: LocalDay }; readonly output: number };
  /** What lies between two rulebooks' canonical texts on a day, and which of the asked variants are lost. */
  'impact-of': {
    readonly input: { readonly before: string; readonly after: string; readonly day: LocalDay; readonly askedKeys: readonly string[] };
    readonly output: Impact;
  };
};

export type JobKind = keyof JobTable;

/** How a job ended. Only `done` has a result; `crashed` carries a text for the log, never for a person. */
export type JobOutcome<K extends JobKind> =
  | { readonly kind: 'done'; readonly output: JobTable[K]['output'] }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'ran-out' }
  | { readonly kind: 'crashed'; readonly reason: string };

export type JobOptions = {
  /** Called with 0 to 1000 as the work goes on. */
  readonly onProgress?: (doneThousandths: number) => void;
  readonly signal?: AbortSignal;
  /** After this the job ends as `ran-out`. */
  readonly deadlineMs?: number;
};

export type RunJob = <K extends JobKind>(kind: K, input: JobTable[K]['input'], options?: JobOptions) => Promise<JobOutcome<K>>;

/** The one worker thread as its users see it. */
export type JobRunner = { readonly run: RunJob; readonly close: () => Promise<void> };

/** What a job may do besides compute: say how far it is, and ask whether it is still wanted. */
export type JobControl = {
  readonly report: (doneThousandths: number) => void;
  readonly isCancelled: () => boolean;
};

/** `null` means that the job stopped because it was cancelled. */
export type JobHandlers = { readonly [K in JobKind]: (input: JobTable[K]['input'], control: JobControl) => JobTable[K]['output'] | null };

export type JobRequest = { readonly kind: JobKind; readonly input: unknown; readonly stopFlag: SharedArrayBuffer };

export type JobMessage =
  | { readonly kind: 'progress'; readonly doneThousandths: number }
  | { readonly kind: 'done'; readonly output: unknown }
  | { readonly kind: 'cancelled' };
