import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Fast layers: everything but the browser journeys, which Playwright runs. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['test/{unit,property,published,golden,type,store,flow,http,arch}/**/*.test.ts'],
    setupFiles: ['test/support/setup.ts'],
    pool: 'forks',
    maxWorkers: '100%',
    testTimeout: 60_000,
    hookTimeout: 60_000,
    passWithNoTests: false,
  },
});
