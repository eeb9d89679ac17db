// The kiosk in French: what the compiler cannot see of a catalogue. The same values, French signs, no claim, no English left over.
import { describe, expect, it } from 'vitest';
import { en as kioskEn } from '#app/_ui/text/kiosk/en.ts';
import { fr as kioskFr } from '#app/_ui/text/kiosk/fr.ts';
import { en as reasonsEn } from '#app/_ui/text/kiosk-reasons/en.ts';
import { fr as reasonsFr } from '#app/_ui/text/kiosk-reasons/fr.ts';
import { isSpoken, kioskText } from '#app/kiosk/kiosk-text.ts';
import { reasonWords } from '#app/kiosk/reason-words.ts';
import { newVisit, reduceVisit } from '#lib/answers/visit.ts';
import type { Questionnaire } from '#lib/answers/visit-answers.ts';

const english: Readonly<Record<string, string>> = { ...kioskEn, ...reasonsEn };
const french: Readonly<Record<string, string>> = { ...kioskFr, ...reasonsFr };
const pairs = Object.entries(french).map(([key, words]) => [key, words, english[key] ?? ''] as const);

/** Names of the values that a sentence takes, and how it chooses by them. */
const valuesOf = (words: string): readonly string[] =>
  [...new Set(Array.from(words.matchAll(/\{(\w+)(?:\}|, (plural|select),)/g), ([, name, kind]) => `${name} ${kind ?? ''}`))].sort();

const SAME_IN_BOTH = new Set(['code-line']);
const CLAIMS =
  /guéri|\btrait(e|er|ent|ement)s?\b|\bsoigne|répar|thérap|clinique|anti-?inflammatoire|antibactérien|détox|acné|eczéma|rosacée|dermatite|diagnosti|hypoallergénique|sans produit chimique|prouvé|garanti|anti-âge|danger|malheureusement|invalide|!/iu;
const LONGEST_SENTENCE_WORDS = 24;

describe('the French catalogue', () => {
  it('has the keys of the English one', () => {
    expect(Object.keys(kioskFr).sort()).toEqual(Object.keys(kioskEn).sort());
    expect(Object.keys(reasonsFr).sort()).toEqual(Object.keys(reasonsEn).sort());
  });

  it.each(pairs)('%s takes the same values', (_, words, source) => {
    expect(valuesOf(words)).toEqual(valuesOf(source));
  });

  it.each(pairs)('%s is French, promises nothing, and is short', (key, words, source) => {
    if (/\p{L}{5}/u.test(source.replaceAll(/\{\w+\}/g, '')) && !SAME_IN_BOTH.has(key)) expect(words).not.toBe(source);
    expect(words).not.toMatch(/\b(the|your|you|our|please|mask|answers?)\b/i);
    expect(words).not.toMatch(CLAIMS);
    for (const sentence of words.split(/[.?]\s/)) expect(sentence.split(/\s+/).length).toBeLessThanOrEqual(LONGEST_SENTENCE_WORDS);
  });

  it.each(pairs)('%s has French signs', (_, words) => {
    expect(words).not.toMatch(/[^\u202f][?;:!](?=\s|$|\})/u);
    expect(words).not.toMatch(/['"]/);
  });

  it('writes money, and a count, as French does', () => {
    const text = kioskText('fr');
    expect(text.t('results-title', { count: 1 })).toBe('Nous avons choisi 1 masque pour vous');
    expect(text.number(1.5, 1)).toBe('1,5');
    expect(reasonWords({ reason: 'clash', names: ['Urée', 'Caféine'], tag: null, isPersonal: false, questionIds: [] }, 'fr')).toBe(
      'Urée et Caféine ne vont pas bien ensemble.',
    );
  });

  it('stands aside for English where the kiosk does not speak a language', () => {
    expect([isSpoken('fr'), isSpoken('de')]).toEqual([true, false]);
    expect(kioskText('de').t('start')).toBe(kioskEn.start);
  });
});

it('a change of language keeps every answer and the page, and asks for the masks anew', () => {
  const questionnaire = (text: string): Questionnaire => ({
    questions: [
      {
        id: 'age',
        part: text,
        text,
        why: null,
        choose: 'one',
        mostCount: 1,
        options: [{ id: 'old', text, hint: null, exclusive: false, isSkip: false, ends: null, skips: [] }],
      },
    ],
    outcomesWorstFirst: [],
  });
  const started = reduceVisit(newVisit<string, string>(questionnaire('Age')), { kind: 'start' });
  const answered = reduceVisit(started, { kind: 'choose', questionId: 'age', optionId: 'old' });
  const found = reduceVisit(answered, { kind: 'found', found: 'masks' });
  const french = reduceVisit(found, { kind: 'speak', questionnaire: questionnaire('Âge') });
  expect([french.answers, french.at, french.found]).toEqual([answered.answers, answered.at, null]);
  expect(french.questionnaire.questions[0]).toMatchObject({ text: 'Âge' });
});
