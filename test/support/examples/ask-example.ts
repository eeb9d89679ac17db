// Asks one request of the table: the demonstration's rules, perhaps with a draft's changes, one person, one bench and one shelf.

import { demoRulebookDocument } from '#app/_cli/demo/rulebook/demo-rulebook.ts';
import { shopChecks } from '#app/_flows/shop-context.ts';
import type { ExampleRequest, Shelf } from '#app/office/examples/example-table.ts';
import type { Person } from '#lib/answers/person.ts';
import type { Answer } from '#lib/answers/read-answers.ts';
import { readAnswers } from '#lib/answers/read-answers.ts';
import { composePlan } from '#lib/composition/compose.ts';
import { parseRulebook } from '#lib/contracts/rulebook.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { AvoidTag } from '#lib/rulebook/material.ts';
import type { JarSize } from '#lib/rulebook/offer.ts';
import type { Option, Question } from '#lib/rulebook/questionnaire.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { Plan } from '#lib/rulebook/variant.ts';
import { orderVariant } from '#lib/rulebook/variant.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { gramsToUg } from '#lib/units/mass.ts';
import { temperatureC } from '#lib/units/material-property.ts';
import { addDays, instantMs } from '#lib/units/time.ts';
import type { Attempt } from '#lib/verdict/judge.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import type { JudgeContext } from '#lib/verdict/verdict.ts';
import type { BenchLot } from '#lib/weighing/allocate-lots.ts';
import type { Card } from '#lib/weighing/card.ts';
import { massLimits } from '#lib/weighing/mass-limits.ts';
import { cardFor } from '#lib/weighing/mixing-card.ts';
import { phCheckFor } from '#lib/weighing/ph-due.ts';
import type { BenchScale } from '#lib/weighing/scale.ts';
import { TEST_DAY, variantFrom } from '../a-demo-book.ts';

/** The rules as first published on the fixed day. */
export const DEMO_RULEBOOK = rulebookWith([]);
const DEMO_BOOK = openBook(DEMO_RULEBOOK);

export const bookOf = ({ changes }: ExampleRequest): Book => (changes ? openBook(rulebookWith(changes)) : DEMO_BOOK);

function rulebookWith(changes: NonNullable<ExampleRequest['changes']>): Rulebook {
  const document = JSON.parse(JSON.stringify(demoRulebookDocument(TEST_DAY)));
  for (const { path, value } of changes) put(document, path, value);
  const parsed = parseRulebook(document);
  if (!parsed.ok) throw new Error(`a change broke the rulebook's shape: ${JSON.stringify(parsed.refusal.slice(0, 3))}`);
  return parsed.value;
}

/** Steps into lists by id or place, and sets, or takes out, what the last name stands for. */
function put(within: unknown, [name = '', ...rest]: readonly string[], value: unknown): void {
  if (Array.isArray(within)) {
    const index = /^\d+$/.test(name) ? Number(name) : within.findIndex((one: { id?: string }) => one.id === name);
    if (index < 0) throw new Error(`nothing called ${name} in that list`);
    if (rest.length > 0) put(within[index], rest, value);
    else if (value === undefined) within.splice(index, 1);
    else within[index] = value;
    return;
  }
  const cells = within as Record<string, unknown>;
  if (rest.length > 0) put(cells[name], rest, value);
  else if (value === undefined) delete cells[name];
  else cells[name] = value;
}

/** The easiest answer: one that does nothing, else the first that ends nothing. */
function easyOption({ options }: Question): Option | undefined {
  const open = options.filter((option) => !option.isSkip && !option.effects.some(({ kind }) => kind === 'outcome'));
  return open.find(({ effects }) => effects.length === 0) ?? open.find(({ exclusive }) => exclusive) ?? open[0];
}

export function answersOf({ questions }: Rulebook, { says = {} }: ExampleRequest): readonly Answer[] {
  const chosen = questions.map((question) => ({ question, ids: says[question.id] ?? [easyOption(question)?.id ?? ''] }));
  const needless = new Set(
    chosen.flatMap(({ question, ids }) =>
      question.options.filter(({ id }) => ids.includes(id)).flatMap(({ skipsQuestionIds }) => skipsQuestionIds),
    ),
  );
  return chosen
    .filter(({ question }) => !needless.has(question.id))
    .map(({ question, ids }) => ({ questionId: question.id, optionIds: ids }));
}

export function personOf(rulebook: Rulebook, request: ExampleRequest): Person {
  const read = readAnswers(rulebook, answersOf(rulebook, request));
  if (!read.ok) throw new Error(`answers that the kiosk could not give: ${JSON.stringify(read.refusal)}`);
  return read.value;
}

export function sizeOf(book: Book, { jarSizeId }: ExampleRequest): JarSize {
  const size = book.rulebook.jarSizes.find(({ id }) => jarSizeId === undefined || id === jarSizeId);
  if (!size) throw new Error(`no jar size ${jarSizeId}`);
  return size;
}

