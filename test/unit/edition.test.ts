// Changes, diffs and the gate between a draft and an edition.

import { describe, expect, it } from 'vitest';
import { changeDraftInputSchema } from '#lib/contracts/draft.ts';
import { parseRulebook } from '#lib/contracts/rulebook.ts';
import { draftText, editionText } from '#lib/edition/canonical.ts';
import type { DraftChange } from '#lib/edition/change.ts';
import { applyChange } from '#lib/edition/change.ts';
import { diffRulebooks } from '#lib/edition/diff.ts';
import { EFFECTS } from '#lib/edition/effect.ts';
import type { GateQuestion } from '#lib/edition/publish-gate.ts';
import { publishGate, servedDraft } from '#lib/edition/publish-gate.ts';
import type { Caution } from '#lib/rulebook/questionnaire.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { sharePpm } from '#lib/units/share.ts';
import { addDays } from '#lib/units/time.ts';
import { aDemoRulebook, TEST_DAY } from '#test/support/a-demo-book.ts';

const draft = aDemoRulebook();
const changed = (change: DraftChange): Rulebook => {
  const applied = applyChange(draft, change);
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusal));
  return applied.value;
};
const grounds = { reason: 'seen in a jar', source: 'bench notes', by: 'formulator', on: TEST_DAY };
const lines = (after: Rulebook) => diffRulebooks(draft, after).map((line) => `${line.effect} ${line.key}`);

const caution =
  (id: string, change: Partial<Caution>) =>
  (book: Rulebook): Rulebook => ({ ...book, cautions: book.cautions.map((one) => (one.id === id ? { ...one, ...change } : one)) });

describe('one change of the draft', () => {
  it('closes a level and sets its price', () => {
    const level = {
      kind: 'set-level',
      activeId: 'niacinamide',
      levelPpm: sharePpm(20_000),
      permitted: false,
      priceMinor: moneyMinor(250),
    } as const;
    expect(changed(level).actives[0]?.levels[1]).toMatchObject({ levelPpm: 20_000, permitted: false, priceMinor: 250 });
    expect(draft.actives[0]?.levels[1]?.permitted).toBe(true);
  });
  it('puts a new judgement of a pair in the place and under the name of the old one, whichever way round it is named', () => {
    const judgement = { id: 'again', firstMaterialId: 'illite', secondMaterialId: 'lactic-acid-50', verdict: 'never', ...grounds } as const;
    expect(changed({ kind: 'judge-pair', judgement }).pairJudgements).toEqual([{ ...judgement, id: 'lactic-illite' }]);
  });
  it('adds a judgement where there was none', () => {
    const judgement = { id: 'new', firstMaterialId: 'illite', secondMaterialId: 'panthenol', verdict: 'never', ...grounds } as const;
    expect(changed({ kind: 'judge-pair', judgement }).pairJudgements).toHaveLength(draft.pairJudgements.length + 1);
  });
  it('rewords a caution in one language and its label text', () => {
    const after = changed({ kind: 'set-caution-text', cautionId: 'eyes', lang: 'en', text: 'Keep it out.', labelText: 'Out.' });
    expect([after.texts.en?.['caution.eyes'], after.texts.en?.['caution.eyes.label']]).toEqual(['Keep it out.', 'Out.']);
  });
  it.each([
    ['no words for the customer', { text: ' \n', labelText: 'Out.' }],
    ['no words on the label', { text: 'Keep it out.', labelText: ' ' }],
  ])('leaves no caution with %s', (_, words) => {
    const blank = applyChange(draft, { kind: 'set-caution-text', cautionId: 'eyes', lang: 'en', ...words });
    expect(blank).toEqual({ ok: false, refusal: { kind: 'blank-words', cautionId: 'eyes' } });
    const asked = { parentRevisionNo: 1, change: { kind: 'set-caution-text', cautionId: 'eyes', lang: 'en', ...words } };
    expect(changeDraftInputSchema.safeParse(asked).success).toBe(false);
  });
  it('refuses what is not there', () => {
    const level = {
      kind: 'set-level',
      activeId: 'niacinamide',
      levelPpm: sharePpm(1),
      permitted: true,
      priceMinor: moneyMinor(0),
    } as const;
    expect(applyChange(draft, level)).toEqual({ ok: false, refusal: { kind: 'nothing-to-change', id: 'niacinamide@1' } });
    expect(applyChange(draft, { kind: 'set-caution', cautionId: 'none', mustTick: true }).ok).toBe(false);
  });
});

