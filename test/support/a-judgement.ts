// Dull verdicts for tests: who, why and when are always there; only what a test is about needs saying.
import type { ClassJudgement, ClassRule, Evidence, Grounds, PairJudgement, Scope } from '#lib/rulebook/judgement.ts';
import type { MaterialClass } from '#lib/rulebook/material.ts';
import { sharePpm } from '#lib/units/share.ts';
import { localDay } from '#lib/units/time.ts';

const grounds: Grounds = { reason: 'tried side by side', source: 'bench notes', by: 'formulator', on: localDay('2026-01-15') };

/** "Fine" for two materials. */
export const aPairJudgement = (
  firstMaterialId: string,
  secondMaterialId: string,
  overrides: Partial<PairJudgement> = {},
): PairJudgement => ({
  id: `pair-${firstMaterialId}-${secondMaterialId}`,
  firstMaterialId,
  secondMaterialId,
  verdict: 'fine',
  ...grounds,
  ...overrides,
});

/** "Fine" for two classes. */
export const aClassJudgement = (
  firstClass: MaterialClass,
  secondClass: MaterialClass,
  overrides: Partial<ClassJudgement> = {},
): ClassJudgement => ({
  id: `class-${firstClass}-${secondClass}`,
  firstClass,
  secondClass,
  verdict: 'fine',
  ...grounds,
  ...overrides,
});

/** Refuses two classes that meet at any share and any pH. */
export const aClassRule = (firstClass: MaterialClass, secondClass: MaterialClass, overrides: Partial<ClassRule> = {}): ClassRule => ({
  id: `rule-${firstClass}-${secondClass}`,
  first: { materialClass: firstClass, abovePpm: sharePpm(0) },
  second: { materialClass: secondClass, abovePpm: sharePpm(0) },
  then: { kind: 'refuse' },
  ...grounds,
  ...overrides,
});

export const anEvidence = (id: string, kind: Evidence['kind'], overrides: Partial<Evidence> = {}): Evidence => ({
  id,
  kind,
  on: localDay('2026-02-01'),
  result: 'passed',
  ...overrides,
});

/** Approves these shades with these actives up to their levels. */
export const aScope = (shadeIds: readonly string[], levels: Readonly<Record<string, number>>, overrides: Partial<Scope> = {}): Scope => ({
  id: 'scope-1',
  kind: 'approve',
  shadeIds,
  actives: Object.entries(levels).map(([activeId, levelPpm]) => ({ activeId, levelPpm: sharePpm(levelPpm) })),
  mostActivesCount: 3,
  evidenceIds: ['stability-1'],
  reason: 'tested range',
  by: 'formulator',
  on: localDay('2026-02-15'),
  ...overrides,
});
