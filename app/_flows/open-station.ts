// Counters and benches of the shop, and the scales that stand at them.
import type { Station, StationScale } from '#db/stations.ts';
import { findStationByCode, insertStation, insertStationScale } from '#db/stations.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Flow } from './flow.ts';
import { record } from './flow.ts';

export function openStation(
  flow: Flow,
  station: Pick<Station, 'kind' | 'code' | 'name'>,
): Result<{ readonly stationId: string }, { readonly kind: 'station-code-taken' }> {
  return flow.db.write((tx) => {
    if (findStationByCode(tx, station.code)) return refuse({ kind: 'station-code-taken' } as const);
    const id = flow.newId();
    insertStation(tx, { ...station, id, createdAtMs: flow.now });
    record(tx, flow, { kind: 'station-opened', body: { stationId: id, ...station } });
    return accept({ stationId: id });
  });
}

/** Binds a real scale to a profile of the rulebook; its own figures, where given, are the stricter ones. */
export function bindScale(flow: Flow, scale: Omit<StationScale, 'id' | 'boundAtMs'>): { readonly scaleId: string } {
  return flow.db.write((tx) => {
    const id = flow.newId();
    insertStationScale(tx, { ...scale, id, boundAtMs: flow.now });
    record(tx, flow, {
      kind: 'scale-bound',
      body: { scaleId: id, stationId: scale.stationId, profileId: scale.profileId, code: scale.code },
    });
    return { scaleId: id };
  });
}
