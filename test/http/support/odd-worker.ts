// A worker thread that misbehaves in the ways a job can: it listens or does not, reports, throws, ends the thread, eats memory.
import { parentPort, threadId } from 'node:worker_threads';
import type { JobRequest } from '#app/_server/jobs.ts';

const busyUntil = (isOver: () => boolean): void => {
  while (!isOver());
};

parentPort?.on('message', ({ input, stopFlag }: JobRequest) => {
  const flag = new Int32Array(stopFlag);
  const isCancelled = (): boolean => Atomics.load(flag, 0) !== 0;
  const send = (message: object): void => parentPort?.postMessage(message);
  switch (input) {
    case 'listens':
      busyUntil(isCancelled);
      return send({ kind: 'cancelled' });
    case 'deaf':
      return busyUntil(() => false);
    case 'reports':
      for (const doneThousandths of [250, 500, 1000]) send({ kind: 'progress', doneThousandths });
      return send({ kind: 'done', output: 'reported' });
    case 'throws':
      throw new Error('planted in the job');
    case 'ends':
      return process.exit(7);
    default:
      return send({ kind: 'done', output: `thread ${threadId}` });
  }
});
