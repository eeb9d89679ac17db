// The shape of the table of examples: what can happen in the demonstration, each with one request that makes it happen.
import type { FindingCode } from '#lib/base/finding.ts';
import type { Outcome } from '#lib/rulebook/questionnaire.ts';

/** Everything that a request leaves out is ordinary: nothing to tell, the first jar size, all scales, a full shelf, the rules as they are. */
export interface ExampleRequest {
  /** "shade|active@ppm+active@ppm" */
  readonly variant?: string;
  /** Options said instead of the easiest answer, by question. */
  readonly says?: Readonly<Record<string, readonly string[]>>;
  readonly jarSizeId?: string;
  readonly bench?: 'coarse' | 'fine' | 'none' | 'small';
  readonly shelf?: Shelf;
  /** Allergen of the jar that was mixed here before. */
  readonly afterTag?: string;
  /** Warmer of room and stocks; left out: not known. */
  readonly warmestC?: number;
  /** Cells of the rulebook that a draft changes; no value: the thing is taken out. */
  readonly changes?: readonly { readonly path: readonly string[]; readonly value?: unknown }[];
}

export type Shelf =
  | { readonly kind: 'empty' }
  /** Shades and base, but nothing that is added for what it does. */
  | { readonly kind: 'no-actives' }
  | { readonly kind: 'without'; readonly stockId: string }
  | { readonly kind: 'halves'; readonly stockId: string; readonly grams: number }
  | { readonly kind: 'lives'; readonly days: number }
  | { readonly kind: 'cream-at'; readonly phX100: number }
  | { readonly kind: 'stopped'; readonly shadeId: string };

export interface Example {
  readonly id: string;
  /** The mask, in words; empty where none is asked for. */
  readonly mask: string;
  /** What is not ordinary about the request, a phrase each. */
  readonly circumstances: readonly string[];
  readonly request: ExampleRequest;
}

export interface FindingExample extends Example {
  readonly id: FindingCode;
  readonly facts: Readonly<Record<string, unknown>>;
}

/** One row for each number of actives, and what stood in the way: a variant with two reasons counts at both. */
export interface RefusalCount {
  readonly activesCount: number;
  readonly variantsCount: number;
  readonly permittedCount: number;
  readonly byCode: Readonly<Partial<Record<FindingCode, number>>>;
  readonly byCheck: Readonly<Record<string, number>>;
  /** Nothing but this check stood in the way. */
  readonly aloneByCheck: Readonly<Record<string, number>>;
}

export interface ExampleTable {
  readonly day: string;
  readonly rulebookSha256: string;
  readonly counts: readonly RefusalCount[];
  readonly findings: readonly FindingExample[];
  readonly outcomes: readonly (Example & { readonly id: Outcome | 'one' | 'no-active' })[];
  readonly cautions: readonly (Example & { readonly text: string })[];
  readonly card: readonly (Example & { readonly says: string })[];
}
