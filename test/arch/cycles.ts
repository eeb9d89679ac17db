// Cycles: two files that need each other are one file, or the lower one should take what it needs as an argument.
import type { Finding, House } from './house.ts';

/** Depth-first walk over all imports, erased ones too; each cycle is named once, at the file where the walk closed it. */
export function cycles(house: House): Finding[] {
  const found: Finding[] = [];
  const done = new Set<string>();
  const visit = (path: string, trail: readonly string[]): void => {
    if (done.has(path)) return;
    const inner = [...trail, path];
    for (const { target, line } of house.imports.get(path) ?? []) {
      if (target.kind !== 'file') continue;
      const start = inner.indexOf(target.path);
      if (start >= 0) found.push({ path, line, says: `a cycle: ${[...inner.slice(start), target.path].join(' → ')}` });
      else visit(target.path, inner);
    }
    done.add(path);
  };
  for (const path of house.imports.keys()) visit(path, []);
  return found;
}
