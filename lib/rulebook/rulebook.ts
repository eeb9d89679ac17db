// The one document that decides what may be made: a draft while edited, an edition once published.
import type { Base, HouseRules } from './base.ts';
import type { ClassJudgement, ClassRule, Evidence, PairJudgement, Scope } from './judgement.ts';
import type { Lang } from './language.ts';
import type { LimitRow, Market } from './limit.ts';
import type { Material, Stock, Substance } from './material.ts';
import type { Active, JarSize, LabelSize, ScaleProfile, Shade, Vessel } from './offer.ts';
import type { Caution, Concern, CrossContact, PersonCap, Question } from './questionnaire.ts';

export interface Rulebook {
  readonly schemaVersion: 1;
  readonly code: string;
  readonly title: string;
  /** Said wherever the data is invented or borrowed; empty for a real shop. */
  readonly notice: string;
  readonly currency: string;
  /** Languages on sale; the first is the one that texts are written in. */
  readonly languages: readonly Lang[];
  readonly base: Base;
  readonly house: HouseRules;
  readonly substances: readonly Substance[];
  readonly materials: readonly Material[];
  readonly stocks: readonly Stock[];
  readonly shades: readonly Shade[];
  readonly actives: readonly Active[];
  readonly pairJudgements: readonly PairJudgement[];
  readonly classJudgements: readonly ClassJudgement[];
  readonly classRules: readonly ClassRule[];
  readonly evidence: readonly Evidence[];
  readonly scopes: readonly Scope[];
  readonly limits: readonly LimitRow[];
  readonly markets: readonly Market[];
  readonly concerns: readonly Concern[];
  readonly questions: readonly Question[];
  readonly personCaps: readonly PersonCap[];
  readonly crossContacts: readonly CrossContact[];
  readonly cautions: readonly Caution[];
  readonly jarSizes: readonly JarSize[];
  readonly vessels: readonly Vessel[];
  readonly labelSizes: readonly LabelSize[];
  readonly scaleProfiles: readonly ScaleProfile[];
  readonly texts: Readonly<Partial<Record<Lang, Readonly<Record<string, string>>>>>;
}
