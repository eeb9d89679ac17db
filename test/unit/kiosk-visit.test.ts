// A visit in the browser: every page it can stand on, every way it moves, and what it forgets.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { KioskQuestion } from '#lib/answers/kiosk-questions.ts';
import { kioskQuestions } from '#lib/answers/kiosk-questions.ts';
import { readAnswers } from '#lib/answers/read-answers.ts';
import type { Visit, VisitAction } from '#lib/answers/visit.ts';
import { newVisit, pageOf, reduceVisit } from '#lib/answers/visit.ts';
import type { Questionnaire } from '#lib/answers/visit-answers.ts';
import { askedQuestions, chosenIds, outcomesOf } from '#lib/answers/visit-answers.ts';
import { OUTCOMES } from '#lib/rulebook/questionnaire.ts';
import { aDemoRulebook } from '#test/support/a-demo-book.ts';

type Found = { readonly masks: readonly string[] };
type Receipt = { readonly code: string };
type AVisit = Visit<Found, Receipt>;
type Action = VisitAction<Found, Receipt>;

const DEMO: Questionnaire = { questions: kioskQuestions(aDemoRulebook(), 'en'), outcomesWorstFirst: OUTCOMES };
const led = (visit: AVisit, ...actions: readonly Action[]): AVisit => actions.reduce<AVisit>(reduceVisit, visit);
const choose = (questionId: string, optionId: string): Action => ({ kind: 'choose', questionId, optionId });
const go: Action = { kind: 'continue' };
const begun = (questionnaire: Questionnaire = DEMO): AVisit => led(newVisit(questionnaire), { kind: 'start' });

const PLAIN: readonly Action[] = [
  choose('age', 'age-18'),
  go,
  choose('wish', 'wish-oil'),
  go,
  choose('sting', 'sting-never'),
  go,
  choose('today', 'today-none'),
  go,
];
const checked = (): AVisit => led(begun(), ...PLAIN);
const shown = (): AVisit => led(checked(), go, { kind: 'found', found: { masks: ['one', 'two'] } });

/** Three questions of which the first can make the second needless, and the second the third. */
function chained(): Questionnaire {
  const question = (id: string, skips: readonly string[]): KioskQuestion => ({
    id,
    part: 'Part',
    text: `${id}?`,
    why: null,
    choose: 'one',
    mostCount: 1,
    options: [
      { id: `${id}-plain`, text: 'Plain', hint: null, exclusive: false, isSkip: false, ends: null, skips: [] },
      { id: `${id}-skips`, text: 'Skips', hint: null, exclusive: false, isSkip: false, ends: null, skips },
    ],
  });
  return { questions: [question('a', ['b']), question('b', ['c']), question('c', [])], outcomesWorstFirst: OUTCOMES };
}

describe('going forward', () => {
  it('starts at the first question with nothing chosen', () => {
    expect(pageOf(newVisit(DEMO))).toEqual({ kind: 'start' });
    expect(pageOf(begun())).toEqual({ kind: 'question', questionId: 'age' });
    expect(begun().answers).toEqual([]);
  });

  it('asks in order, then shows all answers, then looks for masks', () => {
    const pages = PLAIN.map((_, index) => pageOf(led(begun(), ...PLAIN.slice(0, index + 1))));
    expect(pages.map((page) => (page.kind === 'question' ? page.questionId : page.kind))).toEqual([
      'age',
      'wish',
      'wish',
      'sting',
      'sting',
      'today',
      'today',
      'check',
    ]);
    expect(pageOf(led(checked(), go))).toEqual({ kind: 'results' });
  });

  it('choosing alone never moves on', () => {
    expect(pageOf(led(begun(), choose('age', 'age-18')))).toEqual({ kind: 'question', questionId: 'age' });
  });

  it('stays and says why when nothing or too much is chosen, until something else is', () => {
    const open = led(begun(), go);
    expect([pageOf(open), open.mistake]).toEqual([{ kind: 'question', questionId: 'age' }, 'choose-one']);
    expect(led(open, choose('age', 'age-18')).mistake).toBeNull();
    const wishes = ['wish-oil', 'wish-dry', 'wish-dull'].map((id) => choose('wish', id));
    const many = led(begun(), choose('age', 'age-18'), go, ...wishes, go);
    expect([pageOf(many), many.mistake]).toEqual([{ kind: 'question', questionId: 'wish' }, 'choose-fewer']);
  });

  it('goes to the cautions only with a mask chosen', () => {
    const none = led(shown(), go);
    expect([pageOf(none), none.mistake]).toEqual([{ kind: 'results' }, 'choose-mask']);
    const one = led(none, { kind: 'choose-mask', token: 'one' });
    expect(one.mistake).toBeNull();
    expect(pageOf(led(one, go))).toEqual({ kind: 'cautions' });
  });
});

