// Where staff can work: the benches and offices of this shop.

import type { Station } from '#db/stations.ts';
import { listStations } from '#db/stations.ts';
import type { Flow } from './flow.ts';

export const listPlaces = (flow: Pick<Flow, 'db'>): readonly Station[] =>
  flow.db.read((tx) => listStations(tx).filter((station) => station.kind !== 'kiosk'));
