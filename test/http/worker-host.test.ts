import { createHash } from 'node:crypto';
import { afterEach, describe, expect, test } from 'vitest';
import type { JobOptions, JobRunner } from '#app/_server/jobs.ts';
import { makeJobRunner } from '#app/_server/worker-host.ts';

const runners: JobRunner[] = [];

function runner(settings: Parameters<typeof makeJobRunner>[0] = {}): JobRunner {
  const made = makeJobRunner(settings);
  runners.push(made);
  return made;
}

afterEach(async () => {
  for (const each of runners.splice(0)) await each.close();
});

const odd = (): JobRunner => runner({ file: new URL('./support/odd-worker.ts', import.meta.url), graceMs: 100 });
const ask = (on: JobRunner, input: string, options?: JobOptions) => on.run('hash-document', input, options);

describe('the real worker', () => {
  test('hashes the canonical bytes of a document: keys sorted, as RFC 8785 prints its own example', async () => {
    // RFC 8785, 3.2.3: the sorted form of these names is "\r", "1", "\u0080", "ö", "€", "😀", "\ufb33".
    const document = {
      '€': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '😀': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      ö: 'Latin Small Letter O With Diaeresis',
    };
    const canonical =
      '{"\\r":"Carriage Return","1":"One","\u0080":"Control","ö":"Latin Small Letter O With Diaeresis","€":"Euro Sign","😀":"Emoji: Grinning Face","\ufb33":"Hebrew Letter Dalet With Dagesh"}';
    const expected = createHash('sha256').update(canonical).digest('hex');
    expect(await runner().run('hash-document', document)).toEqual({ kind: 'done', output: expected });
  });

  test('what a job throws ends as crashed with a text for the log, and the next job is done', async () => {
    const jobs = runner();
    const crashed = await jobs.run('hash-document', { share: Number.NaN });
    expect(crashed).toMatchObject({ kind: 'crashed', reason: expect.stringContaining('no NaN') });
    expect(await jobs.run('hash-document', [])).toMatchObject({ kind: 'done' });
  });
});

describe('a worker that misbehaves', () => {
  test('progress arrives in order, before the result', async () => {
    const seen: number[] = [];
    const outcome = await ask(odd(), 'reports', { onProgress: (doneThousandths) => seen.push(doneThousandths) });
    expect([outcome, seen]).toEqual([{ kind: 'done', output: 'reported' }, [250, 500, 1000]]);
  });

  test('a cancelled job that listens ends at once and keeps its thread', async () => {
    const jobs = odd();
    const before = await ask(jobs, 'who');
    const stop = new AbortController();
    const running = ask(jobs, 'listens', { signal: stop.signal });
    setTimeout(() => stop.abort(), 20);
    expect(await running).toEqual({ kind: 'cancelled' });
    expect(await ask(jobs, 'who')).toEqual(before);
  });

  test('a cancelled job that does not listen is ended by force, and the next gets a new thread', async () => {
    const jobs = odd();
    const before = await ask(jobs, 'who');
    const stop = new AbortController();
    const running = ask(jobs, 'deaf', { signal: stop.signal });
    setTimeout(() => stop.abort(), 20);
    expect(await running).toEqual({ kind: 'cancelled' });
    const after = await ask(jobs, 'who');
    expect(after).toMatchObject({ kind: 'done' });
    expect(after).not.toEqual(before);
  });

  test('a deadline is told apart from a cancellation', async () => {
    expect(await ask(odd(), 'listens', { deadlineMs: 20 })).toEqual({ kind: 'ran-out' });
    expect(await ask(odd(), 'deaf', { deadlineMs: 20 })).toEqual({ kind: 'ran-out' });
  });

  test('a thread that ends by itself', async () => {
    const jobs = odd();
    expect(await ask(jobs, 'ends')).toEqual({ kind: 'crashed', reason: 'the worker thread ended with code 7' });
    expect(await ask(jobs, 'throws')).toMatchObject({ kind: 'crashed', reason: expect.stringContaining('planted in the job') });
    expect(await ask(jobs, 'who')).toMatchObject({ kind: 'done' });
  });

  test('a job that cannot be handed over is the only one that ends as crashed', async () => {
    const jobs = runner();
    const refused = jobs.run('hash-document', { at: () => 1 } as never);
    const next = jobs.run('hash-document', []);
    expect(await refused).toMatchObject({ kind: 'crashed', reason: expect.stringContaining('could not be cloned') });
    expect(await next).toMatchObject({ kind: 'done' });
    expect(await jobs.run('hash-document', [])).toMatchObject({ kind: 'done' });
  });

  test('a thread that cannot be made is the crash of one job, and the runner goes on', async () => {
    const jobs = runner({ file: new URL('https://shop.example/worker.ts') });
    expect(await ask(jobs, 'who')).toMatchObject({ kind: 'crashed', reason: expect.stringContaining('file') });
    expect(await ask(jobs, 'who')).toMatchObject({ kind: 'crashed' });
  });

  test('jobs run one after another', async () => {
    const jobs = odd();
    const ended: string[] = [];
    const note = (name: string) => () => void ended.push(name);
    await Promise.all([ask(jobs, 'listens', { deadlineMs: 60 }).then(note('first')), ask(jobs, 'who').then(note('second'))]);
    expect(ended).toEqual(['first', 'second']);
  });

  test('a job that was cancelled while it waited is not begun, and a closed runner begins none', async () => {
    const jobs = odd();
    const stop = new AbortController();
    const first = ask(jobs, 'listens', { deadlineMs: 30 });
    const second = ask(jobs, 'throws', { signal: stop.signal });
    stop.abort();
    expect([await first, await second]).toEqual([{ kind: 'ran-out' }, { kind: 'cancelled' }]);
    await jobs.close();
    expect(await ask(jobs, 'who')).toEqual({ kind: 'cancelled' });
  });
});
