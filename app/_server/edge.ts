// What a route needs from outside itself. One live set for the server; tests hand in their own.
import type { Actor } from './actor.ts';
import type { FaultEntry } from './log.ts';
import { logFault } from './log.ts';
import { serverContext } from './server-context.ts';
import type { Services } from './services.ts';
import { services } from './services.ts';
import { readSession } from './session.ts';

export type Edge = {
  readonly services: () => Services;
  readonly readSession: (services: Services, request: Request) => Actor;
  readonly logFault: (entry: FaultEntry) => void;
  readonly newId: () => string;
};

export const liveEdge: Edge = { services, readSession, logFault, newId: () => serverContext().newId() };
