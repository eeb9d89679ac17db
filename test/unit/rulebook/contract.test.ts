// The wire contract of the rulebook: what it reads it reads exactly, and every refusal names the place and what belongs there.
import { describe, expect, test } from 'vitest';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import { parseRulebook, rulebookJsonSchema } from '#lib/contracts/rulebook.ts';
import { sharePpm } from '#lib/units/share.ts';
import { localDay } from '#lib/units/time.ts';
import { aClassRule, aPairJudgement } from '#test/support/a-judgement.ts';
import { aRulebook } from '#test/support/a-rulebook.ts';
import { bend } from '#test/support/bend.ts';

const read = (document: unknown): unknown => JSON.parse(JSON.stringify(document));

/** Where a document is refused and why, without the words. */
function refusalsOf(document: unknown): readonly string[] {
  const parsed = parseRulebook(document);
  return parsed.ok ? [] : parsed.refusal.map((fault) => `${fault.path.join('.')}: ${fault.code}`);
}

function messageOf(document: unknown): string {
  const parsed = parseRulebook(document);
  return parsed.ok ? 'accepted' : parsed.refusal.map((fault) => fault.message).join(' / ');
}

/** A book that uses every optional member that the dull one leaves out. */
const fullBook = () =>
  aRulebook({
    pairJudgements: [
      aPairJudgement('kaolin', 'niacinamide', {
        verdict: 'limit',
        limit: { maxSumPpm: sharePpm(40_000) },
        cautionId: 'eyes',
        overridesClassJudgementId: 'class-clay-vitamin',
        evidenceId: 'stability-1',
      }),
    ],
    classRules: [aClassRule('clay', 'vitamin', { then: { kind: 'caution', cautionId: 'eyes' } })],
    crossContacts: [
      { tag: 'nut', policy: { kind: 'ask-staff' } },
      { tag: 'oat', policy: { kind: 'none', reason: 'own room' } },
    ],
    personCaps: [{ id: 'low-clay', materialClass: 'clay', maxPpm: sharePpm(10_000) }],
  });

describe('a document that is well written', () => {
  test.each([
    ['the dull book', aRulebook()],
    ['a book with every optional member', fullBook()],
  ])('%s comes back as it was written', (_, book) => {
    const parsed = parseRulebook(read(book));
    expect(parsed).toStrictEqual({ ok: true, value: book });
  });

  test('parsing changes no byte of the canonical form that is hashed', () => {
    const parsed = parseRulebook(read(fullBook()));
    expect(parsed.ok && canonicalJson(parsed.value)).toBe(canonicalJson(fullBook()));
  });
});

describe('a document that is refused', () => {
  test.each([
    ['a misspelt key', ['base', 'allowencePpm'], 50_000, 'base.allowencePpm: unknown-key'],
    [
      'an unknown key deep in a list',
      ['actives', 0, 'levels', 1, 'benefits', 0, 'note'],
      'x',
      'actives.0.levels.1.benefits.0.note: unknown-key',
    ],
    ['a fraction of a ppm', ['shades', 1, 'parts', 0, 'sharePpm'], 19_000.5, 'shades.1.parts.0.sharePpm: not-whole'],
    ['a fraction of a microgram', ['jarSizes', 0, 'netUg'], 50.25, 'jarSizes.0.netUg: not-whole'],
    ['a fraction of a µmol', ['base', 'acidity', 'umolPerKg', 3], 0.5, 'base.acidity.umolPerKg.3: not-whole'],
    ['a number as a text', ['base', 'densityMgPerMl'], '1010', 'base.densityMgPerMl: wrong-type'],
    ['a negative share', ['base', 'parts', 2, 'sharePpm'], -9000, 'base.parts.2.sharePpm: out-of-range'],
    ['a share above the whole', ['base', 'wettingOilPpm'], 1_000_001, 'base.wettingOilPpm: out-of-range'],
    ['a pH above 14', ['base', 'ph', 'maxPhX100'], 1401, 'base.ph.maxPhX100: out-of-range'],
    ['a number beyond whole doubles', ['scaleProfiles', 0, 'capacityUg'], 1e300, 'scaleProfiles.0.capacityUg: out-of-range'],
    ['an unknown kind of material', ['materials', 3, 'kind'], 'dust', 'materials.3.kind: not-one-of'],
    ['an unknown language', ['languages', 0], 'tlh', 'languages.0: not-one-of'],
    [
      'an unknown kind of effect',
      ['questions', 0, 'options', 0, 'effects', 0, 'kind'],
      'hope',
      'questions.0.options.0.effects.0.kind: not-one-of',
    ],
    ['an unknown kind of limit row', ['limits', 0, 'kind'], 'rumour', 'limits.0.kind: not-one-of'],
    ['another schema version', ['schemaVersion'], 2, 'schemaVersion: not-one-of'],
    ['a language of texts that nobody knows', ['texts', 'tlh'], {}, 'texts.tlh: unknown-key'],
    ['an id that could break a key', ['shades', 0, 'id'], 'chalk|rust', 'shades.0.id: bad-text'],
    ['a text id that could break a key', ['texts', 'en', 'a b'], 'x', 'texts.en.a b: bad-text'],
    ['a blank source', ['materials', 0, 'source'], '  ', 'materials.0.source: bad-text'],
    ['half of a surrogate pair', ['texts', 'en', 'concern.shine'], 'a\ud800', 'texts.en.concern.shine: bad-text'],
    ['a day that is in no calendar', ['evidence', 0, 'on'], '2026-02-30', 'evidence.0.on: bad-text'],
    ['a null where a member may be left out', ['materials', 5, 'phShelf'], null, 'materials.5.phShelf: wrong-type'],
    ['an object where a list belongs', ['stocks'], {}, 'stocks: wrong-type'],
    ['a text where yes or no belongs', ['materials', 0, 'colours'], 'no', 'materials.0.colours: wrong-type'],
  ])('%s', (_, path, value, expected) => {
    expect(refusalsOf(read(bend(aRulebook(), path, value)))).toEqual([expected]);
  });

  test('a missing member is named by its path', () => {
    expect(refusalsOf(read(bend(aRulebook(), ['base', 'caps', 'ionicUnits'], undefined)))).toEqual(['base.caps.ionicUnits: missing']);
  });

  test('an id __proto__ is refused: an open record would drop it', () => {
    const written = JSON.stringify(aRulebook()).replace('"texts":{"en":{', '"texts":{"en":{"__proto__":"x",');
    expect(refusalsOf(JSON.parse(written))).toEqual(['texts.en.__proto__: bad-text']);
  });

  test.each([null, 7, 'rulebook', []])('%j is no rulebook at all', (document) => {
    expect(refusalsOf(document)).toEqual([': wrong-type']);
  });

  test('all wrong places are told at once', () => {
    const once = bend(aRulebook(), ['base', 'wettingOilPpm'], 0.5);
    const twice = bend(once, ['materials', 0, 'surprise'], 1);
    expect(refusalsOf(read(bend(twice, ['markets', 0, 'productKind'], 'spray')))).toEqual([
      'base.wettingOilPpm: not-whole',
      'materials.0.surprise: unknown-key',
      'markets.0.productKind: not-one-of',
    ]);
  });
});

