// Builds the table of examples: counts first, then one request for each thing that can happen. Whatever finds no example is an error.

import { createHash } from 'node:crypto';
import type { Example, ExampleRequest, ExampleTable, FindingExample } from '#app/office/examples/example-table.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { FindingCode } from '#lib/base/finding.ts';
import { FINDING_CODES } from '#lib/base/finding.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import { OUTCOMES } from '#lib/rulebook/questionnaire.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { permittedVariants } from '#lib/variants/permitted.ts';
import { threeMasks } from '#lib/variants/three-masks.ts';
import { findingsOf } from '#lib/verdict/judge.ts';
import { TEST_DAY, variantFrom } from '../a-demo-book.ts';
import { absentStocksOf, bookOf, cardOf, contextOf, DEMO_RULEBOOK, personOf, sizeOf, verdictOf } from './ask-example.ts';
import { CARD_BRANCHES } from './card-branches.ts';
import type { Provoked } from './count-refusals.ts';
import { countRefusals } from './count-refusals.ts';
import { RARE } from './rare-requests.data.ts';

const BOOK = openBook(DEMO_RULEBOOK);
const { questions, cautions, texts } = DEMO_RULEBOOK;

/** Of what decides: names, texts and languages may change without a request coming out otherwise. */
export const rulebookSha256 = (): string =>
  createHash('sha256')
    .update(canonicalJson(JSON.parse(JSON.stringify(DEMO_RULEBOOK, (key, value) => (WORDS.has(key) ? undefined : value)))))
    .digest('hex');
const WORDS = new Set(['name', 'texts', 'languages', 'title', 'notice', 'source', 'reason', 'certificateItems']);

/** Spread over the whole list: every shade and every active is among them. */
function someVariants(most: number): readonly string[] {
  const all = permittedVariants(BOOK, TEST_DAY);
  const every = Math.max(1, Math.floor(all.length / most));
  return all.filter((_, index) => index % every === 0).map(({ variant }) => variantKey(variant));
}

/** One visit for every option that does not end it. */
const visits = (): readonly ExampleRequest[] =>
  questions.flatMap(({ id, options }) =>
    options.filter(({ effects }) => !effects.some(({ kind }) => kind === 'outcome')).map((option) => ({ says: { [id]: [option.id] } })),
  );

function maskWords(book: Book, variant: string | undefined): string {
  if (variant === undefined) return '';
  const { shadeId, actives } = variantFrom(variant);
  const shade = book.shades.get(shadeId)?.name.en ?? shadeId;
  return [
    shade,
    ...actives.map(({ activeId, levelPpm }) => `${book.actives.get(activeId)?.name.en ?? activeId} ${levelPpm / 10_000} %`),
  ].join(' · ');
}

const saidWords = ({ says = {} }: ExampleRequest): readonly string[] =>
  Object.entries(says).flatMap(([questionId, optionIds]) =>
    optionIds.map((optionId) => {
      const option = questions.find(({ id }) => id === questionId)?.options.find(({ id }) => id === optionId);
      return `answers “${texts.en?.[option?.textId ?? ''] ?? optionId}”`;
    }),
  );

const exampleOf = <I extends string>(id: I, request: ExampleRequest, because: readonly string[] = []): Example & { readonly id: I } => ({
  id,
  mask: maskWords(BOOK, request.variant),
  circumstances: [...because, ...saidWords(request)],
  request,
});

/** What nothing was found for; all of it is told at once. */
const missing: string[] = [];

/** The first that passes, as a list of one; an empty list, and a note, where none does. */
function found<T>(what: string, candidates: Iterable<T>, test: (candidate: T) => boolean): readonly T[] {
  for (const candidate of candidates) if (test(candidate)) return [candidate];
  missing.push(what);
  return [];
}

function* crossed(requests: readonly ExampleRequest[], variants: readonly string[]): Generator<ExampleRequest> {
  for (const request of requests) for (const variant of variants) yield { variant, ...request };
}

const SIZES_AND_BENCHES: readonly ExampleRequest[] = DEMO_RULEBOOK.jarSizes.flatMap(({ id }) =>
  (['coarse', 'fine'] as const).map((bench) => ({ jarSizeId: id, bench })),
);

