// A rulebook opened for reading: every id resolved once, so that no check searches a list or meets a missing thing.
import { invariant } from '../base/invariant.ts';
import type { ClassJudgement, PairJudgement, Scope } from './judgement.ts';
import type { Material, Stock, Substance } from './material.ts';
import type { Active, JarSize, LabelSize, ScaleProfile, Shade, Vessel } from './offer.ts';
import type { Caution, PersonCap } from './questionnaire.ts';
import type { Rulebook } from './rulebook.ts';

export interface Book {
  readonly rulebook: Rulebook;
  readonly substances: ReadonlyMap<string, Substance>;
  readonly materials: ReadonlyMap<string, Material>;
  readonly stocks: ReadonlyMap<string, Stock>;
  readonly shades: ReadonlyMap<string, Shade>;
  readonly actives: ReadonlyMap<string, Active>;
  readonly cautions: ReadonlyMap<string, Caution>;
  readonly personCaps: ReadonlyMap<string, PersonCap>;
  readonly jarSizes: ReadonlyMap<string, JarSize>;
  readonly vessels: ReadonlyMap<string, Vessel>;
  readonly labelSizes: ReadonlyMap<string, LabelSize>;
  readonly scaleProfiles: ReadonlyMap<string, ScaleProfile>;
  readonly pairJudgements: ReadonlyMap<string, PairJudgement>;
  readonly classJudgements: readonly ClassJudgement[];
  /** The same by the two classes, under `pairKey`. */
  readonly classJudgementsOf: ReadonlyMap<string, readonly ClassJudgement[]>;
  readonly scopes: readonly Scope[];
  /** Materials that stand together in the approved base. */
  readonly baseMaterialIds: ReadonlySet<string>;
}

const byId = <T extends { readonly id: string }>(items: readonly T[]): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [item.id, item]));

/** One key for an unordered pair. */
export const pairKey = (a: string, b: string): string => (a < b ? `${a}|${b}` : `${b}|${a}`);

/** Opens a sound rulebook (see check-rulebook). */
export function openBook(rulebook: Rulebook): Book {
  return {
    rulebook,
    substances: byId(rulebook.substances),
    materials: byId(rulebook.materials),
    stocks: byId(rulebook.stocks),
    shades: byId(rulebook.shades),
    actives: byId(rulebook.actives),
    cautions: byId(rulebook.cautions),
    personCaps: byId(rulebook.personCaps),
    jarSizes: byId(rulebook.jarSizes),
    vessels: byId(rulebook.vessels),
    labelSizes: byId(rulebook.labelSizes),
    scaleProfiles: byId(rulebook.scaleProfiles),
    pairJudgements: new Map(rulebook.pairJudgements.map((judged) => [pairKey(judged.firstMaterialId, judged.secondMaterialId), judged])),
    classJudgements: rulebook.classJudgements,
    classJudgementsOf: Map.groupBy(rulebook.classJudgements, ({ firstClass, secondClass }) => pairKey(firstClass, secondClass)),
    scopes: rulebook.scopes,
    baseMaterialIds: new Set(rulebook.base.parts.map((part) => part.materialId)),
  };
}

/** The thing with this id. Throws a Fault when it is missing: a sound rulebook has no dangling reference. */
export function need<T>(map: ReadonlyMap<string, T>, id: string): T {
  const found = map.get(id);
  invariant(found !== undefined, `no such id in the rulebook: ${id}`);
  return found;
}
