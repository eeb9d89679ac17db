// The rulebook command as another program would use it: a process, JSON in, JSON out, and an exit code that can be told apart.
import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { localDay } from '#lib/units/time.ts';
import { smallRulebook } from '#test/support/small-shop/small-rulebook.ts';

const DAY = '2026-11-25';
const BOOK = JSON.stringify(smallRulebook(localDay(DAY)));
const FERN = JSON.stringify({ shadeId: 'fern-bank', actives: [{ activeId: 'niacinamide', levelPpm: 20_000 }] });
const ADULT = JSON.stringify([
  { questionId: 'age', optionIds: ['age-18'] },
  { questionId: 'wish', optionIds: ['wish-oil'] },
  { questionId: 'sting', optionIds: ['sting-never'] },
  { questionId: 'today', optionIds: ['today-none'] },
]);

/** @param input the text of the file, given by standard input */
function rulebook(args: readonly string[], input = BOOK) {
  const ended = spawnSync(process.execPath, ['app/_cli/rulebook.ts', ...args], { input, encoding: 'utf8' });
  return { code: ended.status, said: JSON.parse(ended.stdout), stderr: ended.stderr };
}

const asked = (name: string, ...options: readonly string[]) => rulebook([name, '-', '--day', DAY, ...options]);

describe('the rulebook command', () => {
  it('finds the demonstration sound, with 0', () => {
    expect(rulebook(['check', '-'])).toMatchObject({ code: 0, said: { ok: true }, stderr: '' });
  });

  it('permits a variant and shows the plan it judged', () => {
    const { code, said } = asked('judge', '--variant', FERN);
    expect(code).toBe(0);
    expect(said).toMatchObject({ verdict: { kind: 'permitted' }, plan: { variant: { shadeId: 'fern-bank' } } });
  });

  it('refuses a level that the rulebook does not have, with 1 and the finding', () => {
    const variant = JSON.stringify({ shadeId: 'fern-bank', actives: [{ activeId: 'niacinamide', levelPpm: 30_000 }] });
    const { code, said } = asked('judge', '--variant', variant);
    expect(code).toBe(1);
    expect(said.verdict).toMatchObject({ kind: 'refused', findings: [{ facts: { activeId: 'niacinamide' } }] });
  });

  it('computes a card whose targets add up to the batch', () => {
    const { code, said } = asked('card', '--variant', FERN);
    expect(code).toBe(0);
    const sumUg = said.lines.reduce((sum: number, line: { targetUg: number }) => sum + line.targetUg, 0);
    expect(sumUg).toBe(said.batchUg);
  });

  it('computes the card of the first plan that can be weighed, not of the first that is permitted', () => {
    // Neat titanium dioxide would come before the premix, and a tenth of a gram of it cannot be weighed.
    const plain = smallRulebook(localDay(DAY));
    const premix = plain.stocks.find((stock) => stock.id === 'titanium-20');
    const neat = { ...premix, id: 'titanium-neat', code: 'TI-N', parts: [{ materialId: 'titanium-dioxide', sharePpm: 1_000_000 }] };
    const book = JSON.stringify({ ...plain, stocks: [...plain.stocks, neat] });
    const variant = JSON.stringify({ shadeId: 'chalk-down', actives: [] });
    const stocks = (lines: readonly { stockId?: string; source?: { stockId?: string } }[]) =>
      lines.flatMap((line) => line.stockId ?? line.source?.stockId ?? []);
    const of = (name: string) => rulebook([name, '-', '--day', DAY, '--variant', variant], book);
    expect(stocks(of('judge').said.plan.lines)).toContain('titanium-neat');
    const card = of('card');
    expect(card.code).toBe(0);
    expect(stocks(card.said.lines)).toContain('titanium-20');
  });

  it.each(['EU', 'US'])('writes a label for %s, water first, by the name that market asks for', (market) => {
    const { code, said } = asked('label', '--variant', FERN, '--market', market);
    expect(code).toBe(0);
    expect(said.ingredientsText).toMatch(market === 'EU' ? /^AQUA, / : /^WATER, /iu);
  });

  it('counts the permitted variants and finds masks for a person, each in a part of its own', () => {
    expect(asked('count').said.permittedCount).toBeGreaterThan(0);
    const { code, said } = asked('masks', '--answers', ADULT);
    expect(code).toBe(0);
    expect(said.masks.map(({ role }: { role: string }) => role)).toEqual(['closest', 'other-colour']);
  });

  it('prints the schema of a rulebook without a file', () => {
    expect(rulebook(['schema'])).toMatchObject({ code: 0, said: { type: 'object' } });
  });

  it('finds an unsound rulebook with 1 when checking, and does not compute with it', () => {
    const broken = BOOK.replace('"shadeId":"fern-bank"', '"shadeId":"no-such-shade"').replace(
      '"base":{"id":"base-r2"',
      '"base":{"id":"base-r2","extra":1',
    );
    expect(rulebook(['check', '-'], broken)).toMatchObject({ code: 1, said: { ok: false } });
    expect(rulebook(['count', '-', '--day', DAY], broken)).toMatchObject({ code: 2 });
  });

  it.each([
    ['no command', []],
    ['an unknown command', ['weigh', '-']],
    ['an unknown option', ['check', '-', '--bar']],
    ['no file', ['check']],
    ['a file that is not there', ['check', 'no-such-file.json']],
    ['no day', ['count', '-']],
    ['a day that is none', ['count', '-', '--day', '2026-02-30']],
    ['no variant', ['judge', '-', '--day', DAY]],
    ['a variant that is not JSON', ['judge', '-', '--day', DAY, '--variant', '{']],
    ['a variant of another shape', ['judge', '-', '--day', DAY, '--variant', '{"shadeId":1}']],
    ['a size that is none', ['card', '-', '--day', DAY, '--variant', FERN, '--size', 'bucket']],
    ['a market that is none', ['label', '-', '--day', DAY, '--variant', FERN, '--market', 'MARS']],
    ['questions left unanswered', ['masks', '-', '--day', DAY, '--answers', '[]']],
  ])('says with 2 that it could not be asked: %s', (_what, args) => {
    const { code, said } = rulebook(args);
    expect(code).toBe(2);
    expect(said.error).toEqual(expect.any(String));
  });

  it('says with 2 that a file is not JSON', () => {
    expect(rulebook(['count', '-', '--day', DAY], '{"')).toMatchObject({ code: 2 });
  });
});
