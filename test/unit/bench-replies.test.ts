// What the bench says when a call did not come through: own words, and the true cause.
import { expect, test } from 'vitest';
import { unbroken } from '#app/_print/unbroken.ts';
import { refusalWords } from '#app/bench/refusal-words.ts';
import { problemWords } from '#app/bench/reply-words.tsx';
import { noteOf } from '#app/bench/use-desk.ts';
import type { Problem, ProblemKind } from '#lib/contracts/problem.ts';

const problem = (kind: ProblemKind, more: Partial<Problem> = {}): Problem => ({
  type: `urn:jarwright:problem:${kind}`,
  kind,
  title: 'Some fields are missing or wrong',
  detail: 'Look at the fields.',
  fields: [{ path: 'massUg', message: 'a weight is a whole number of micrograms above 0' }],
  faultId: null,
  isRetryable: false,
  ...more,
});

test('whoever was signed out is told so, and not that the shop is silent', () => {
  expect(noteOf({ kind: 'problem', problem: problem('signed-out') })).toMatch(/^You were signed out\./);
  expect(noteOf({ kind: 'unreachable' })).toMatch(/^The shop does not answer\./);
});

test("the server's words about fields do not reach a mixer", () => {
  expect(problemWords(problem('bad-input'))).not.toMatch(/micrograms|fields/i);
  expect(problemWords(problem('fault', { title: 'It broke', faultId: 'f-1' }))).toBe('It broke. f-1');
});

test('a refusal stays in the words of the bench', () => {
  expect(noteOf({ kind: 'answer', body: { ok: false, refusal: { kind: 'not-yours' } } })).toBe(refusalWords({ kind: 'not-yours' }));
});

test('on paper a number and what it counts stay on one line', () => {
  expect(unbroken('Leave on for 10 minutes. Rinse.')).toBe('Leave on for 10\u00a0minutes. Rinse.');
  expect(unbroken('7 days, 2 or 3')).toBe('7\u00a0days, 2\u00a0or 3');
});

test('an order on hold says why, and who decides', () => {
  expect(refusalWords({ kind: 'order-held', reason: 'the edition changed' })).toMatch(/on hold: the edition changed\. .*then decides/);
});
