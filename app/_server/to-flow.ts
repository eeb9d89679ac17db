// From a request to what a flow is given.
import type { Flow } from '#app/_flows/flow.ts';
import type { RouteContext } from './define-route.ts';

export const toFlow = ({ services, now, newId, actor }: Pick<RouteContext, 'services' | 'now' | 'newId' | 'actor'>): Flow => ({
  db: services.db,
  now,
  newId,
  sha256: services.sha256,
  actor,
  editions: services.editions,
});
