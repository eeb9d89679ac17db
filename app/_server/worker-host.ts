// Keeps the one worker thread: jobs run one after another; a job that throws, exhausts memory or cannot be handed over ends as `crashed`
// and the next one gets a new thread where it needs one. A stopped job is asked first and ended by force only when it does not listen.
import { Worker } from 'node:worker_threads';
import type { JobKind, JobMessage, JobOptions, JobOutcome, JobRunner, JobTable } from './jobs.ts';

type Settings = { readonly file?: URL; readonly graceMs?: number };
type StopReason = 'cancelled' | 'ran-out';

const MEMORY_LIMIT_MB = 2048;

/** Starts no thread until the first job. `graceMs` is how long a stopped job may take to notice. */
export function makeJobRunner({ file = new URL('./worker.ts', import.meta.url), graceMs = 1000 }: Settings = {}): JobRunner {
  const state: { thread: Worker | null; last: Promise<unknown>; isClosed: boolean } = {
    thread: null,
    last: Promise.resolve(),
    isClosed: false,
  };

  const thread = (): Worker => {
    if (state.thread) return state.thread;
    const made = new Worker(file, { resourceLimits: { maxOldGenerationSizeMb: MEMORY_LIMIT_MB } });
    made.once('exit', () => {
      state.thread = null;
    });
    state.thread = made;
    return made;
  };

  return {
    run: (kind, input, options = {}) => {
      const outcome = state.last.then(() =>
        state.isClosed ? ({ kind: 'cancelled' } as const) : begin(thread, { kind, input, options, graceMs }),
      );
      state.last = outcome;
      return outcome;
    },
    close: async () => {
      state.isClosed = true;
      await state.thread?.terminate();
    },
  };
}

type Job<K extends JobKind> = {
  readonly kind: K;
  readonly input: JobTable[K]['input'];
  readonly options: JobOptions;
  readonly graceMs: number;
};

/** A thread that cannot be made is this job's crash only: those behind it go on. */
function begin<K extends JobKind>(thread: () => Worker, job: Job<K>): JobOutcome<K> | Promise<JobOutcome<K>> {
  if (job.options.signal?.aborted) return { kind: 'cancelled' };
  try {
    return runOn(thread(), job);
  } catch (error) {
    return { kind: 'crashed', reason: textOf(error) };
  }
}

const textOf = (error: unknown): string => (error instanceof Error ? (error.stack ?? error.message) : String(error));

function runOn<K extends JobKind>(worker: Worker, { kind, input, options, graceMs }: Job<K>): Promise<JobOutcome<K>> {
  const { signal, deadlineMs, onProgress } = options;
  const stopFlag = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
  const seen: { stop: StopReason | null; error: string | null; timers: NodeJS.Timeout[] } = { stop: null, error: null, timers: [] };

  return new Promise((resolve) => {
    const stop = (reason: StopReason): void => {
      if (seen.stop) return;
      seen.stop = reason;
      Atomics.store(new Int32Array(stopFlag), 0, 1);
      seen.timers.push(setTimeout(() => void worker.terminate(), graceMs));
    };
    const onAbort = (): void => stop('cancelled');
    const onError = (error: unknown): void => {
      seen.error = textOf(error);
    };
    const onMessage = (message: JobMessage): void => {
      if (message.kind === 'progress') onProgress?.(message.doneThousandths);
      else if (message.kind === 'done') end({ kind: 'done', output: message.output as JobTable[K]['output'] });
      else end({ kind: seen.stop ?? 'cancelled' });
    };
    const onExit = (code: number): void =>
      end(
        seen.stop && !seen.error
          ? { kind: seen.stop }
          : { kind: 'crashed', reason: seen.error ?? `the worker thread ended with code ${code}` },
      );
    const end = (outcome: JobOutcome<K>): void => {
      for (const timer of seen.timers) clearTimeout(timer);
      signal?.removeEventListener('abort', onAbort);
      worker.off('message', onMessage).off('error', onError).off('exit', onExit).unref();
      resolve(outcome);
    };

    worker.ref();
    worker.on('message', onMessage).on('error', onError).on('exit', onExit);
    signal?.addEventListener('abort', onAbort);
    if (deadlineMs !== undefined) seen.timers.push(setTimeout(() => stop('ran-out'), deadlineMs));
    try {
      worker.postMessage({ kind, input, stopFlag });
    } catch (error) {
      end({ kind: 'crashed', reason: textOf(error) });
    }
  });
}