describe('choosing', () => {
  it('one of one replaces, one of many joins, the same again takes it back', () => {
    expect(chosenIds(led(begun(), choose('age', 'age-18'), choose('age', 'age-16')), 'age')).toEqual(['age-16']);
    expect(chosenIds(led(begun(), choose('age', 'age-18'), choose('age', 'age-18')), 'age')).toEqual(['age-18']);
    const two = led(begun(), choose('wish', 'wish-oil'), choose('wish', 'wish-dry'));
    expect(chosenIds(two, 'wish')).toEqual(['wish-oil', 'wish-dry']);
    expect(chosenIds(led(two, choose('wish', 'wish-oil')), 'wish')).toEqual(['wish-dry']);
    expect(led(two, choose('wish', 'wish-oil'), choose('wish', 'wish-dry')).answers).toEqual([]);
  });

  it('"none of these" clears the rest, and any other clears it', () => {
    const some = led(begun(), choose('today', 'today-cut'), choose('today', 'today-rash'));
    expect(chosenIds(led(some, choose('today', 'today-none')), 'today')).toEqual(['today-none']);
    expect(chosenIds(led(some, choose('today', 'today-none'), choose('today', 'today-cut')), 'today')).toEqual(['today-cut']);
  });

  it('of what nobody asked changes nothing', () => {
    const visit = begun();
    expect(led(visit, choose('weather', 'sunny')).answers).toEqual([]);
    expect(led(visit, choose('age', 'age-99')).answers).toEqual([]);
  });
});

describe('an answer that ends the visit', () => {
  it('does so on Continue, worst first', () => {
    const young = led(begun(), choose('age', 'age-under-16'));
    expect(pageOf(young)).toEqual({ kind: 'question', questionId: 'age' });
    expect(pageOf(led(young, go))).toEqual({ kind: 'outcome' });
    const both = led(checked(), { kind: 'change', questionId: 'today' }, choose('today', 'today-cut'), choose('today', 'today-mole'), go);
    expect(pageOf(both)).toEqual({ kind: 'outcome' });
    expect(outcomesOf(both)).toEqual(['mole', 'wait']);
  });

  it('can be changed, and then asks what is still open', () => {
    const back = led(begun(), choose('age', 'age-under-16'), go, { kind: 'check-answers' });
    expect(pageOf(back)).toEqual({ kind: 'check' });
    expect(pageOf(led(back, go))).toEqual({ kind: 'outcome' });
    const mended = led(back, { kind: 'change', questionId: 'age' }, choose('age', 'age-16'), go);
    expect(pageOf(mended)).toEqual({ kind: 'question', questionId: 'wish' });
    const rest = led(mended, choose('wish', 'wish-dry'), go, choose('sting', 'sting-never'), go, choose('today', 'today-none'), go);
    expect(pageOf(rest)).toEqual({ kind: 'check' });
  });
});

