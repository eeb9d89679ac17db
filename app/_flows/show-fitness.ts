// The day's checks of this bench, before any order asks for them.
import { listFitness } from '#db/bench-day.ts';
import { listStationScales } from '#db/stations.ts';
import { need } from '#lib/rulebook/book.ts';
import { benchOf } from './bench-order.ts';
import type { FitnessScale } from './card-doing.ts';
import { editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import { BUFFERS_PH_X100 } from './record-fitness.ts';
import { readShopStand } from './shop-context.ts';

export interface FitnessView {
  readonly scales: readonly FitnessScale[];
  readonly meter: { readonly buffersPhX100: typeof BUFFERS_PH_X100; readonly isFit: boolean };
}

export function showFitness(flow: Flow): FitnessView {
  return flow.db.read((tx) => {
    const edition = editionInForce(tx, flow);
    const stand = edition && readShopStand(tx, flow, edition.book, benchOf(flow));
    const stationId = stand?.bench?.stationId;
    const checks = stand && stationId !== undefined ? listFitness(tx, stationId, stand.day) : [];
    const isFit = (id: string): boolean => checks.findLast((check) => (check.scaleId ?? check.kind) === id)?.hasPassed === true;
    const profiles = new Map(stationId === undefined ? [] : listStationScales(tx, stationId).map((scale) => [scale.id, scale.profileId]));
    const scales = (stand?.bench?.scales ?? []).map(({ id, code, stepUg, capacityUg }) => {
      const weights = edition ? need(edition.book.scaleProfiles, profiles.get(id) ?? '').checkWeights : [];
      return { id, code, stepUg, capacityUg, weightsUg: weights.map((weight) => weight.massUg), isFit: isFit(id) };
    });
    return { scales, meter: { buffersPhX100: BUFFERS_PH_X100, isFit: isFit('ph-meter') } };
  });
}
