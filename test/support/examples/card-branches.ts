// What can differ on a mixing card, each with the question whether a given card has it.

import type { ExampleRequest } from '#app/office/examples/example-table.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need } from '#lib/rulebook/book.ts';
import type { Card, CardLine, Step, StepKind } from '#lib/weighing/card.ts';

export interface Branch {
  readonly id: string;
  readonly says: string;
  readonly holds: (card: Card, book: Book) => boolean;
  /** What the request needs besides a mask. */
  readonly with?: Partial<ExampleRequest>;
  readonly because?: string;
}

const lineWith =
  (test: (line: CardLine, book: Book) => boolean) =>
  (card: Card, book: Book): boolean =>
    card.lines.some((line) => test(line, book));
const stepWith =
  <K extends StepKind>(kind: K, test: (step: Extract<Step, { kind: K }>) => boolean = () => true) =>
  (card: Card): boolean =>
    card.steps.some((step) => step.kind === kind && test(step as Extract<Step, { kind: K }>));
const without =
  (kind: StepKind) =>
  (card: Card): boolean =>
    !card.steps.some((step) => step.kind === kind);
const stockOf = ({ source }: CardLine, book: Book) => (source.kind === 'stock' ? need(book.stocks, source.stockId) : null);
const lineOf = (materialId: string, { lines }: Card['plan']) => lines.find((line) => line.materialId === materialId);