describe('changing an answer', () => {
  it('leads back to all answers and forgets what was found, chosen and ticked', () => {
    const ordered = led(shown(), { kind: 'choose-mask', token: 'one' }, go, { kind: 'tick', cautionId: 'sun', isOn: true });
    const ready = led(ordered, { kind: 'read-all', isOn: true });
    expect([ready.tickedIds, ready.hasReadAll]).toEqual([['sun'], true]);
    const changed = led(ready, { kind: 'change', questionId: 'wish' }, choose('wish', 'wish-oil'), choose('wish', 'wish-dry'), go);
    expect(pageOf(changed)).toEqual({ kind: 'check' });
    expect(changed).toMatchObject({ found: null, chosenToken: null, tickedIds: [], hasReadAll: false });
  });

  it('drops later answers that no longer apply, and names them until the check is passed', () => {
    const all = led(begun(chained()), choose('a', 'a-plain'), go, choose('b', 'b-plain'), go, choose('c', 'c-plain'), go);
    const changed = led(all, { kind: 'change', questionId: 'a' }, choose('a', 'a-skips'), go);
    expect(pageOf(changed)).toEqual({ kind: 'check' });
    expect(askedQuestions(changed).map((question) => question.id)).toEqual(['a', 'c']);
    expect([changed.answers.map((answer) => answer.questionId).sort(), changed.droppedIds]).toEqual([['a', 'c'], ['b']]);
    expect(led(changed, go).droppedIds).toEqual([]);
  });

  it('of a question that skips asks again what it had skipped', () => {
    const skipped = led(begun(chained()), choose('a', 'a-plain'), go, choose('b', 'b-skips'), go);
    expect(pageOf(skipped)).toEqual({ kind: 'check' });
    const unskipped = led(skipped, { kind: 'change', questionId: 'b' }, choose('b', 'b-plain'), go);
    expect(pageOf(unskipped)).toEqual({ kind: 'question', questionId: 'c' });
    const gone = led(skipped, { kind: 'change', questionId: 'a' }, choose('a', 'a-skips'), go);
    expect(pageOf(gone)).toEqual({ kind: 'question', questionId: 'c' });
    expect(gone.droppedIds).toEqual(['b']);
  });

  it('one of the others joins the masks, unticks everything and goes to its own cautions', () => {
    const ticked = led(shown(), { kind: 'choose-mask', token: 'one' }, { kind: 'read-all', isOn: true }, { kind: 'see-why-not' });
    const taken = led(ticked, { kind: 'take-other', found: { masks: ['one', 'two', 'other'] }, token: 'other' });
    expect(pageOf(taken)).toEqual({ kind: 'cautions' });
    expect(taken).toMatchObject({ chosenToken: 'other', tickedIds: [], hasReadAll: false, found: { masks: ['one', 'two', 'other'] } });
  });

  it('choosing another mask unticks everything', () => {
    const ticked = led(
      shown(),
      { kind: 'choose-mask', token: 'one' },
      { kind: 'tick', cautionId: 'sun', isOn: true },
      { kind: 'read-all', isOn: true },
    );
    expect(led(ticked, { kind: 'choose-mask', token: 'two' })).toMatchObject({ tickedIds: [], hasReadAll: false });
    expect(led(ticked, { kind: 'tick', cautionId: 'sun', isOn: false }).tickedIds).toEqual([]);
  });
});

describe('back and forward', () => {
  it('keep every answer', () => {
    const third = led(begun(), ...PLAIN.slice(0, 4));
    const back = led(third, { kind: 'show', at: third.at - 1 });
    expect(pageOf(back)).toEqual({ kind: 'question', questionId: 'wish' });
    expect(led(back, go).answers).toEqual(third.answers);
    expect(pageOf(led(back, go))).toEqual({ kind: 'question', questionId: 'sting' });
  });

  it('stay within the trail, whatever the browser asks for', () => {
    expect(pageOf(led(begun(), { kind: 'show', at: 99 }))).toEqual({ kind: 'question', questionId: 'age' });
    expect(pageOf(led(begun(), { kind: 'show', at: -1 }))).toEqual({ kind: 'start' });
  });

  it('never show masks or cautions of other answers', () => {
    const seen = led(shown(), { kind: 'choose-mask', token: 'one' }, go);
    const changed = led(seen, { kind: 'show', at: 1 }, choose('age', 'age-16'));
    const forward = led(changed, { kind: 'show', at: seen.at });
    expect(pageOf(forward)).toEqual({ kind: 'results' });
    expect(forward.found).toBeNull();
    const ended = led(seen, { kind: 'show', at: 1 }, choose('age', 'age-under-16'), { kind: 'show', at: seen.at });
    expect(pageOf(ended)).toEqual({ kind: 'outcome' });
  });

  it('a question that is no longer asked gives way to all answers', () => {
    const all = led(begun(chained()), choose('a', 'a-plain'), go, choose('b', 'b-plain'), go);
    expect(pageOf(led(all, { kind: 'show', at: 1 }, choose('a', 'a-skips'), { kind: 'show', at: 2 }))).toEqual({ kind: 'check' });
  });
});

