// What is offered can be made: shades of powders that a stock brings, actives whose levels come out in whole ppm and fit the allowance.
import type { DocumentPath } from '../base/document-fault.ts';
import type { Book } from './book.ts';
import { servesWhole } from './check-stocks.ts';
import { isPowder } from './held-shares.ts';
import type { Active, Shade } from './offer.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';
import { materialPpm, stocksFor, suppliesOf } from './supply.ts';

const MOST_SHADE_PARTS = 4;
const FULL_BENEFIT_MILLI = 1000;

export function* checkOffers(book: Book): Faults {
  for (const [index, shade] of book.rulebook.shades.entries()) yield* shadeFaults(['shades', index], book, shade);
  for (const [index, active] of book.rulebook.actives.entries()) {
    if (active.role === 'active' && !active.claims) yield fault(['actives', index, 'claims'], 'claims-missing', {});
    yield* levelFaults(['actives', index], book, active);
    yield* benefitFaults(['actives', index], active);
  }
}

function* shadeFaults(path: DocumentPath, book: Book, shade: Shade): Faults {
  const at = [...path, 'parts'];
  if (shade.parts.length === 0) yield fault(at, 'empty-list', { what: 'powder in this shade' });
  if (shade.parts.length > MOST_SHADE_PARTS)
    yield fault(at, 'shade-too-many-parts', { foundCount: shade.parts.length, mostCount: MOST_SHADE_PARTS });
  const foundPpm = shade.parts.reduce((sum, part) => sum + part.sharePpm, 0);
  const maxPpm = book.rulebook.base.allowancePpm;
  if (foundPpm > maxPpm) yield fault(at, 'over-allowance', { foundPpm, maxPpm });
  const isBlended = book.rulebook.stocks.some((stock) => stock.isBlend && servesWhole(stock, shade));
  for (const [index, { materialId, sharePpm }] of shade.parts.entries()) {
    const material = book.materials.get(materialId);
    if (material && !isPowder(material)) yield fault([...at, index, 'materialId'], 'shade-not-powder', { materialId });
    if (isBlended || !material) continue;
    if (stocksFor(book, materialId).length === 0) yield fault([...at, index, 'materialId'], 'no-stock', { materialId });
    else if (suppliesOf(book, materialId, sharePpm).length === 0)
      yield fault([...at, index, 'sharePpm'], 'share-not-whole', { materialId, levelPpm: sharePpm });
  }
}

function* levelFaults(path: DocumentPath, book: Book, active: Active): Faults {
  const { materialId, levels } = active;
  const hasStock = stocksFor(book, materialId).length > 0;
  if (book.materials.has(materialId) && !hasStock) yield fault([...path, 'materialId'], 'no-stock', { materialId });
  if (levels.length === 0) yield fault([...path, 'levels'], 'empty-list', { what: 'level' });
  for (const [index, { levelPpm }] of levels.entries()) {
    const at = [...path, 'levels', index, 'levelPpm'];
    if (levelPpm <= (levels[index - 1]?.levelPpm ?? 0)) {
      if (levelPpm === 0) yield fault(at, 'zero-share', { id: active.id });
      else yield fault(at, 'levels-not-ascending', { levelPpm });
    }
    if (!hasStock || levelPpm === 0) continue;
    const wanted = materialPpm(active, levelPpm);
    const supplies = wanted === null ? [] : suppliesOf(book, materialId, wanted);
    const least = Math.min(...supplies.map((supply) => supply.suppliedPpm));
    const maxPpm = book.rulebook.base.allowancePpm;
    if (supplies.length === 0) yield fault(at, 'share-not-whole', { materialId, levelPpm });
    else if (least > maxPpm) yield fault(at, 'over-allowance', { foundPpm: least, maxPpm });
  }
}

function* benefitFaults(path: DocumentPath, { role, levels }: Active): Faults {
  for (const [index, level] of levels.entries()) {
    for (const [at, { concernId, benefitMilli }] of level.benefits.entries()) {
      const where = [...path, 'levels', index, 'benefits', at];
      if (role === 'adjuster') yield fault(where, 'adjuster-benefit', {});
      if (benefitMilli > FULL_BENEFIT_MILLI)
        yield fault([...where, 'benefitMilli'], 'benefit-over-whole', { concernId, foundMilli: benefitMilli });
    }
  }
  const concernIds = new Set(levels.flatMap((level) => level.benefits.map((one) => one.concernId)));
  for (const concernId of concernIds) yield* concaveFaults([...path, 'levels'], concernId, levels);
}

/** From (0, 0) on, what each further ppm does never grows. A level that does not name a concern does nothing for it. */
function* concaveFaults(path: DocumentPath, concernId: string, levels: Active['levels']): Faults {
  const points = [
    { levelPpm: 0, milli: 0 },
    ...levels.map((level) => ({
      levelPpm: level.levelPpm,
      milli: level.benefits.find((one) => one.concernId === concernId)?.benefitMilli ?? 0,
    })),
  ];
  for (const [index, point] of points.entries()) {
    const before = points[index - 1];
    const earlier = points[index - 2];
    if (!before || !earlier || point.levelPpm <= before.levelPpm) continue;
    // (b₂ − b₁)/(l₂ − l₁) > (b₁ − b₀)/(l₁ − l₀), multiplied out: exact on whole numbers.
    const grows =
      (point.milli - before.milli) * (before.levelPpm - earlier.levelPpm) >
      (before.milli - earlier.milli) * (point.levelPpm - before.levelPpm);
    if (grows) yield fault([...path, index - 1, 'benefits'], 'benefit-not-concave', { concernId, levelPpm: point.levelPpm });
  }
}
