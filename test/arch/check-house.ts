// The test that keeps the house standing: a pure function from files to broken rules.
import { clocks, environment, randomness, sqlCapabilities, strayDrivers, straySql } from './capabilities.ts';
import { cycles } from './cycles.ts';
import type { Files, Finding, Rule } from './house.ts';
import { readHouse } from './house.ts';
import { climbing, homeless, lost, mintedAbroad, unlisted } from './layers.ts';
import { badNames, barrels } from './names.ts';
import { asyncInPure, caughtInPure, classesInPure, hostSettings, metaInPure, moduleState, strangeGlobals } from './purity.ts';
import { frozenPages, heavyKiosk, leaks, strayClients } from './reach.ts';
import { longFiles, longFunctions, manyParameters, staleLeave } from './sizes.ts';
import { silentOpenings, softDefaults } from './switches.ts';
import { rawMarkup, serverActions, styleAttributes } from './web.ts';
import { bannedWords, expectedErrors } from './words.ts';

export const rules = {
  room: homeless,
  import: unlisted,
  'lost import': lost,
  'climbing import': climbing,
  'unit made abroad': mintedAbroad,
  'browser leak': leaks,
  'stray client': strayClients,
  'heavy kiosk': heavyKiosk,
  'frozen page': frozenPages,
  cycle: cycles,
  barrel: barrels,
  name: badNames,
  global: strangeGlobals,
  'import.meta': metaInPure,
  async: asyncInPure,
  catch: caughtInPure,
  state: moduleState,
  class: classesInPure,
  'host setting': hostSettings,
  clock: clocks,
  'sql capability': sqlCapabilities,
  dice: randomness,
  environment,
  driver: strayDrivers,
  sql: straySql,
  style: styleAttributes,
  markup: rawMarkup,
  'server action': serverActions,
  'file size': (house) => longFiles(house),
  'size list': (house) => staleLeave(house),
  'function size': longFunctions,
  parameters: manyParameters,
  'banned word': bannedWords,
  'expected error': expectedErrors,
  default: softDefaults,
  'opening comment': silentOpenings,
} satisfies Record<string, Rule>;

export type RuleName = keyof typeof rules;
export type Violation = Finding & { readonly rule: RuleName };

/** Every broken rule of a tree given as path → text. Only the named rules are asked when some are named. */
export function checkHouse(files: Files, asked: readonly RuleName[] = Object.keys(rules) as RuleName[]): Violation[] {
  const house = readHouse(files);
  return asked.flatMap((rule) => rules[rule](house).map((finding) => ({ ...finding, rule })));
}

export const show = ({ path, line, says, rule }: Finding & { readonly rule: string }): string => `${path}:${line}  [${rule}] ${says}`;
