import { readHealth } from '#app/_flows/read-health.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import { serverContext } from '#app/_server/server-context.ts';
import { healthSchema } from '#lib/contracts/health.ts';
import { noInputSchema } from '#lib/contracts/no-input.ts';

const MS_PER_S = 1_000;

export const GET = defineRoute({
  method: 'GET',
  roles: ['anyone'],
  input: noInputSchema,
  output: healthSchema,
  handle: ({ services: { db }, now }) => {
    const { version, startedAtMs } = serverContext();
    return { ok: true as const, version, ...readHealth({ db, now }), uptimeS: Math.floor((now - startedAtMs) / MS_PER_S) };
  },
});
