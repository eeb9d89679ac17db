// Takes pictures of the sheets, to be looked at: node take-sheets.ts <folder> [sheet …]. Nothing of it is kept in the tree.
import { mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { createViteServer } from 'vitest/node';
import { shots } from './shots.data.ts';

const [folder, ...wanted] = process.argv.slice(2);
if (!folder) throw new Error('say where to put the pictures: node test/support/look/take-sheets.ts <folder> [sheet …]');
const target = resolve(folder);
mkdirSync(target, { recursive: true });

const vite = await createViteServer({
  root: fileURLToPath(new URL('../../..', import.meta.url)),
  configFile: false,
  logLevel: 'error',
  server: { port: 0, host: '127.0.0.1', hmr: false, watch: null },
  optimizeDeps: { include: ['react', 'react-dom/client', 'react/jsx-dev-runtime', 'intl-messageformat'] },
});
await vite.listen();
const base = vite.resolvedUrls?.local[0] ?? '';

const browser = await chromium.launch({
  ...(process.env.CHROMIUM ? { executablePath: process.env.CHROMIUM } : {}),
  args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-background-networking'],
});
for (const shot of shots.filter(({ file }) => wanted.length === 0 || wanted.some((name) => file.includes(name)))) {
  const page = await browser.newPage({
    viewport: { width: shot.width, height: shot.height },
    reducedMotion: 'reduce',
    colorScheme: 'light',
  });
  page.on('pageerror', (fault) => process.stderr.write(`${shot.file}: ${fault.message}\n`));
  page.on('request', (request) => {
    if (!request.url().startsWith(base) && !request.url().startsWith('data:'))
      process.stderr.write(`${shot.file} left the machine: ${request.url()}\n`);
  });
  await page.goto(`${base}test/support/look/sheet.html?${shot.query}`);
  await page.waitForSelector('[data-face]');
  await page.evaluate(() => document.fonts.ready);
  const styled = await page.locator('[style]').count();
  if (styled > 0) process.stderr.write(`${shot.file}: ${styled} style attributes\n`);
  const cut = await page.evaluate(() =>
    [document.documentElement, ...document.querySelectorAll('main, main *')]
      .filter((part) => part.scrollWidth > part.clientWidth + 1 && part.clientWidth > 0 && !part.closest('.for-readers, svg'))
      .map((part) => `${part.tagName.toLowerCase()}.${part.getAttribute('class') ?? ''}`),
  );
  if (cut.length > 0) process.stderr.write(`${shot.file} is wider than its box: ${cut.slice(0, 4).join(', ')}\n`);
  await page.screenshot({ path: join(target, `${shot.file}.png`), fullPage: shot.whole === true });
  process.stdout.write(`${shot.file}\n`);
  await page.close();
}
await browser.close();
await vite.close();