describe('the words of a refusal', () => {
  test('a fraction is told its grain and range', () => {
    expect(messageOf(read(bend(aRulebook(), ['shades', 0, 'parts', 0, 'sharePpm'], 0.5)))).toBe(
      'must be a whole number of ppm of the whole (1 % = 10000), from 0 to 1000000',
    );
  });

  test('an unknown key is told by name', () => {
    expect(messageOf(read(bend(aRulebook(), ['base', 'colour'], 1)))).toContain('“colour” is not known here');
  });

  test('a wrong choice is told the choices', () => {
    expect(messageOf(read(bend(aRulebook(), ['questions', 0, 'choose'], 'all')))).toBe('must be one of: one, many');
    expect(messageOf(read(bend(aRulebook(), ['limits', 0, 'kind'], 'rumour')))).toBe('must be one of: substance, colourant');
  });

  test('a missing member says what belongs there', () => {
    expect(messageOf(read(bend(aRulebook(), ['base', 'inUseDays'], undefined)))).toBe(
      'is missing: must be a whole number of days, from 0 to 36500',
    );
  });
});

describe('the JSON Schema', () => {
  type Schema = {
    readonly [key: string]: unknown;
    readonly properties: Readonly<Record<string, Schema>>;
    readonly items: Schema;
    readonly required: readonly string[];
  };
  const schema = rulebookJsonSchema() as unknown as Schema;
  const property = (...names: readonly string[]): Schema =>
    names.reduce<Schema>((at, name) => (name === '[]' ? at.items : (at.properties[name] as Schema)), schema);

  test('knows every member of a full document, and demands what has no "may be left out"', () => {
    expect(Object.keys(schema.properties)).toEqual([...Object.keys(aRulebook()), 'editionNo']);
    expect(schema.required).toEqual(Object.keys(aRulebook()));
    expect(property('materials', '[]').required).not.toContain('phShelf');
    expect(property('materials', '[]').properties).toHaveProperty('phShelf');
  });

  test('is closed at every object', () => {
    const open = (node: unknown, path: string): readonly string[] => {
      if (typeof node !== 'object' || node === null) return [];
      const here = 'properties' in node && (node as Schema).additionalProperties !== false ? [path] : [];
      return [...here, ...Object.entries(node).flatMap(([key, member]) => open(member, `${path}/${key}`))];
    };
    expect(open(schema, '')).toEqual([]);
  });

  test('says the grain, the range and the form of what is written', () => {
    expect(property('base', 'wettingOilPpm')).toEqual({
      type: 'integer',
      minimum: 0,
      maximum: 1_000_000,
      description: 'ppm of the whole (1 % = 10000)',
    });
    expect(property('base', 'acidity', 'umolPerKg', '[]')).toMatchObject({ type: 'integer', minimum: -100_000_000 });
    expect(property('evidence', '[]', 'on')).toEqual({ type: 'string', format: 'date' });
    expect(property('languages', '[]').enum).toEqual(['en', 'fr', 'de', 'es', 'ar']);
  });

  test('is plain JSON, so that it can be served and printed', () => {
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  });
});

test('a day is parsed into a day of the calendar, not a moment', () => {
  const parsed = parseRulebook(read(aRulebook()));
  expect(parsed.ok && parsed.value.evidence[0]?.on).toBe(localDay('2026-02-01'));
});
