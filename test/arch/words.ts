// Words that may stand nowhere in the tree, not even in a comment. Each is written here in two halves, so that this file does not name itself.
import type { Finding, House } from './house.ts';

const needle = (...halves: readonly string[]): RegExp => new RegExp(halves.join(''));

const banned: readonly { readonly pattern: RegExp; readonly says: string }[] = [
  { pattern: needle('/wo', 'rk/'), says: 'a path of one machine' },
  { pattern: needle('/tm', 'p/'), says: 'a path of one machine: use os.tmpdir()' },
  { pattern: needle('/(ho', 'me|Us', 'ers)/[a-z]'), says: 'a path of one machine' },
  { pattern: needle('\\bTO', 'DO\\b|\\bFIX', 'ME\\b|\\bXX', 'X\\b'), says: 'work left undone: do it or write it down in DEVELOPERS.md' },
  { pattern: needle('@ts', '-ignore|@ts', '-nocheck'), says: 'the compiler silenced' },
  { pattern: needle('biome', '-ignore(?! lint/\\S+: \\S+)'), says: 'the linter silenced without a rule and a reason' },
  { pattern: needle('\\.(sk', 'ip|on', 'ly|to', 'do|sk', 'ipIf|ru', 'nIf|fai', 'ls)\\('), says: 'a test that does not run, or runs alone' },
];

/** The lock file is written by npm and holds whatever packages hold. */
const isOurs = (path: string): boolean => path !== 'package-lock.json';

export const bannedWords = (house: House): Finding[] =>
  [...house.files]
    .filter(([path]) => isOurs(path))
    .flatMap(([path, text]) =>
      text
        .split('\n')
        .flatMap((line, index) => banned.filter(({ pattern }) => pattern.test(line)).map(({ says }) => ({ path, line: index + 1, says }))),
    );

/** A compile error that is expected belongs into a test of types. */
export const expectedErrors = (house: House): Finding[] =>
  [...house.files]
    .filter(([path]) => /^(app|lib|db)\//.test(path))
    .flatMap(([path, text]) =>
      text
        .split('\n')
        .flatMap((line, index) =>
          needle('@ts', '-expect-error').test(line) ? [{ path, line: index + 1, says: 'the compiler silenced outside test' }] : [],
        ),
    );
