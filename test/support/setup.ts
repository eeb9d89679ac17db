import { afterAll, afterEach, vi } from 'vitest';

// An unexpected console.error or console.warn is a failure: noise hides faults.
const seen: string[] = [];
for (const level of ['error', 'warn'] as const) {
  vi.spyOn(console, level).mockImplementation((...parts: unknown[]) => {
    seen.push(`${level}: ${parts.map(String).join(' ')}`);
  });
}

function refuseNoise(): void {
  const noise = seen.splice(0);
  if (noise.length > 0) throw new Error(`unexpected console output:\n${noise.join('\n')}`);
}

afterEach(refuseNoise);
// What is said while a file loads, or after its last test, counts as well.
afterAll(refuseNoise);
