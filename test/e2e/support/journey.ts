// The `test` of every browser journey: pages open on the demo shop, and what a page logs as an error, throws, or is blocked from
// doing by the policy fails the journey.

import type { Page } from '@playwright/test';
import { test as base } from '@playwright/test';

export { expect } from '@playwright/test';

type Fixtures = {
  /** Patterns of console errors that a journey means to cause, e.g. a refused request. */
  readonly expectedErrors: RegExp[];
  readonly quietPages: undefined;
};

export const test = base.extend<Fixtures>({
  expectedErrors: [[], { option: true }],
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the names of the fixtures from the pattern.
  baseURL: async ({}, use) => use(process.env.JARWRIGHT_SHOP_URL),
  quietPages: [
    async ({ context, expectedErrors }, use) => {
      const noise: string[] = [];
      const listen = (page: Page): void => {
        page.on('pageerror', (error) => noise.push(`thrown: ${error.message}`));
        page.on('console', (message) => {
          if (message.type() === 'error' || message.type() === 'warning') noise.push(`${message.type()}: ${message.text()}`);
        });
      };
      context.on('page', listen);
      await use(undefined);
      const unexpected = noise.filter((line) => !expectedErrors.some((pattern) => pattern.test(line)));
      if (unexpected.length > 0) throw new Error(`the page said:\n${unexpected.join('\n')}`);
    },
    { auto: true },
  ],
});
