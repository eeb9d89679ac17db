// The end of a server: no new connections, running requests get a few seconds, then everything that was opened is closed in reverse.
import type { Server } from 'node:http';

type Settings = {
  readonly server: Server;
  /** Closes what the requests use; called once no request is left. */
  readonly close: () => Promise<void>;
  readonly graceMs: number;
};

const SWEEP_MS = 50;

/** Resolves when everything is closed. Requests still running after `graceMs` are cut off. */
export async function shutDown({ server, close, graceMs }: Settings): Promise<void> {
  const sweep = setInterval(() => server.closeIdleConnections(), SWEEP_MS);
  const cutOff = setTimeout(() => server.closeAllConnections(), graceMs);
  await new Promise<void>((resolve) => {
    server.close(() => resolve());
  });
  clearInterval(sweep);
  clearTimeout(cutOff);
  await close();
}
