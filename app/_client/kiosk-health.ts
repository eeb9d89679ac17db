// Whether the shop's server answers, and which edition it sells from.
import type { Health } from '#lib/contracts/health.ts';

/** Null while the server is away or cannot serve. */
export async function readHealth(): Promise<Health | null> {
  try {
    const response = await fetch('/api/health', { cache: 'no-store' });
    return response.ok ? ((await response.json()) as Health) : null;
  } catch {
    return null;
  }
}
