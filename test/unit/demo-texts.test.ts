// What the demonstration says to customers: complete in both languages, plain, and without a promise or an alarm.
import { describe, expect, it } from 'vitest';
import { CAUTIONS, FIXED_BY_LAW } from '#app/_cli/demo/rulebook/cautions.data.ts';
import { demoRulebook } from '#app/_cli/demo/rulebook/demo-rulebook.ts';
import { checkRulebook } from '#lib/rulebook/check-rulebook.ts';
import { textReferences } from '#lib/rulebook/text-references.ts';
import { TEST_DAY } from '#test/support/a-demo-book.ts';
import { argumentsOf, bannedIn, fleschKincaidGrade, sentencesOf, syllablesCount, wordsCount } from '#test/support/customer-words.ts';

const rulebook = demoRulebook(TEST_DAY);
const en = rulebook.texts.en ?? {};
const fr = rulebook.texts.fr ?? {};
const used = [...new Set([...textReferences(rulebook)].map(({ textId }) => textId))].sort();
const forStaff = new Set(CAUTIONS.filter(({ audience }) => audience === 'staff').map(({ textId }) => textId));
const isOurs = (textId: string): boolean => !FIXED_BY_LAW.includes(textId);
const forCustomers = used.filter((textId) => isOurs(textId) && !forStaff.has(textId));

/** A question is read with its answers; a mask with all its good points; a caution by itself. */
function passageOf(textId: string): string {
  const [kind = '', name = ''] = textId.split('.');
  if (kind === 'question' || kind === 'option') return `question ${name.replace(/^([a-z]+)-.*$/, '$1')}`;
  return kind === 'caution' && !textId.endsWith('.label') ? textId : kind;
}

const passages = Map.groupBy(forCustomers, passageOf);
const asPassage = (textIds: readonly string[]): string => textIds.map((id) => (en[id] ?? '').replace(/(?<![.?!])$/, '.')).join(' ');

describe('in English and French', () => {
  it('each text that the rulebook or the label names is there, and nothing that none of them names', () => {
    for (const texts of [en, fr]) expect(Object.keys(texts).sort()).toEqual(used);
    expect(used.filter((id) => en[id]?.trim() === '' || fr[id]?.trim() === '')).toEqual([]);
  });

  it('with French on sale the rulebook would miss no text or name, and no caution is idle', () => {
    const codes = checkRulebook({ ...rulebook, languages: ['en', 'fr'] }, TEST_DAY).map(({ code }) => code);
    expect(codes.filter((code) => code === 'missing-text' || code === 'missing-name' || code === 'caution-idle')).toEqual([]);
  });

  it('both wait for the same values', () => {
    expect(used.filter((id) => argumentsOf(en[id] ?? '').join() !== argumentsOf(fr[id] ?? '').join())).toEqual([]);
    expect(argumentsOf('{count, plural, one {a jar} other {{size} jars}}')).toEqual(['a', 'count', 'size']);
  });

  it('no text uses a banned word', () => {
    expect(used.filter(isOurs).flatMap((id) => bannedIn(en[id] ?? '', 'en').map((word) => `${id}: ${word}`))).toEqual([]);
    expect(used.filter(isOurs).flatMap((id) => bannedIn(fr[id] ?? '', 'fr').map((word) => `${id}: ${word}`))).toEqual([]);
  });

  it('no text raises its voice', () => {
    expect(used.filter((id) => /!/.test(`${en[id]}${fr[id]}`))).toEqual([]);
  });

  it('sentences stay short, and so do questions and answers', () => {
    const long = (texts: Readonly<Record<string, string>>, most: number): readonly string[] =>
      used.filter((id) => isOurs(id) && sentencesOf(texts[id] ?? '').some((one) => wordsCount(one) > most));
    expect(long(en, 20)).toEqual([]);
    expect(long(fr, 25)).toEqual([]);
    const answers = used.filter((id) => id.startsWith('option.') && !id.endsWith('.hint'));
    expect(answers.filter((id) => wordsCount(en[id] ?? '') > 10)).toEqual([]);
  });
});

describe('in English', () => {
  it.each([...passages.keys()])('%s reads at grade 6 or below', (name) => {
    const passage = asPassage(passages.get(name) ?? []);
    expect(fleschKincaidGrade(passage), passage).toBeLessThanOrEqual(6);
  });
});

describe('in French', () => {
  const wrong = (pattern: RegExp): readonly string[] => used.filter((id) => pattern.test(fr[id] ?? ''));

  it('a narrow no-break space stands before high marks and inside quotation marks', () => {
    expect(wrong(/(?<!\u202f)[;:!?»]/u)).toEqual([]);
    expect(wrong(/«(?!\u202f)/u)).toEqual([]);
    expect(wrong(/\u202f(?![;:!?»\p{L}])/u)).toEqual([]);
  });

  it('apostrophes and quotation marks are real ones, and no space stands twice', () => {
    expect(wrong(/['"“”]| {2}/u)).toEqual([]);
  });

  it('nothing is left in English', () => {
    expect(used.filter((id) => fr[id] === en[id])).toEqual([]);
  });
});

describe('the measures', () => {
  it('count syllables as a reader does, or one too many', () => {
    const counts = { skin: 1, wash: 1, mask: 1, use: 1, little: 2, tingling: 2, swollen: 2, pregnant: 2, pharmacist: 3 };
    expect(Object.fromEntries(Object.keys(counts).map((word) => [word, syllablesCount(word)]))).toEqual(counts);
  });

  it('agree with the formula by hand', () => {
    // 6 words, 2 sentences, 6 syllables: 0.39 · 3 + 11.8 · 1 − 15.59
    expect(fleschKincaidGrade('Rinse it off. Dry your skin.')).toBeCloseTo(-2.62, 10);
  });

  it('find banned words with their endings, and leave words that only look like them', () => {
    expect(bannedIn('Treats acne and is Safe.', 'en')).toEqual(['treat', 'acne', 'safe']);
    expect(bannedIn('A retreat, a healthy manicure, a safety pin.', 'en')).toEqual(['heal']);
    expect(bannedIn('Guérit l’acné, garanti.', 'fr')).toEqual(['guéri', 'acné', 'garanti']);
    expect(bannedIn('Un portrait mesuré', 'fr')).toEqual([]);
  });
});
