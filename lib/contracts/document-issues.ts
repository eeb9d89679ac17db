// Turns what the schema library reports into faults of this project: one per wrong place, coded, in words that say what to give instead.
import type { z } from 'zod';
import type { DocumentFault, DocumentPath } from '../base/document-fault.ts';
import { assertNever } from '../base/invariant.ts';

export type ShapeCode = 'missing' | 'unknown-key' | 'wrong-type' | 'not-whole' | 'out-of-range' | 'not-one-of' | 'bad-text';

export type ShapeFault = DocumentFault & { readonly code: ShapeCode };

type Issue = z.core.$ZodIssue;

/** Every fault of a document that its schema refused, in the order of the document; at most one for a place and code. */
export function documentFaults(document: unknown, issues: readonly Issue[]): readonly ShapeFault[] {
  const faults = issues.flatMap((issue) => faultsOf(document, issue));
  const firstAt = new Map(faults.toReversed().map((fault) => [placeOf(fault), fault]));
  return faults.filter((fault) => firstAt.get(placeOf(fault)) === fault);
}

const placeOf = (fault: ShapeFault): string => JSON.stringify([fault.code, ...fault.path]);

function faultsOf(document: unknown, issue: Issue): readonly ShapeFault[] {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownKey(path, key));
  if (valueAt(document, path) === undefined) return [{ path, code: 'missing', message: `is missing: ${demandOf(issue)}` }];
  return [{ path, code: codeOf(issue), message: demandOf(issue) }];
}

const unknownKey = (path: DocumentPath, key: string): ShapeFault => ({
  path: [...path, key],
  code: 'unknown-key',
  message: `“${key}” is not known here: correct its spelling or take it out`,
});

const valueAt = (document: unknown, path: DocumentPath): unknown =>
  path.reduce<unknown>((value, step) => (value as Readonly<Record<string | number, unknown>> | null | undefined)?.[step], document);

function codeOf(issue: Issue): ShapeCode {
  switch (issue.code) {
    case 'invalid_type':
      return issue.expected === 'int' ? 'not-whole' : 'wrong-type';
    case 'too_big':
    case 'too_small':
    case 'not_multiple_of':
      return 'out-of-range';
    case 'invalid_value':
    case 'invalid_union':
      return 'not-one-of';
    case 'unrecognized_keys':
      return 'unknown-key';
    case 'invalid_format':
    case 'invalid_key':
    case 'invalid_element':
    case 'custom':
      return 'bad-text';
    default:
      return assertNever(issue);
  }
}

/** What must stand there. Numbers and texts bring their own words; the rest is said here. */
function demandOf(issue: Issue): string {
  if (issue.code === 'invalid_value') return oneOf(issue.values);
  if (issue.code === 'invalid_union' && 'options' in issue && issue.options) return oneOf(issue.options);
  if (issue.code === 'invalid_key') return issue.issues.map(demandOf).join('; ');
  if (issue.code !== 'invalid_type') return issue.message;
  if (issue.expected === 'object' || issue.expected === 'record') return 'must be an object';
  if (issue.expected === 'array') return 'must be a list';
  if (issue.expected === 'boolean') return 'must be true or false';
  return issue.message;
}

const oneOf = (values: readonly unknown[]): string => `must be one of: ${values.join(', ')}`;
