// The one worker thread, run by Node directly. It takes one job at a time; what a job throws ends the thread, and the host says so.
import { parentPort, threadId } from 'node:worker_threads';
import { invariant } from '#lib/base/invariant.ts';
import { jobHandlers } from './job-handlers.ts';
import type { JobHandlers, JobKind, JobMessage, JobRequest } from './jobs.ts';

invariant(parentPort, 'worker.ts runs as a worker thread only');
const port = parentPort;
const send = (message: JobMessage, transfer: ArrayBuffer[] = []): void => port.postMessage(message, transfer);
const handlers: JobHandlers = jobHandlers;

port.on('message', (request: JobRequest) => {
  const stopFlag = new Int32Array(request.stopFlag);
  const output = runJob(request.kind, request.input, {
    report: (doneThousandths) => send({ kind: 'progress', doneThousandths }),
    isCancelled: () => Atomics.load(stopFlag, 0) !== 0,
  });
  if (output === null) send({ kind: 'cancelled' });
  else send({ kind: 'done', output }, buffersOf(output));
});

/** The buffers of typed arrays at the top of a result: big tables are handed over, not copied. */
const buffersOf = (output: unknown): ArrayBuffer[] =>
  typeof output === 'object' && output !== null
    ? Object.values(output).flatMap((part) => (ArrayBuffer.isView(part) && part.buffer instanceof ArrayBuffer ? [part.buffer] : []))
    : [];

/** The table pairs each kind with its input; a message has lost that pairing, and the host that sent it had it. */
function runJob<K extends JobKind>(kind: K, input: unknown, control: Parameters<JobHandlers[K]>[1]): unknown {
  invariant(kind in handlers, `worker ${threadId} knows no job of kind ${kind}`);
  return handlers[kind](input as Parameters<JobHandlers[K]>[0], control);
}
