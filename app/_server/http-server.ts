// The HTTP server in front of Next: limits on headers, time and bodies, one nonce per request, and replies of its own where a request
// is refused unread.
import { randomBytes } from 'node:crypto';
import type { IncomingMessage, Server, ServerResponse } from 'node:http';
import { createServer } from 'node:http';
import type { GateRefusal } from './gate.ts';
import { gate } from './gate.ts';
import { PROBLEM_MEDIA_TYPE, problem, problemStatus } from './problem.ts';
import { contentSecurityPolicy, securityHeaders } from './security-headers.ts';

export type Handle = (request: IncomingMessage, response: ServerResponse) => Promise<void>;

type Settings = {
  readonly names: readonly string[];
  /** Null until everything is ready: until then each request is told to come back. */
  readonly handler: () => Handle | null;
  readonly onFault: (error: unknown, request: IncomingMessage) => void;
};

const LIMITS = {
  maxHeaderSize: 16_384,
  headersTimeout: 10_000,
  requestTimeout: 30_000,
  keepAliveTimeout: 15_000,
  connectionsCheckingInterval: 2_000,
} as const;

const IDLE_MS = 60_000;
const MAX_HEADERS = 100;
const MAX_CONNECTIONS = 512;

/** How much of a refused body is read and thrown away, so that its sender gets to see the reply instead of a broken connection. */
const LINGER = { bytes: 64 * 1_048_576, ms: 5_000 } as const;

const NOT_READY: GateRefusal = { kind: 'starting', detail: '', headers: { 'retry-after': '1' } };

/** Makes the server; it does not listen yet. */
export function makeHttpServer({ names, handler, onFault }: Settings): Server {
  const server = createServer(LIMITS);
  server.timeout = IDLE_MS;
  server.maxHeadersCount = MAX_HEADERS;
  server.maxConnections = MAX_CONNECTIONS;

  const take = (request: IncomingMessage, response: ServerResponse, isAwaitingContinue: boolean): void => {
    const path = pathOf(request);
    const policy = contentSecurityPolicy(randomBytes(16).toString('base64'));
    for (const [name, value] of Object.entries(securityHeaders(path, policy))) response.setHeader(name, value);
    request.headers['content-security-policy'] = policy;

    const handle = handler();
    const refusal = gate(headOf(request, path), names);
    if (refusal || !handle) refuseUnread(request, response, refusal ?? NOT_READY);
    else {
      if (isAwaitingContinue) response.writeContinue();
      handle(request, response).catch((error: unknown) => {
        // A sender who went away is no fault of ours.
        if (error !== request.errored) onFault(error, request);
        response.destroy();
      });
    }
  };

  server.on('request', (request, response) => take(request, response, false));
  server.on('checkContinue', (request, response) => take(request, response, true));
  return server;
}

const pathOf = (request: IncomingMessage): string => (request.url ?? '/').split('?', 1)[0] ?? '/';

const headOf = ({ method = '', headers }: IncomingMessage, path: string): Parameters<typeof gate>[0] => ({
  method,
  path,
  host: headers.host,
  contentLength: headers['content-length'],
  transferEncoding: headers['transfer-encoding'],
});

/** Sends the whole reply at once, then reads on for a little while before the connection is closed. */
function refuseUnread(request: IncomingMessage, response: ServerResponse, { kind, detail, headers }: GateRefusal): void {
  const body = Buffer.from(JSON.stringify(problem(kind, { detail })));
  response.writeHead(problemStatus(kind), {
    ...headers,
    'content-type': PROBLEM_MEDIA_TYPE,
    'content-length': body.length,
    connection: 'close',
  });
  response.write(request.method === 'HEAD' ? '' : body);
  const timer = setTimeout(() => response.destroy(), LINGER.ms);
  const read = { bytes: 0 };
  request.on('data', (chunk: Buffer) => {
    read.bytes += chunk.length;
    if (read.bytes > LINGER.bytes) response.destroy();
  });
  request.once('end', () => response.end());
  response.once('close', () => clearTimeout(timer));
}