function findingExamples(provoked: ReadonlyMap<FindingCode, Provoked>): readonly FindingExample[] {
  const variants = someVariants(120);
  const speaks =
    (code: FindingCode) =>
    (request: ExampleRequest): boolean =>
      findingsOf(verdictOf(request).verdict).some((one) => one.code === code);
  return (Object.keys(FINDING_CODES) as FindingCode[]).flatMap((code) => {
    const rare = RARE[code];
    const plain = provoked.get(code);
    const around = FINDING_CODES[code].check <= 13 ? visits() : SIZES_AND_BENCHES;
    const [request] = rare ? [rare.request] : plain ? [{ variant: plain.variant }] : found(code, crossed(around, variants), speaks(code));
    const said = request && findingsOf(verdictOf(request).verdict).find((one) => one.code === code);
    if (!request) return [];
    if (!said) {
      missing.push(`${code}, by its own request`);
      return [];
    }
    return { ...exampleOf(code, request, rare?.because ?? benchWords(request)), facts: said.facts };
  });
}

const benchWords = ({ jarSizeId, bench }: ExampleRequest): readonly string[] =>
  bench === undefined ? [] : [`${jarSizeId?.replace('jar-', '')} g jar, only the ${bench === 'coarse' ? '0.01' : '0.001'} g scale`];

/** What the kiosk finds for a visit. */
export function masksFor(request: ExampleRequest): { readonly count: number; readonly noActiveFits: boolean } {
  const book = bookOf(request);
  const ask = {
    person: personOf(book.rulebook, request),
    jarSizeId: sizeOf(book, request).id,
    context: contextOf(book, request),
    absentStockIds: absentStocksOf(book, request),
  };
  const { masks, noActiveFits } = threeMasks(book, permittedVariants(book, TEST_DAY), ask);
  return { count: masks.length, noActiveFits };
}

function outcomeExamples(): ExampleTable['outcomes'] {
  const ends = OUTCOMES.filter((outcome) => outcome !== 'none').flatMap((outcome) => {
    const ending = found(
      outcome,
      questions.flatMap((one) => one.options.map((each) => [one, each] as const)),
      ([, { effects }]) => effects.some((effect) => effect.kind === 'outcome' && effect.outcome === outcome),
    );
    return ending.map(([question, option]) => exampleOf(outcome, { says: { [question.id]: [option.id] } }));
  });
  return [
    ...ends,
    exampleOf('none', { shelf: { kind: 'empty' } }, ['nothing stands on the shelf']),
    exampleOf('one', ...onlyOne()),
    exampleOf('no-active', { shelf: { kind: 'no-actives' } }, ['the shelf has shades and base, but no actives']),
  ];
}

/** A draft that leaves one shade and nothing else. */
function onlyOne(): [ExampleRequest, readonly string[]] {
  const [shade] = DEMO_RULEBOOK.shades;
  const scope = { id: 'one', kind: 'approve', shadeIds: [shade?.id], actives: [], mostActivesCount: 0 };
  const [first] = DEMO_RULEBOOK.scopes;
  return [{ changes: [{ path: ['scopes'], value: [{ ...first, ...scope }] }] }, ['a draft approves one shade without actives']];
}

function cautionExamples(): ExampleTable['cautions'] {
  const variants = someVariants(3_000);
  const owes =
    (id: string) =>
    (request: ExampleRequest): boolean => {
      if (personOf(BOOK.rulebook, request).cautions.some((owed) => owed.cautionId === id)) return true;
      const { verdict } = verdictOf(request);
      return verdict.kind === 'permitted' && verdict.cautions.some((owed) => owed.cautionId === id);
    };
  return cautions.flatMap(({ id, textId }) => {
    const requests = found(`caution ${id}`, [...crossed([{}], variants), ...crossed(visits(), variants.slice(0, 3))], owes(id));
    return requests.map((request) => ({ ...exampleOf(id, request), text: texts.en?.[textId] ?? '' }));
  });
}

function cardExamples(): ExampleTable['card'] {
  const variants = someVariants(2_000);
  return CARD_BRANCHES.flatMap(({ id, says, holds, with: bent, because }) => {
    const requests = found(`card: ${says}`, crossed([bent ?? {}], variants), (candidate) => {
      const { plan, verdict } = verdictOf(candidate);
      return plan !== null && verdict.kind === 'permitted' && holds(cardOf(candidate, plan), bookOf(candidate));
    });
    return requests.map((request) => ({ ...exampleOf(id, request, because ? [because] : []), says }));
  });
}

/** The whole table; takes minutes, since every variant is judged. */
export function makeExamples(): ExampleTable {
  const { counts, provoked } = countRefusals(BOOK, DEMO_RULEBOOK.base.mostActivesCount);
  const table = {
    day: TEST_DAY,
    rulebookSha256: rulebookSha256(),
    counts,
    findings: findingExamples(provoked),
    outcomes: outcomeExamples(),
    cautions: cautionExamples(),
    card: cardExamples(),
  };
  if (missing.length > 0) throw new Error(`the demonstration has no example of: ${missing.join('; ')}`);
  return table;
}