describe('another edition', () => {
  const without = (optionId: string): Questionnaire => ({
    ...DEMO,
    questions: DEMO.questions.map((question) => ({ ...question, options: question.options.filter((option) => option.id !== optionId) })),
  });

  it('keeps the answers that it knows, shows them all again and says so', () => {
    const moved = led(shown(), { kind: 'adopt', questionnaire: without('wish-oil') });
    expect(pageOf(moved)).toEqual({ kind: 'check' });
    expect(moved).toMatchObject({ hasListChanged: true, droppedIds: ['wish'], found: null, chosenToken: null });
    expect(moved.answers.map((answer) => answer.questionId).sort()).toEqual(['age', 'sting', 'today']);
    const next = led(moved, go);
    expect([pageOf(next), next.hasListChanged]).toEqual([{ kind: 'question', questionId: 'wish' }, false]);
  });

  it('forgets answers to questions that it no longer asks', () => {
    const fewer = { ...DEMO, questions: DEMO.questions.filter((question) => question.id !== 'sting') };
    const moved = led(shown(), { kind: 'adopt', questionnaire: fewer });
    expect(moved.answers.map((answer) => answer.questionId).sort()).toEqual(['age', 'today', 'wish']);
    expect(pageOf(led(moved, go))).toEqual({ kind: 'results' });
  });
});

describe('the end', () => {
  const ordered = (): AVisit => led(shown(), { kind: 'choose-mask', token: 'one' }, go, { kind: 'ordered', receipt: { code: 'K7-204' } });

  it('an order wipes the answers and leads nowhere back', () => {
    const visit = ordered();
    expect(pageOf(visit)).toEqual({ kind: 'code' });
    expect(visit).toMatchObject({ answers: [], found: null, chosenToken: null, receipt: { code: 'K7-204' } });
    expect(pageOf(led(visit, { kind: 'show', at: 1 }))).toEqual({ kind: 'code' });
  });

  it.each<Action>([{ kind: 'wipe' }, { kind: 'start' }])('$kind leaves nothing of the visit before', (action) => {
    expect(led(ordered(), action)).toEqual(action.kind === 'wipe' ? newVisit(DEMO) : begun());
  });

  it('looking again after a mask was taken off asks for masks anew', () => {
    const again = led(shown(), { kind: 'choose-mask', token: 'one' }, go, { kind: 'look-again' });
    expect([pageOf(again), again.found, again.chosenToken]).toEqual([{ kind: 'results' }, null, null]);
  });
});

describe('whatever a customer touches', () => {
  const anyAction: fc.Arbitrary<Action> = fc.oneof(
    {
      weight: 6,
      arbitrary: fc.constantFrom(...DEMO.questions.flatMap((question) => question.options.map((option) => choose(question.id, option.id)))),
    },
    { weight: 6, arbitrary: fc.constant(go) },
    fc.constantFrom<Action>(
      { kind: 'check-answers' },
      { kind: 'see-why-not' },
      { kind: 'look-again' },
      { kind: 'start' },
      { kind: 'wipe' },
    ),
    fc.constantFrom(...DEMO.questions.map((question): Action => ({ kind: 'change', questionId: question.id }))),
    fc.nat(12).map((at): Action => ({ kind: 'show', at })),
    fc.constantFrom<Action>({ kind: 'found', found: { masks: ['one'] } }, { kind: 'choose-mask', token: 'one' }),
  );

  it('masks are looked for only with answers that the server takes, and none of which ends the visit', () => {
    fc.assert(
      fc.property(fc.array(anyAction, { maxLength: 60 }), (actions) => {
        const visit = led(begun(), ...actions);
        if (pageOf(visit).kind !== 'results') return;
        const read = readAnswers(aDemoRulebook(), visit.answers);
        expect(read.ok && read.value.outcomes).toEqual([]);
      }),
      { seed: 20_261_125, numRuns: 400 },
    );
  });
});
