// Planted files: small trees that break exactly one rule (crimes), and their neighbours that look alike and break none (near misses).
import type { RuleName } from '../check-house.ts';

export type Planted = { readonly rule: RuleName; readonly name: string; readonly files: Readonly<Record<string, string>> };

export const planted = (rule: RuleName, name: string, files: Readonly<Record<string, string>>): Planted => ({ rule, name, files });

/** A file of lib: it must open with a comment before anything else is looked at. */
export const said = (code: string): string => `// Decides one thing.\n${code}\n`;
