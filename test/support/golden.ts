// Golden files: text that somebody has read and found right. Each says in its header why it exists and why it last changed;
// a test only ever compares. New text gets in by write-golden.ts, which asks for a reason.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const RULE = '----';

const pathOf = (name: string): string => fileURLToPath(new URL(`../golden/cards/${name}.txt`, import.meta.url));

export interface Golden {
  /** "Why: …", then one "Changed: …" for each change. */
  readonly header: readonly string[];
  readonly body: string;
}

/** The file's header and body, or null where there is none yet. Throws for a file without a reason. */
export function readGolden(name: string): Golden | null {
  if (!existsSync(pathOf(name))) return null;
  const [head = '', ...rest] = readFileSync(pathOf(name), 'utf8').split(`\n${RULE}\n`);
  const header = head.split('\n');
  if (!/^Why: \S/.test(header[0] ?? '')) throw new Error(`${name}.txt does not say in its first line why it exists ("Why: …")`);
  return { header, body: rest.join(`\n${RULE}\n`).replace(/\n$/, '') };
}

/** What differs, line by line; null when nothing does. */
export function goldenDifference(name: string, text: string): string | null {
  const golden = readGolden(name);
  if (!golden) return `${name}.txt does not exist: read this, then write it with a reason\n\n${text}`;
  if (golden.body === text) return null;
  const before = golden.body.split('\n');
  const now = text.split('\n');
  const differing = Array.from({ length: Math.max(before.length, now.length) }, (_, index) => index).filter(
    (index) => before[index] !== now[index],
  );
  const shown = differing.map((index) =>
    [`line ${index + 1}`, `  - ${before[index] ?? '(nothing)'}`, `  + ${now[index] ?? '(nothing)'}`].join('\n'),
  );
  return [`${name}.txt differs`, ...shown].join('\n');
}

/** Writes a golden file: the reason opens a new one and is added to the header of an old one. */
export function writeGolden(name: string, text: string, reason: string): void {
  const golden = readGolden(name);
  const header = golden ? [...golden.header, `Changed: ${reason}`] : [`Why: ${reason}`];
  writeFileSync(pathOf(name), `${[...header, RULE, text].join('\n')}\n`);
}
