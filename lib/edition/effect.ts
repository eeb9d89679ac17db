// What one line of a diff may do. A change is called harmless only where that is certain; everything else "may widen" and must be looked at.

import { canonicalJson } from '../base/canonical-json.ts';
import type { JudgementVerdict } from '../rulebook/judgement.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import { STRICTNESS } from '../verdict/pair-verdict.ts';

/** Worst first. */
export const EFFECTS = ['widens', 'cautions', 'narrows', 'offer', 'texts'] as const;
export type Effect = (typeof EFFECTS)[number];

interface Line {
  readonly section: keyof Rulebook;
  readonly kind: 'added' | 'removed' | 'changed';
  readonly field: string | null;
  readonly was: unknown;
  readonly is: unknown;
  /** The row or object as it will be, of which `field` is a part. */
  readonly whole: unknown;
  /** One of the texts that a caution says, at the kiosk or on the label. */
  readonly isCautionText: boolean;
}

/** Fields that neither permit nor refuse anything, wherever they stand. */
const WORDS_AND_PRICES =
  /(^|\.)(name(\..*)?|reason|source|by|on|priceMinor|costMinorPerKg|colour(\..*)?|claims(\..*)?|code|textId|hintTextId|whyTextId|partTextId|lookAlikeName|supplier|contact|benefits)$/;

export function effectOf(line: Line): Effect {
  if (line.field !== null && !WHOLE_SECTIONS.has(line.section) && WORDS_AND_PRICES.test(line.field)) {
    return /name|reason|source|TextId|textId|by$|on$/.test(line.field) ? 'texts' : 'offer';
  }
  return SECTIONS[line.section](line);
}

interface RowEffects {
  readonly whenAdded: (row: unknown) => Effect;
  readonly whenRemoved: Effect;
}

function rowEffect(line: Line, { whenAdded, whenRemoved }: RowEffects): Effect {
  if (line.kind === 'added') return whenAdded(line.is);
  if (line.kind === 'removed') return whenRemoved;
  return numberEffect(line);
}

const ruleEffect = (row: unknown): Effect => (fieldOf(fieldOf(row, 'then'), 'kind') === 'caution' ? 'cautions' : 'narrows');

const GOES_WITH_VERDICT = /^(verdict|limit(\..*)?|cautionId|overridesClassJudgementId|evidenceId)$/;

/** Stricter narrows; anything else may widen: a row that goes lets its class judgement speak, which may be looser. */
function judgementEffect(line: Line): Effect {
  if (line.kind === 'added') return fieldOf(line.is, 'verdict') === 'never' ? 'narrows' : 'widens';
  // "Never" needs no limit, caution or leave to override: what goes with them lets nothing through.
  if (fieldOf(line.whole, 'verdict') === 'never' && GOES_WITH_VERDICT.test(line.field ?? '')) return 'narrows';
  if (line.field !== 'verdict' || !isVerdict(line.was) || !isVerdict(line.is)) return numberEffect(line);
  return STRICTNESS[line.is] < STRICTNESS[line.was] ? 'narrows' : 'widens';
}

/** An upper limit that falls, or a lower one that rises, narrows. */
function numberEffect({ field, was, is }: Line): Effect {
  if (field === null || typeof was !== 'number' || typeof is !== 'number') return 'widens';
  const name = field.split('.').at(-1) ?? '';
  if (/^(max|most|tested|ceiling|allowance|powder|swelling|pigment|ionic|irritancy|freeAcid|gentle)/.test(name))
    return is < was ? 'narrows' : 'widens';
  if (/^(min|proven|marginFloor|phError)/.test(name)) return is > was ? 'narrows' : 'widens';
  return 'widens';
}

const isVerdict = (value: unknown): value is JudgementVerdict => typeof value === 'string' && value in STRICTNESS;
const fieldOf = (row: unknown, key: string): unknown =>
  typeof row === 'object' && row !== null ? (row as Readonly<Record<string, unknown>>)[key] : undefined;

/**
 * A caution that comes, that must be ticked from now on, that is shown or owed in more places only adds. Whatever else happens to one may
 * let a jar pass with less said.
 */
function cautionEffect({ kind, field, was, is }: Line): Effect {
  if (kind !== 'changed') return kind === 'added' ? 'cautions' : 'widens';
  if (/^(source|textId)$/.test(field ?? '')) return 'cautions';
  if (field === 'mustTick') return is === true ? 'cautions' : 'widens';
  const isGrown =
    Array.isArray(was) && Array.isArray(is) && was.every((one) => is.some((other) => canonicalJson(one) === canonicalJson(other)));
  return isGrown ? 'cautions' : 'widens';
}

const removalNarrows = (line: Line): Effect => (line.kind === 'removed' ? 'narrows' : 'widens');

/** A level that goes off sale. */
const isClosing = ({ field, was, is }: Line): boolean => (field?.endsWith('.permitted') ?? false) && was === true && is === false;

const scopeEffect = (line: Line): Effect =>
  rowEffect(line, {
    whenAdded: (row) => (fieldOf(row, 'kind') === 'refuse' ? 'narrows' : 'widens'),
    whenRemoved: fieldOf(line.was, 'kind') === 'approve' ? 'narrows' : 'widens',
  });

const limitEffect = (line: Line): Effect =>
  rowEffect(line, {
    whenAdded: (row) => (fieldOf(row, 'kind') === 'substance' ? 'narrows' : 'widens'),
    whenRemoved: fieldOf(line.was, 'kind') === 'colourant' ? 'narrows' : 'widens',
  });

const always = (effect: Effect) => (): Effect => effect;

/** Sections whose every change is of one sort, whatever the field. */
const WHOLE_SECTIONS: ReadonlySet<keyof Rulebook> = new Set(['code', 'title', 'notice', 'texts', 'cautions', 'evidence']);

/** A section that is not listed does not compile: a new one must say what its changes may do. */
const SECTIONS = {
  schemaVersion: always('offer'),
  code: always('texts'),
  title: always('texts'),
  notice: always('texts'),
  texts: (line) => (line.isCautionText ? 'cautions' : 'texts'),
  concerns: always('offer'),
  currency: always('offer'),
  evidence: always('offer'),
  languages: always('offer'),
  vessels: always('offer'),
  cautions: cautionEffect,
  pairJudgements: judgementEffect,
  classJudgements: judgementEffect,
  classRules: (line) => rowEffect(line, { whenAdded: ruleEffect, whenRemoved: 'widens' }),
  scopes: scopeEffect,
  limits: limitEffect,
  shades: removalNarrows,
  actives: (line) => (isClosing(line) ? 'narrows' : removalNarrows(line)),
  stocks: removalNarrows,
  materials: removalNarrows,
  base: numberEffect,
  house: numberEffect,
  substances: numberEffect,
  markets: numberEffect,
  questions: numberEffect,
  personCaps: numberEffect,
  crossContacts: numberEffect,
  jarSizes: numberEffect,
  labelSizes: numberEffect,
  scaleProfiles: numberEffect,
} satisfies Record<keyof Rulebook, (line: Line) => Effect>;
