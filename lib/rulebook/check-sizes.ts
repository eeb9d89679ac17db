// Jars, vessels, labels and scales fit each other.
import type { DocumentPath } from '../base/document-fault.ts';
import type { Book } from './book.ts';
import type { JarSize, LabelSize, ScaleProfile } from './offer.ts';
import type { Faults, SoundnessFault } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

/** Daily fitness asks for two. */
const LEAST_CHECK_WEIGHTS = 2;
const MOST = 9_000_000_000;

export function* checkSizes(book: Book): Faults {
  const { jarSizes, vessels, labelSizes, scaleProfiles } = book.rulebook;
  for (const [index, jarSize] of jarSizes.entries()) yield* jarFaults(['jarSizes', index], book, jarSize);
  for (const [index, { capacityUl }] of vessels.entries()) yield* above(['vessels', index, 'capacityUl'], capacityUl);
  for (const [index, labelSize] of labelSizes.entries()) yield* labelFaults(['labelSizes', index], labelSize);
  for (const [index, profile] of scaleProfiles.entries()) yield* scaleFaults(['scaleProfiles', index], profile);
}

/** At least `least`, else the sums that use it make no sense. */
function* above(path: DocumentPath, found: number, least = 1): Generator<SoundnessFault> {
  if (found < least) yield fault(path, 'out-of-range', { found, least, most: MOST });
}

function* jarFaults(path: DocumentPath, book: Book, { id, netUg, overageUg, vesselId, labelSizeId, priceMinor }: JarSize): Faults {
  yield* above([...path, 'netUg'], netUg);
  if (priceMinor === 0) yield fault([...path, 'priceMinor'], 'price-zero', {});
  const vessel = book.vessels.get(vesselId);
  if (vessel && overageUg < vessel.lossUg) yield fault([...path, 'overageUg'], 'overage-under-loss', { overageUg, lossUg: vessel.lossUg });
  // µg / (mg/mL) = µL
  const needUl = Math.ceil((netUg + overageUg) / Math.max(1, book.rulebook.base.densityMgPerMl));
  if (vessel && needUl > vessel.capacityUl)
    yield fault([...path, 'vesselId'], 'vessel-too-small', { needUl, capacityUl: vessel.capacityUl });
  const label = book.labelSizes.get(labelSizeId);
  if (label && !label.fits.includes(id)) yield fault([...path, 'labelSizeId'], 'label-not-for-size', { labelSizeId, jarSizeId: id });
}

function* labelFaults(path: DocumentPath, label: LabelSize): Faults {
  for (const key of ['widthUm', 'heightUm', 'ingredientsCharCount', 'cautionsCharCount'] as const) yield* above([...path, key], label[key]);
}

function* scaleFaults(path: DocumentPath, { stepUg, capacityUg, checkWeights }: ScaleProfile): Faults {
  yield* above([...path, 'stepUg'], stepUg);
  yield* above([...path, 'capacityUg'], capacityUg, stepUg);
  if (checkWeights.length < LEAST_CHECK_WEIGHTS) {
    yield fault([...path, 'checkWeights'], 'too-few-check-weights', { foundCount: checkWeights.length, leastCount: LEAST_CHECK_WEIGHTS });
  }
  for (const [index, { massUg }] of checkWeights.entries()) {
    const at = [...path, 'checkWeights', index, 'massUg'];
    yield* above(at, massUg);
    if (massUg > capacityUg) yield fault(at, 'check-weight-over-capacity', { massUg, capacityUg });
  }
}
