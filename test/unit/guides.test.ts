// README.md and DEVELOPERS.md tell no untruth that a machine can see: commands, paths, people, pictures and the example.
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEMO_PEOPLE } from '#app/_cli/demo/people.data.ts';
import { demoRulebook } from '#app/_cli/demo/rulebook/demo-rulebook.ts';
import { variantSchema } from '#lib/contracts/variant.ts';
import { openBook } from '#lib/rulebook/book.ts';
import { localDay } from '#lib/units/time.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';

const README = readFileSync('README.md', 'utf8');
const GUIDES = [
  ['README.md', README],
  ['DEVELOPERS.md', readFileSync('DEVELOPERS.md', 'utf8')],
] as const;

describe.each(GUIDES)('%s', (_name, text) => {
  it('names only scripts that exist', () => {
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> };
    const named = [...text.matchAll(/npm (?:run (?:-s )?)?([a-z]+)/g)].map((match) => match[1] ?? '').filter((word) => word !== 'and');
    expect(named.length).toBeGreaterThan(1);
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });

  it('names only files and folders that exist', () => {
    const named = [...text.matchAll(/[`(]((?:app|lib|db|test|public)(?:\/[A-Za-z0-9._-]+)*)[`)]/g)].map((match) => match[1] ?? '');
    expect(named.length).toBeGreaterThan(5);
    expect(named.filter((path) => !existsSync(path))).toEqual([]);
  });
});

describe('README.md', () => {
  it('opens with the job in one paragraph', () => {
    expect(README).toMatch(/^# Jarwright\n\n(?:[A-Z][^\n]*)(?:\n[^\n]+)+\n\n/);
  });

  it('lists the people of the demonstration with their passwords', () => {
    for (const { code, password } of DEMO_PEOPLE) expect(README).toMatch(new RegExp(`\\| ${code} +\\| ${password} +\\|`));
  });

  it('shows three pictures', () => {
    expect([...README.matchAll(/!\[[^\]]+\]\(public\/pictures\/[a-z]+\.png\)/g)]).toHaveLength(3);
  });

  it('names only pages that exist', () => {
    const pages = [...README.matchAll(/`\/((?:office|bench|kiosk|sign-in)[a-z/-]*)/g)].map((match) => match[1]);
    expect(pages.length).toBeGreaterThan(5);
    expect(pages.filter((page) => !existsSync(`app/${page}/page.tsx`))).toEqual([]);
  });

  it('gives an example that is permitted, as it says', () => {
    const [, day = '', json = ''] = /judge rulebook\.json --day (\S+) --variant '([^']+)'/.exec(README) ?? [];
    const book = openBook(demoRulebook(localDay(day)));
    expect(judgeVariant(book, variantSchema.parse(JSON.parse(json)), { day: localDay(day) }).verdict.kind).toBe('permitted');
  });
});
