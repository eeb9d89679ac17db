// The judgement form: what a filled form asks for, and what is marked in one that is not.
import { describe, expect, test } from 'vitest';
import { officeText } from '#app/office/office-text.ts';
import { judgementAsked } from '#app/office/pairs/judgement-asked.ts';
import type { PairJudgement } from '#lib/rulebook/judgement.ts';
import { sharePpm } from '#lib/units/share.ts';
import { addDays } from '#lib/units/time.ts';
import { TEST_DAY } from '#test/support/a-demo-book.ts';

const FILLED = { first: 'illite', second: 'panthenol', verdict: 'fine', reason: ' seen in jars ', source: 'trial jars' };
const OLD: PairJudgement = {
  id: 'illite-with-panthenol',
  firstMaterialId: 'illite',
  secondMaterialId: 'panthenol',
  verdict: 'limit',
  limit: { maxSumPpm: sharePpm(30_000), maxFirstPpm: sharePpm(20_000) },
  reason: 'seen in jars',
  source: 'trial jars',
  by: 'formulator',
  on: addDays(TEST_DAY, -9),
};

function asked(fields: Readonly<Record<string, string>>, judged: PairJudgement | null = null) {
  const form = new FormData();
  for (const [name, value] of Object.entries({ ...FILLED, ...fields })) form.set(name, value);
  return judgementAsked(form, judged, officeText());
}

describe('the judgement form', () => {
  test('asks for what was filled in, without blanks around it', () => {
    expect(asked({})).toEqual({
      change: {
        kind: 'judge-pair',
        firstMaterialId: 'illite',
        secondMaterialId: 'panthenol',
        verdict: 'fine',
        reason: 'seen in jars',
        source: 'trial jars',
      },
    });
  });

  test.each<[string, Readonly<Record<string, string>>, readonly string[]]>([
    [
      'left as it opens',
      { first: '', second: '', verdict: '', reason: '', source: '' },
      ['first', 'second', 'verdict', 'reason', 'source'],
    ],
    ['a blank reason', { reason: ' \n' }, ['reason']],
    ['a material with itself', { second: 'illite' }, ['second']],
    ['a limit that limits nothing', { verdict: 'limit' }, ['max-sum']],
    ['a limit that is no share', { verdict: 'limit', 'max-sum': '101' }, ['max-sum']],
    ['a caution without its words', { verdict: 'caution', caution: '' }, ['caution']],
    ['a verdict that nobody offers', { verdict: 'often' }, ['verdict']],
  ])('marks %s', (_, fields, marked) => {
    const outcome = asked(fields);
    expect('mistakes' in outcome && Object.keys(outcome.mistakes)).toEqual(marked);
  });

  test.each<[string, object]>([
    ['2,5', { maxSumPpm: 25_000, maxFirstPpm: 20_000 }],
    ['', { maxFirstPpm: 20_000 }],
  ])('a most of "%s" moves the sum and keeps the bounds that it does not show', (most, limit) => {
    expect(asked({ verdict: 'limit', 'max-sum': most }, OLD)).toHaveProperty('change.limit', limit);
  });

  test('the class judgement that it overrides and its evidence stay named', () => {
    const grounds = { overridesClassJudgementId: 'clay-with-vitamin', evidenceId: 'jars-of-spring' };
    expect(asked({}, { ...OLD, ...grounds })).toMatchObject({ change: grounds });
  });

  test('a bound or a caution goes with its verdict', () => {
    const outcome = asked({ verdict: 'fine', 'max-sum': '2', caution: 'sun' }, OLD);
    expect('change' in outcome && Object.keys(outcome.change).sort()).toEqual([
      'firstMaterialId',
      'kind',
      'reason',
      'secondMaterialId',
      'source',
      'verdict',
    ]);
  });
});
