// The day's proof that a scale and a pH meter can be trusted. A failed one is kept too: it takes the instrument out of use until it passes.
import { insertFitness } from '#db/bench-day.ts';
import type { Writing } from '#db/connection.ts';
import type { FitnessReading } from '#db/json-shapes.ts';
import { findRequest, insertRequest } from '#db/requests.ts';
import { listStationScales } from '#db/stations.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { ScaleProfile } from '#lib/rulebook/offer.ts';
import type { PhX100 } from '#lib/units/chemistry.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import type { MassDifferenceUg, MassUg } from '#lib/units/mass.ts';
import { massUg } from '#lib/units/mass.ts';
import type { FactorPpm } from '#lib/units/share.ts';
import { benchOf } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import { editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import { record, staffOf } from './flow.ts';
import { readShopStand } from './shop-context.ts';

/** Two buffers, and how far the meter may show off them (common practice, no source). */
export const BUFFERS_PH_X100 = [phX100(400), phX100(700)] as const;
export const BUFFER_TOLERANCE_X100 = 5;
/** Slope of the electrode against the ideal one. */
export const SLOPE_PPM = { min: 950_000, max: 1_050_000 } as const;

export type FitnessCheck =
  | { readonly kind: 'scale'; readonly scaleId: string; readonly zeroUg: MassDifferenceUg; readonly shownUg: readonly MassUg[] }
  | { readonly kind: 'ph-meter'; readonly shownPhX100: readonly PhX100[]; readonly slopePpm: FactorPpm };

export interface FitnessAsked {
  readonly requestKey: string;
  readonly check: FitnessCheck;
}

/** Whether the instrument may be used today. */
export function recordFitness(flow: Flow, { requestKey, check }: FitnessAsked): Result<{ readonly hasPassed: boolean }, BenchRefusal> {
  const content = check.kind === 'scale' ? { ...check, shownUg: [...check.shownUg] } : { ...check, shownPhX100: [...check.shownPhX100] };
  const sha256 = flow.sha256(canonicalJson({ content, by: staffOf(flow).accountId }));
  return flow.db.write((tx): Result<{ readonly hasPassed: boolean }, BenchRefusal> => {
    const known = findRequest(tx, requestKey, sha256);
    if (known.kind === 'other-content') return refuse({ kind: 'other-content' });
    if (known.kind === 'repeated') return accept(known.outcome as { hasPassed: boolean });
    const proof = proofOf(tx, flow, check);
    if (!proof.ok) return proof;
    const { stationId, scaleId, hasPassed, readings, day } = proof.value;
    insertRequest(tx, { key: requestKey, sha256, outcome: { hasPassed }, atMs: flow.now });
    insertFitness(tx, {
      id: flow.newId(),
      stationId,
      kind: check.kind,
      scaleId,
      readings: [...readings],
      hasPassed,
      validDay: day,
      byAccountId: staffOf(flow).accountId,
      atMs: flow.now,
    });
    record(tx, flow, { kind: 'fitness-checked', body: { stationId, instrument: check.kind, scaleId, hasPassed } });
    return accept({ hasPassed });
  });
}

function proofOf(tx: Writing, flow: Flow, check: FitnessCheck) {
  const edition = editionInForce(tx, flow);
  const stand = edition && readShopStand(tx, flow, edition.book, benchOf(flow));
  if (!edition || !stand?.bench) return refuse({ kind: 'no-bench' } as const);
  const { stationId } = stand.bench;
  const where = { stationId, day: stand.day };
  if (check.kind === 'ph-meter') return accept({ ...where, scaleId: null, hasPassed: isMeterFit(check), readings: meterReadings(check) });
  const scale = listStationScales(tx, stationId).find((one) => one.id === check.scaleId);
  const profile = scale && edition.book.scaleProfiles.get(scale.profileId);
  if (!scale || !profile || profile.checkWeights.length !== check.shownUg.length) return refuse({ kind: 'no-bench' } as const);
  return accept({ ...where, scaleId: scale.id, hasPassed: isScaleFit(profile, check), readings: scaleReadings(profile, check) });
}

/** Zero and every check weight within the profile's tolerances. */
const isScaleFit = (
  { zeroToleranceUg, checkWeights }: ScaleProfile,
  { zeroUg, shownUg }: Extract<FitnessCheck, { kind: 'scale' }>,
): boolean =>
  massUg(Math.abs(zeroUg)) <= zeroToleranceUg &&
  checkWeights.every((weight, index) => Math.abs((shownUg[index] ?? 0) - weight.massUg) <= weight.toleranceUg);

/** The zero is kept by its size, since a weight on record is never under 0; the verdict saw its sign. */
const scaleReadings = (
  { checkWeights }: ScaleProfile,
  { zeroUg, shownUg }: Extract<FitnessCheck, { kind: 'scale' }>,
): readonly FitnessReading[] => [
  { kind: 'weight', nominalUg: massUg(0), shownUg: massUg(Math.abs(zeroUg)) },
  ...checkWeights.map((weight, index) => ({ kind: 'weight' as const, nominalUg: weight.massUg, shownUg: shownUg[index] ?? massUg(0) })),
];

const isMeterFit = ({ shownPhX100, slopePpm }: Extract<FitnessCheck, { kind: 'ph-meter' }>): boolean =>
  BUFFERS_PH_X100.every((buffer, index) => Math.abs((shownPhX100[index] ?? 0) - buffer) <= BUFFER_TOLERANCE_X100) &&
  slopePpm >= SLOPE_PPM.min &&
  slopePpm <= SLOPE_PPM.max;

const meterReadings = ({ shownPhX100, slopePpm }: Extract<FitnessCheck, { kind: 'ph-meter' }>): readonly FitnessReading[] => [
  ...BUFFERS_PH_X100.map((nominalPhX100, index) => ({ kind: 'buffer' as const, nominalPhX100, shownPhX100: shownPhX100[index] ?? 0 })),
  { kind: 'slope', slopePpm },
];
