// What one line of a diff may do. A change is called harmless only where that is certain; everything else "may widen" and must be looked at.
import { STRICTNESS } from '../verdict/pair-verdict.ts';
import type { JudgementVerdict } from '../rulebook/judgement.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { Effect } from './diff.ts';

interface Line {
  readonly section: keyof Rulebook;
  readonly kind: 'added' | 'removed' | 'changed';
  readonly field: string | null;
  readonly was: unknown;
  readonly is: unknown;
}

/** Sections whose every change is of one sort. */
const ALWAYS: Readonly<Partial<Record<keyof Rulebook, Effect>>> = {
  schemaVersion: 'offer',
  code: 'texts',
  title: 'texts',
  notice: 'texts',
  texts: 'texts',
  concerns: 'offer',
  currency: 'offer',
  evidence: 'offer',
  languages: 'offer',
  vessels: 'offer',
  cautions: 'cautions',
};

/** Fields that neither permit nor refuse anything, wherever they stand. */
const WORDS_AND_PRICES = /(^|\.)(name(\..*)?|reason|source|by|on|priceMinor|costMinorPerKg|colour(\..*)?|claims(\..*)?|code|textId|hintTextId|whyTextId|partTextId|lookAlikeName|supplier|contact|benefits)$/;

export function effectOf(line: Line): Effect {
  const always = ALWAYS[line.section];
  if (always) return always;
  if (line.field !== null && WORDS_AND_PRICES.test(line.field)) return /name|reason|source|TextId|textId|by$|on$/.test(line.field) ? 'texts' : 'offer';
  switch (line.section) {
    case 'pairJudgements':
    case 'classJudgements':
      return judgementEffect(line);
    case 'classRules':
      return rowEffect(line, { whenAdded: (row) => ruleEffect(row), whenRemoved: 'widens' });
    case 'scopes':
      return rowEffect(line, { whenAdded: (row) => (fieldOf(row, 'kind') === 'refuse' ? 'narrows' : 'widens'), whenRemoved: fieldOf(line.was, 'kind') === 'approve' ? 'narrows' : 'widens' });
    case 'limits':
      return rowEffect(line, { whenAdded: (row) => (fieldOf(row, 'kind') === 'substance' ? 'narrows' : 'widens'), whenRemoved: fieldOf(line.was, 'kind') === 'colourant' ? 'narrows' : 'widens' });
    case 'shades':
    case 'actives':
    case 'stocks':
    case 'materials':
      return line.kind === 'removed' ? 'narrows' : 'widens';
    default:
      return numberEffect(line);
  }
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

/** Stricter narrows; anything else may widen: a row that goes lets its class judgement speak, which may be looser. */
function judgementEffect(line: Line): Effect {
  if (line.kind === 'added') return fieldOf(line.is, 'verdict') === 'never' ? 'narrows' : 'widens';
  if (line.field !== 'verdict' || !isVerdict(line.was) || !isVerdict(line.is)) return numberEffect(line);
  return STRICTNESS[line.is] < STRICTNESS[line.was] ? 'narrows' : 'widens';
}

/** An upper limit that falls, or a lower one that rises, narrows. */
function numberEffect({ field, was, is }: Line): Effect {
  if (field === null || typeof was !== 'number' || typeof is !== 'number') return 'widens';
  const name = field.split('.').at(-1) ?? '';
  if (/^(max|most|tested|ceiling|allowance|powder|swelling|pigment|ionic|irritancy|freeAcid|gentle)/.test(name)) return is < was ? 'narrows' : 'widens';
  if (/^(min|proven|marginFloor|phError)/.test(name)) return is > was ? 'narrows' : 'widens';
  return 'widens';
}

const isVerdict = (value: unknown): value is JudgementVerdict => typeof value === 'string' && value in STRICTNESS;
const fieldOf = (row: unknown, key: string): unknown => (typeof row === 'object' && row !== null ? (row as Readonly<Record<string, unknown>>)[key] : undefined);