export const CARD_BRANCHES: readonly Branch[] = [
  { id: 'shade-alone', says: 'a shade and nothing else', holds: ({ plan }) => plan.variant.actives.length === 0 },
  {
    id: 'most-actives',
    says: 'as many actives as the base takes',
    holds: ({ plan }, { rulebook }) => plan.variant.actives.length === rulebook.base.mostActivesCount,
  },
  {
    id: 'full-allowance',
    says: 'at least 4.9 % of additions',
    holds: ({ plan }) => plan.lines.reduce((sum, line) => sum + line.sharePpm, 0) >= 49_000,
  },
  { id: 'adjuster', says: 'an acid brought back into its window by the buffer', holds: ({ plan }) => plan.adjuster !== null },
  { id: 'blend', says: 'a shade weighed as one dry blend', holds: lineWith((line, book) => stockOf(line, book)?.isBlend === true) },
  {
    id: 'shade-by-parts',
    says: 'a shade weighed powder by powder',
    holds: ({ plan }) => plan.lines.filter(({ purpose }) => purpose === 'shade').length > 1,
  },
  {
    id: 'netted',
    says: 'a powder reduced by what a premix brings of it',
    holds: ({ plan }, book) =>
      need(book.shades, plan.variant.shadeId).parts.some(({ materialId, sharePpm }) => {
        const line = lineOf(materialId, plan);
        return line !== undefined && need(book.stocks, line.stockId).parts.length === 1 && line.sharePpm < sharePpm;
      }),
  },
  {
    id: 'premix',
    says: 'something too fine to weigh by itself, as a premix made here',
    holds: lineWith((line, book) => {
      const stock = stockOf(line, book);
      return stock?.madeHereHours !== undefined && !stock.isBlend;
    }),
  },
  {
    id: 'solution',
    says: 'a dissolved active, stirred in last',
    holds: lineWith((line, book) => line.place === 'last' && stockOf(line, book)?.preservation !== 'dry'),
  },
  { id: 'paste-powder', says: 'powder into the empty vessel', holds: lineWith(({ place }) => place === 'paste-powder') },
  { id: 'paste-liquid', says: 'an oil-borne stock worked into the paste', holds: lineWith(({ place }) => place === 'paste-liquid') },
  { id: 'wetting-oil', says: 'the wetting oil', holds: lineWith(({ place }) => place === 'wetting-oil') },
  { id: 'cream', says: 'the cream in growing portions', holds: stepWith('cream', ({ portionsUg }) => portionsUg.length > 2) },
  { id: 'boat', says: 'weighed in a boat', holds: lineWith(({ container }) => container === 'boat') },
  { id: 'vessel', says: 'weighed into the vessel', holds: lineWith(({ container }) => container === 'vessel') },
  { id: 'second-person', says: 'a second person reads the scale', holds: lineWith(({ needsSecondPerson }) => needsSecondPerson) },
  {
    id: 'look-alike',
    says: 'a name printed so that it cannot be taken for another',
    holds: lineWith(({ lookAlikeName }) => lookAlikeName !== null),
  },
  { id: 'staff-caution', says: 'a caution for the mixer', holds: lineWith(({ cautionIds }) => cautionIds.length > 0) },
  {
    id: 'narrow-band',
    says: 'a narrower range, near a limit or by rule',
    holds: lineWith((line, { rulebook }) => line.source.kind === 'stock' && line.tauPpm < rulebook.house.bands.usualPpm),
  },
  {
    id: 'pulled-in',
    says: 'a range whose upper end was pulled in, so that no limit can be broken',
    holds: lineWith((line) => {
      const exactUg = Number(line.exactUgText);
      return line.hiUg + line.scale.stepUg <= exactUg + (exactUg * line.tauPpm) / 1_000_000;
    }),
  },
  {
    id: 'split-lot',
    says: 'one line from two lots',
    holds: lineWith(({ lots }) => lots.length > 1),
    with: { shelf: { kind: 'halves', stockId: 'cream', grams: 30 } },
    because: 'two lots of cream, neither of which has enough',
  },
  {
    id: 'several-scales',
    says: 'two scales on one card',
    holds: ({ lines }) => new Set(lines.map(({ scale }) => scale.id)).size > 1,
    with: { jarSizeId: 'jar-30' },
    because: '30 g jar',
  },
  {
    id: 'coarse-only',
    says: 'everything on the coarse scale',
    holds: ({ lines }) => new Set(lines.map(({ scale }) => scale.id)).size === 1,
    with: { bench: 'coarse' },
    because: 'only the 0.01 g scale',
  },
  {
    id: 'small-jar',
    says: 'the smallest jar on the coarse scale',
    holds: () => true,
    with: { bench: 'coarse', jarSizeId: 'jar-30' },
    because: '30 g jar, only the 0.01 g scale',
  },
  { id: 'large-jar', says: 'the largest jar', holds: () => true, with: { jarSizeId: 'jar-100' }, because: '100 g jar' },
  { id: 'fitness', says: 'the scale is checked', holds: stepWith('fitness') },
  { id: 'fitness-meter', says: 'the pH meter is checked too', holds: stepWith('fitness', ({ needsMeter }) => needsMeter) },
  {
    id: 'clearance',
    says: 'the bench is cleared',
    holds: stepWith('clearance', ({ fullCleanAfterTags }) => fullCleanAfterTags.length === 0),
  },
  {
    id: 'full-clean',
    says: 'a full clean after an allergen',
    holds: stepWith('clearance', ({ fullCleanAfterTags }) => fullCleanAfterTags.length > 0),
    with: { afterTag: 'oat' },
    because: 'oats were in the jar before',
  },
  { id: 'protection-dust', says: 'dust mask and extraction', holds: stepWith('protection', ({ hasDust }) => hasDust) },
  {
    id: 'protection-acid',
    says: 'eyes and hands covered for an acid',
    holds: stepWith('protection', ({ cautionIds }) => cautionIds.includes('staff-acid')),
  },
  { id: 'bind-jar', says: 'jar and lid are weighed and bound', holds: stepWith('bind-jar') },
  { id: 'paste', says: 'worked to a smooth paste', holds: stepWith('paste') },
  {
    id: 'temperature',
    says: 'the temperature is taken before what heat would spoil',
    holds: stepWith('temperature', ({ isTapNeeded }) => isTapNeeded),
  },
  {
    id: 'temperature-cool',
    says: 'no temperature needed: room and stocks are cool',
    holds: stepWith('temperature', ({ isTapNeeded }) => !isTapNeeded),
    with: { warmestC: 21 },
    because: 'room and stocks at 21 °C',
  },
  { id: 'no-temperature', says: 'nothing that heat would spoil', holds: without('temperature') },
  { id: 'dissolve', says: 'a soluble powder is dissolved until no grain is left', holds: stepWith('dissolve') },
  { id: 'draw-down', says: 'a thin draw-down is looked at', holds: stepWith('draw-down') },
  { id: 'ph', says: 'the pH is measured, whatever the day', holds: stepWith('ph') },
  { id: 'no-ph', says: 'no pH is due after the first jar of the day', holds: without('ph') },
  { id: 'inspect', says: 'colour, smell and look', holds: stepWith('inspect') },
  { id: 'fill', says: 'filled, and the net weight taken', holds: stepWith('fill') },
  { id: 'release', says: 'labelled and released', holds: stepWith('release') },
];
