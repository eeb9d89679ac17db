// Every call of the browser passes here, in this order: same origin, session and role, shape of the input, the call itself, shape of
// the output. It alone catches: what a flow throws becomes a fault id for the person and a text in the log.
import type { z } from 'zod';
import type { InstantMs } from '#lib/units/time.ts';
import type { Actor, RouteRole } from './actor.ts';
import { admit } from './actor.ts';
import type { Edge } from './edge.ts';
import { liveEdge } from './edge.ts';
import { isOutage } from './outage.ts';
import type { PathParams } from './route-input.ts';
import { rawInput } from './route-input.ts';
import { isSameOrigin } from './same-origin.ts';
import type { Services } from './services.ts';
import type { Download } from './to-response.ts';
import { downloadResponse, jsonResponse, notModified, problemResponse } from './to-response.ts';

export type RouteMethod = 'GET' | 'POST';

/** What a handler gets beside its input. `now` is read once per request. */
export type RouteContext = {
  readonly services: Services;
  readonly actor: Actor;
  readonly now: InstantMs;
  readonly newId: () => string;
  /** For the address of the caller and the like; the body has been read already. */
  readonly request: Request;
  /** Adds one `set-cookie` line to the reply. */
  readonly setCookie: (line: string) => void;
};

/** The kinds of the refusals that a route's output may hold. */
type RefusalKind<Body> = Body extends { readonly ok: false; readonly refusal: { readonly kind: infer K extends string } } ? K : never;

export type RouteDefinition<In extends z.ZodType, Out extends z.ZodType> = {
  readonly method: RouteMethod;
  readonly roles: readonly RouteRole[];
  readonly input: In;
  /** `bytes` takes a file as it is (application/octet-stream): the input then has it as `bytes`, beside the query. */
  readonly body?: 'json' | 'bytes';
  /** The whole reply body; `{ ok: false, refusal: { kind, … } }` where the answer may be no. */
  readonly output: Out;
  readonly handle: (context: RouteContext, input: z.output<In>) => z.input<Out> | Promise<z.input<Out>>;
  /** Refusals that are not a plain 200: the world moved (409), or there is no such thing (404). */
  readonly refusalStatus?: Partial<Record<RefusalKind<z.output<Out>>, 404 | 409>>;
  /** For polling: changes whenever the reply would. An equal `if-none-match` is answered without the call. */
  readonly etag?: (context: RouteContext, input: z.output<In>) => string;
  /** For files: makes the download from the checked output. */
  readonly download?: (output: z.output<Out>) => Download;
};

type Handler = (request: Request, context: { readonly params: Promise<PathParams> }) => Promise<Response>;

export type Route = Handler & {
  /** What a walk over all routes needs to know. */
  readonly definition: { readonly method: RouteMethod; readonly roles: readonly RouteRole[] };
  /** The same call with the outside handed in, for tests. */
  readonly respond: (edge: Edge, request: Request, params: PathParams) => Promise<Response>;
};

/** Makes the handler that a route.ts exports under its method's name. */
export function defineRoute<In extends z.ZodType, Out extends z.ZodType>(definition: RouteDefinition<In, Out>): Route {
  const respond: Route['respond'] = (edge, request, params) => guarded(edge, request, () => answer({ definition, edge, request, params }));
  const handler: Handler = async (request, { params }) => respond(liveEdge, request, await params);
  return Object.assign(handler, { definition: { method: definition.method, roles: definition.roles }, respond });
}

async function guarded(edge: Edge, request: Request, work: () => Promise<Response>): Promise<Response> {
  try {
    return await work();
  } catch (error) {
    if (isOutage(error)) return problemResponse('outage', {}, { 'retry-after': '1' });
    const faultId = edge.newId();
    edge.logFault({ faultId, where: `${request.method} ${new URL(request.url).pathname}`, error });
    return problemResponse('fault', { faultId });
  }
}

type Call<In extends z.ZodType, Out extends z.ZodType> = {
  readonly definition: RouteDefinition<In, Out>;
  readonly edge: Edge;
  readonly request: Request;
  readonly params: PathParams;
};

async function answer<In extends z.ZodType, Out extends z.ZodType>({
  definition,
  edge,
  request,
  params,
}: Call<In, Out>): Promise<Response> {
  if (request.method !== definition.method) return problemResponse('wrong-method', {}, { allow: definition.method });
  if (definition.method === 'POST' && !isSameOrigin(request)) return problemResponse('cross-site');

  const services = atOneInstant(edge.services());
  const actor = edge.readSession(services, request);
  const admission = admit(definition.roles, actor);
  if (admission !== 'admitted') return problemResponse(admission);

  const raw = await rawInput(request, params, definition.body);
  if (!raw.ok) return problemResponse(raw.problem, { detail: raw.detail });
  const input = definition.input.safeParse(raw.value);
  if (!input.success) return problemResponse('bad-input', { fields: fieldsOf(input.error) });

  const cookies: string[] = [];
  const setCookie = (line: string): void => void cookies.push(line);
  const context: RouteContext = { services, actor, now: services.now(), newId: services.newId, request, setCookie };
  const etag = definition.etag?.(context, input.data);
  if (etag !== undefined && request.headers.get('if-none-match') === quoted(etag)) return notModified(quoted(etag));

  const output = definition.output.parse(await definition.handle(context, input.data));
  const response = definition.download ? downloadResponse(definition.download(output)) : jsonResponse(output, statusOf(definition, output));
  if (etag !== undefined) markPolled(response, quoted(etag));
  for (const line of cookies) response.headers.append('set-cookie', line);
  return response;
}

/** The clock is read once per request: session, decision and record all see the same instant. */
function atOneInstant(services: Services): Services {
  const now = services.now();
  return { ...services, now: () => now };
}

const quoted = (etag: string): string => `"${etag}"`;

/** A polled reply may be kept by its one caller, and asked about every time. */
function markPolled(response: Response, etag: string): void {
  response.headers.set('etag', etag);
  response.headers.set('cache-control', 'private, no-cache');
}

const fieldsOf = (error: z.ZodError): { path: string; message: string }[] =>
  error.issues.map(({ path, message }) => ({ path: path.map(String).join('.'), message }));

function statusOf<In extends z.ZodType, Out extends z.ZodType>({ refusalStatus }: RouteDefinition<In, Out>, output: unknown): number {
  const kind = refusalKindOf(output);
  const statuses: Readonly<Record<string, number | undefined>> = refusalStatus ?? {};
  return (kind === null ? undefined : statuses[kind]) ?? 200;
}

function refusalKindOf(output: unknown): string | null {
  if (typeof output !== 'object' || output === null || !('ok' in output) || output.ok !== false || !('refusal' in output)) return null;
  const { refusal } = output;
  return typeof refusal === 'object' && refusal !== null && 'kind' in refusal && typeof refusal.kind === 'string' ? refusal.kind : null;
}