describe('the diff', () => {
  it('is empty for equal documents and says nothing of their order', () => {
    expect(diffRulebooks(draft, aDemoRulebook())).toEqual([]);
    expect(diffRulebooks(draft, { ...draft, materials: draft.materials.toReversed() })).toEqual([]);
  });
  it.each<readonly [string, (book: Rulebook) => Rulebook, readonly string[]]>([
    [
      'a stricter verdict narrows',
      (book) => ({
        ...book,
        classJudgements: book.classJudgements.map((one) => (one.id === 'clay-with-iron' ? { ...one, verdict: 'never' as const } : one)),
      }),
      ['narrows classJudgements/clay-with-iron/verdict'],
    ],
    [
      'a limit that becomes a never narrows in all its parts',
      (book) => ({
        ...book,
        pairJudgements: book.pairJudgements.map(({ limit: _gone, ...one }) => ({ ...one, verdict: 'never' as const })),
      }),
      ['narrows pairJudgements/lactic-illite/limit', 'narrows pairJudgements/lactic-illite/verdict'],
    ],
    [
      'a looser verdict widens',
      (book) => ({ ...book, pairJudgements: book.pairJudgements.map((one) => ({ ...one, verdict: 'fine' as const })) }),
      ['widens pairJudgements/lactic-illite/verdict'],
    ],
    [
      'a lower cap narrows',
      (book) => ({ ...book, base: { ...book.base, caps: { ...book.base.caps, powderPpm: sharePpm(1) } } }),
      ['narrows base/caps.powderPpm'],
    ],
    [
      'a higher allowance widens',
      (book) => ({ ...book, base: { ...book.base, allowancePpm: sharePpm(60_000) } }),
      ['widens base/allowancePpm'],
    ],
    [
      'an added refusing scope narrows',
      (book) => ({ ...book, scopes: [...book.scopes, { ...book.scopes[1], id: 'more' } as (typeof book.scopes)[number]] }),
      ['narrows scopes/more'],
    ],
    ['a removed refusing scope widens', (book) => ({ ...book, scopes: book.scopes.slice(0, 1) }), ['widens scopes/no-full-acid-on-rust']],
    ['a removed class rule widens', (book) => ({ ...book, classRules: [] }), ['widens classRules/vitamin-outside-ph-4-to-8']],
    ['a removed limit row widens', (book) => ({ ...book, limits: book.limits.slice(1) }), ['widens limits/eu-v-29-phenoxyethanol']],
    [
      'a removed permission to colour narrows',
      (book) => ({ ...book, limits: book.limits.filter((row) => row.id !== 'us-73-2575') }),
      ['narrows limits/us-73-2575'],
    ],
    [
      'a new text is words',
      (book) => ({ ...book, texts: { en: { ...book.texts.en, 'part.mask': 'The mask' } } }),
      ['texts texts/en.part.mask'],
    ],
    [
      'a price is the offer',
      (book) => ({ ...book, shades: book.shades.map((one) => ({ ...one, priceMinor: moneyMinor(5) })) }),
      ['offer shades/chalk-down/priceMinor', 'offer shades/fern-bank/priceMinor', 'offer shades/rust-seam/priceMinor'],
    ],
    [
      'a level that goes off sale narrows',
      (book) => ({
        ...book,
        actives: book.actives.map((one) => ({
          ...one,
          levels: one.levels.map((level, index) => ({ ...level, permitted: level.permitted && index > 0 })),
        })),
      }),
      ['actives/citrate-buffer', 'actives/lactic-acid', 'actives/niacinamide', 'actives/panthenol'].map(
        (key) => `narrows ${key}/levels.0.permitted`,
      ),
    ],
    [
      'a caution that no longer must be ticked widens',
      (book) => ({ ...book, cautions: book.cautions.map((one) => ({ ...one, mustTick: false })) }),
      ['widens cautions/sun/mustTick'],
    ],
    [
      'a removed caution widens',
      (book) => ({ ...book, cautions: book.cautions.filter((one) => one.id !== 'sun') }),
      ['widens cautions/sun'],
    ],
    ['a caution that leaves a place widens', caution('sun', { places: ['kiosk'] }), ['widens cautions/sun/places']],
    ['a caution that moves to another place widens', caution('sun', { places: ['kiosk', 'card'] }), ['widens cautions/sun/places.1']],
    ['a caution without its trigger widens', caution('eyes', { triggers: [] }), ['widens cautions/eyes/triggers']],
    [
      'a caution for fewer things widens',
      caution('eyes', { triggers: [{ kind: 'class', materialClass: 'clay' }] }),
      ['widens cautions/eyes/triggers.0.kind', 'widens cautions/eyes/triggers.0.materialClass'],
    ],
    ['a caution that only staff read from now on widens', caution('sun', { audience: 'staff' }), ['widens cautions/sun/audience']],
    [
      'a caution that must be ticked from now on is about cautions',
      caution('eyes', { mustTick: true }),
      ['cautions cautions/eyes/mustTick'],
    ],
    [
      'a caution in one more place is about cautions',
      caution('sun', { places: ['kiosk', 'label', 'card'] }),
      ['cautions cautions/sun/places'],
    ],
    [
      'a caution with one more trigger is about cautions',
      caution('sun', { triggers: [{ kind: 'always' }] }),
      ['cautions cautions/sun/triggers'],
    ],
    [
      'a new caution is about cautions',
      (book) => ({ ...book, cautions: [...book.cautions, { ...book.cautions[0], id: 'more' } as (typeof book.cautions)[number]] }),
      ['cautions cautions/more'],
    ],
    [
      'a caution’s words are about cautions, at the kiosk and on the label',
      (book) => ({ ...book, texts: { en: { ...book.texts.en, 'caution.sun': 'Other', 'caution.sun.label': 'Other' } } }),
      ['cautions texts/en.caution.sun', 'cautions texts/en.caution.sun.label'],
    ],
  ])('%s', (_, bend, expected) => expect(lines(bend(draft))).toEqual(expected));

  it('lists what widens use first', () => {
    const effects = diffRulebooks(draft, {
      ...draft,
      title: 'Other',
      classRules: [],
      base: { ...draft.base, caps: { ...draft.base.caps, powderPpm: sharePpm(1) } },
    }).map((line) => EFFECTS.indexOf(line.effect));
    expect(effects).toEqual([...effects].sort());
    expect(effects[0]).toBe(0);
  });
});