function scalesOf(book: Book, { bench }: ExampleRequest): readonly BenchScale[] {
  const byStep = [...book.rulebook.scaleProfiles].sort((a, b) => b.stepUg - a.stepUg);
  const [coarse] = byStep;
  const fine = byStep.at(-1);
  if (!coarse || !fine) throw new Error('the rulebook has no scales');
  const kinds = { coarse: [coarse], fine: [fine], none: [], small: [{ ...coarse, capacityUg: gramsToUg(20) }] };
  return bench === undefined ? byStep : kinds[bench];
}

function lotsOf(book: Book, shelf: Shelf | undefined): readonly BenchLot[] {
  const sources = [
    ...book.rulebook.stocks.map(({ id }) => ({ kind: 'stock', stockId: id }) as const),
    { kind: 'cream' } as const,
    { kind: 'wetting-oil' } as const,
  ];
  const lots = sources.map((source): BenchLot => {
    const id = source.kind === 'stock' ? source.stockId : source.kind;
    return {
      id,
      code: `L-${id}`,
      source,
      status: 'released',
      expiresOn: addDays(TEST_DAY, 400),
      openedOn: null,
      leftUg: gramsToUg(2000),
      measuredPhX100: null,
    };
  });
  switch (shelf?.kind) {
    case 'empty':
      return [];
    case 'no-actives':
      return lots.filter(({ source }) => source.kind !== 'stock' || !isForActive(book, source.stockId));
    case 'without':
      return lots.filter(({ id }) => id !== shelf.stockId);
    case 'halves':
      return lots.flatMap((lot) =>
        lot.id === shelf.stockId
          ? [1, 2].map((no) => ({ ...lot, id: `${lot.id}-${no}`, code: `${lot.code}-${no}`, leftUg: gramsToUg(shelf.grams) }))
          : [lot],
      );
    case 'lives':
      return lots.map((lot) => ({ ...lot, expiresOn: addDays(TEST_DAY, shelf.days) }));
    case 'cream-at':
      return lots.map((lot) => (lot.id === 'cream' ? { ...lot, measuredPhX100: phX100(shelf.phX100) } : lot));
    default:
      return lots;
  }
}

/** Stocks of which the shelf has nothing. */
export function absentStocksOf(book: Book, { shelf }: ExampleRequest): ReadonlySet<string> {
  const there = new Set(lotsOf(book, shelf).map(({ source }) => (source.kind === 'stock' ? source.stockId : source.kind)));
  return new Set(book.rulebook.stocks.map(({ id }) => id).filter((id) => !there.has(id)));
}

const isForActive = (book: Book, stockId: string): boolean =>
  book.rulebook.actives.some(({ materialId }) => book.stocks.get(stockId)?.parts[0]?.materialId === materialId);

export function contextOf(book: Book, request: ExampleRequest): JudgeContext {
  const { shelf } = request;
  const stops =
    shelf?.kind === 'stopped'
      ? [
          {
            id: 'stop-1',
            subjectKind: 'shade' as const,
            subjectId: shelf.shadeId,
            reason: 'Grains seen',
            byAccountId: 'a',
            atMs: instantMs(0),
          },
        ]
      : [];
  const stand = {
    day: TEST_DAY,
    zone: 'Europe/London',
    bench: { stationId: 'b', scales: scalesOf(book, request) },
    lots: lotsOf(book, shelf),
    stops,
  };
  return { day: TEST_DAY, person: personOf(book.rulebook, request), ...shopChecks(book, stand, sizeOf(book, request)) };
}

/** The verdict on the request's mask: for everybody by the rules alone, or with person, bench and shelf. */
export function verdictOf(request: ExampleRequest): Attempt {
  const book = bookOf(request);
  const variant = orderVariant(variantFrom(request.variant ?? ''));
  const byRules = judgeVariant(book, variant, { day: TEST_DAY });
  return byRules.verdict.kind === 'permitted' ? judgeVariant(book, variant, contextOf(book, request)) : byRules;
}

/** The card of a permitted request. Throws where the bench cannot make it. */
export function cardOf(request: ExampleRequest, plan: Plan): Card {
  const book = bookOf(request);
  const { afterTag, warmestC, shelf } = request;
  const made = cardFor({
    book,
    plan,
    jarSize: sizeOf(book, request),
    scales: scalesOf(book, request),
    limits: massLimits({ book, plan, markets: book.rulebook.markets, day: TEST_DAY }),
    lots: lotsOf(book, shelf),
    day: TEST_DAY,
    phDue: phCheckFor(book, composePlan(book, plan), false),
    fullCleanAfterTags: afterTag === undefined ? [] : [afterTag as AvoidTag],
    warmestC: warmestC === undefined ? null : temperatureC(warmestC),
  });
  if (!made.ok) throw new Error(`no card: ${JSON.stringify(made.refusal)}`);
  return made.value;
}
