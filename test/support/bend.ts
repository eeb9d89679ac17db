// Bends one place of a document, wherever it is, and leaves the rest as it was. Undefined takes the place out.

import type { DocumentPath } from '#lib/base/document-fault.ts';
import { invariant } from '#lib/base/invariant.ts';

type Branch = Record<string | number, unknown>;

/** A copy with `value` at `path`; the value may break the type, since that is what tests of refusals need. */
export function bend<T>(document: T, path: DocumentPath, value: unknown): T {
  const copy = structuredClone(document);
  const parent = path.slice(0, -1).reduce<Branch>((at, step) => {
    const next = at[step];
    invariant(typeof next === 'object' && next !== null, `nothing to bend at ${path.join('.')}`);
    return next as Branch;
  }, copy as Branch);
  const last = path.at(-1);
  invariant(last !== undefined, 'a path has at least one step');
  if (value !== undefined) parent[last] = value;
  else if (Array.isArray(parent)) parent.splice(Number(last), 1);
  else delete parent[last];
  return copy;
}
