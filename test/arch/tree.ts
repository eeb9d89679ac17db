// The real tree, read from the disk: everything that .gitignore does not leave out, so that a new file is judged before it is added.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const top = fileURLToPath(new URL('../..', import.meta.url));

const isText = (path: string): boolean => /\.(ts|tsx|mjs|js|json|jsonc|md|css|sql|svg|txt|yml|html)$|(^|\/)\.[a-z-]+$|^\.ci\//.test(path);

/** Path from the top → text (the empty text for pictures and fonts, whose names still count). */
export function readTree(): Map<string, string> {
  const ignored = new Set([
    '.git',
    ...readFileSync(join(top, '.gitignore'), 'utf8')
      .split('\n')
      .map((line) => line.replace(/\/$/, '')),
  ]);
  const files = new Map<string, string>();
  const walk = (folder: string): void => {
    for (const entry of readdirSync(join(top, folder), { withFileTypes: true })) {
      const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
      if (ignored.has(entry.name) || entry.name.endsWith('.tsbuildinfo')) continue;
      if (entry.isDirectory()) walk(path);
      else files.set(path, isText(path) ? readFileSync(join(top, path), 'utf8') : '');
    }
  };
  walk('');
  return files;
}
