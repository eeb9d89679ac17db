// Sessions: a random token in a cookie, its SHA-256 in the file. Whoever reads the file cannot sign in with it.
import { randomBytes } from 'node:crypto';
import { openSession } from '#app/_flows/sign-in.ts';
import type { Actor } from './actor.ts';
import type { Services } from './services.ts';
import { sha256 } from './services.ts';

const COOKIE = 'session';

export const newToken = (): string => randomBytes(32).toString('base64url');

/** The cookie that carries a token. It is not marked Secure: the shop is served on its own machine, over plain HTTP. */
export const sessionCookie = (token: string, maxAgeS: number): string =>
  `${COOKIE}=${token}; Path=/; HttpOnly; SameSite=Strict; Max-Age=${maxAgeS}`;

export const endedCookie = `${COOKIE}=; Path=/; HttpOnly; SameSite=Strict; Max-Age=0`;

/** SHA-256 of the request's token, or null where it carries none. */
export function tokenSha256Of(cookieHeader: string | null): string | null {
  const found = (cookieHeader ?? '')
    .split(';')
    .map((each) => each.trim())
    .find((each) => each.startsWith(`${COOKIE}=`));
  const token = found?.slice(COOKIE.length + 1);
  return token ? sha256(token) : null;
}

/** Who a request speaks for. */
export const readSession = (services: Services, request: Request): Actor => actorOf(services, request.headers.get('cookie'));

/** The same from a bare cookie header, for pages. */
export function actorOf(services: Services, cookieHeader: string | null): Actor {
  const tokenSha256 = tokenSha256Of(cookieHeader);
  const open = tokenSha256 === null ? null : openSession({ db: services.db, now: services.now() }, tokenSha256);
  if (!open) return { kind: 'nobody' };
  const { account, station } = open;
  if (account) return { kind: 'staff', accountId: account.id, role: account.role, stationId: station?.id ?? null };
  return station ? { kind: 'kiosk', stationId: station.id } : { kind: 'nobody' };
}
