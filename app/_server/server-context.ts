// The one thing that serve.ts (run by Node directly) hands to the pages and handlers (bundled): plain functions on globalThis,
// since the two sides share a process but no module.
import { invariant } from '#lib/base/invariant.ts';
import type { InstantMs } from '#lib/units/time.ts';
import type { JobRunner } from './jobs.ts';

export type ServerContext = {
  readonly dataDir: string;
  readonly version: string;
  readonly startedAtMs: InstantMs;
  /** The clock. A request reads it once. */
  readonly now: () => InstantMs;
  /** A new UUIDv7. */
  readonly newId: () => string;
  readonly jobs: JobRunner;
  /** Adds what must be closed before the process ends; run in reverse order. */
  readonly onClose: (close: () => void) => void;
};

const KEY = Symbol.for('jarwright.server-context');
const shared = globalThis as { [KEY]?: ServerContext };

export function setServerContext(context: ServerContext): void {
  invariant(shared[KEY] === undefined, 'the server context is set once per process');
  shared[KEY] = context;
}

/** @throws Fault outside a server process (the build, a test without a server). */
export function serverContext(): ServerContext {
  const context = shared[KEY];
  invariant(context, 'no server context: pages and handlers run under serve.ts only');
  return context;
}