describe('the publish gate', () => {
  const diff = diffRulebooks(draft, { ...draft, classRules: [] });
  const asked: GateQuestion = {
    draft,
    faultsCount: 0,
    diff,
    variantsCount: 48,
    authorIds: ['author'],
    approverId: 'approver',
    lookedAt: diff.map((line) => line.key),
    reason: 'The rule is older than the windows of both vitamins, which say the same',
    day: TEST_DAY,
    replacesEditionNos: [],
  };
  const open = (change: Partial<GateQuestion>): readonly string[] => publishGate({ ...asked, ...change }).open.map((point) => point.kind);

  it('lets a sound draft through that somebody else looked at and gave a reason for', () => expect(open({})).toEqual([]));
  it.each<readonly [string, Partial<GateQuestion>]>([
    ['unsound', { faultsCount: 1 }],
    ['not-looked-at', { lookedAt: [] }],
    ['own-work', { approverId: 'author' }],
    ['no-reason', { reason: 'Because I say so' }],
    ['nothing-permitted', { variantsCount: 0 }],
    ['restricted-without-row', { draft: { ...draft, limits: draft.limits.filter((row) => row.kind !== 'substance') } }],
  ])('holds back: %s', (kind, change) => expect(open(change)).toEqual([kind]));
  it('holds back a draft without a change', () => expect(open({ diff: [], lookedAt: [] })).toEqual(['nothing-changed']));
  it('names every open point at once', () =>
    expect(open({ faultsCount: 2, lookedAt: [], approverId: 'author', reason: '' })).toEqual([
      'unsound',
      'not-looked-at',
      'own-work',
      'no-reason',
    ]));

  it('leaves out a market whose duties are not met, and needs at least one', () => {
    const [eu, us] = draft.markets;
    const withoutReport = { ...draft, markets: [eu, { ...us, safetyReport: undefined }] } as Rulebook;
    const gate = publishGate({ ...asked, draft: withoutReport });
    expect(gate.notices).toEqual([{ kind: 'market-left-out', marketId: 'US', missing: ['safetyReport'] }]);
    expect(servedDraft(withoutReport).markets.map((market) => market.id)).toEqual(['EU']);
    expect(open({ draft: { ...draft, markets: [] } })).toEqual(['no-market']);
  });
  it('names the editions that never come into force once this one does', () =>
    expect(publishGate({ ...asked, replacesEditionNos: [4] }).notices).toEqual([{ kind: 'replaces-edition', editionNo: 4 }]));
  it('announces limits that come into force within 90 days', () => {
    const ahead = (days: number) =>
      publishGate({
        ...asked,
        draft: { ...draft, limits: draft.limits.map((row, index) => (index === 0 ? { ...row, fromDay: addDays(TEST_DAY, days) } : row)) },
      }).notices;
    expect([ahead(0), ahead(1), ahead(90), ahead(91)].map((notices) => notices.length)).toEqual([0, 1, 1, 0]);
  });
});

describe('the bytes of an edition', () => {
  it('do not depend on the order of keys', () => {
    const turned = Object.fromEntries(Object.entries(draft).toReversed()) as unknown as Rulebook;
    expect([draftText(turned), editionText(turned, 3)]).toEqual([draftText(draft), editionText(draft, 3)]);
  });
  it('are others under another number, and read back as the same rules', () => {
    expect(editionText(draft, 2)).not.toBe(editionText(draft, 3));
    expect(parseRulebook(JSON.parse(editionText(draft, 3)))).toEqual({ ok: true, value: draft });
  });
});
