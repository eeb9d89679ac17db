// The rules that need types: which units meet, where units are made, and what numbers are called where their brands vanish.
import type { Finding } from './house.ts';
import type { Checked } from './program.ts';
import { misnamedColumns, nakedNumbers } from './suffixes.ts';
import { castUnits, mixedUnits } from './units.ts';

export const unitRules = {
  'units meet': mixedUnits,
  'unit cast': castUnits,
  'naked number': nakedNumbers,
  'column name': misnamedColumns,
} satisfies Record<string, (checked: Checked) => Finding[]>;

export type UnitRuleName = keyof typeof unitRules;

export const checkUnits = (checked: Checked): (Finding & { readonly rule: UnitRuleName })[] =>
  (Object.keys(unitRules) as UnitRuleName[]).flatMap((rule) => unitRules[rule](checked).map((finding) => ({ ...finding, rule })));
