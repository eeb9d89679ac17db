// What a mixer does at the bench, by what a mixer sees.
import type { Page } from '@playwright/test';
import { expect } from '@playwright/test';
import { heading, press } from './kiosk-visit.ts';

export const BENCH = { width: 1280, height: 800 };

/** Signs a person of the demonstration in, on the session of the page. */
export async function signInAs(page: Page, code: string, password: string): Promise<void> {
  await page.goto('/sign-in');
  await page.getByLabel('Name', { exact: true }).fill(code);
  await page.getByLabel('Password', { exact: true }).fill(password);
  await press(page, 'Sign in');
  await page.waitForURL(/\/(bench|office)/);
}

export const asMixer = (page: Page): Promise<void> => signInAs(page, 'mixer', 'green-clay-one');

/** Types a weight twice, as the dialog asks. */
export async function typeTwice(page: Page, grams: string): Promise<void> {
  const field = page.locator('#typed-weight');
  await expect(page.getByRole('heading', { name: 'Type what the scale shows' })).toBeVisible();
  await field.fill(grams);
  await press(page, 'Next');
  await expect(page.getByRole('heading', { name: 'Once more: what does the scale show?' })).toBeVisible();
  await expect(field).toHaveValue('');
  await field.fill(grams);
  await press(page, 'Compare');
}

/** The scale and, where it is asked for, the pH meter pass their checks. */
export async function passFitness(page: Page): Promise<void> {
  await page.getByLabel(/, empty$/).fill('0.00');
  await page.getByLabel('1 g weight').fill('1.00');
  await page.getByLabel('50 g weight').fill('50.01');
  await page.getByRole('button', { name: 'Keep these figures' }).first().click();
  await expect(page.getByText(/^Scale .* is fit for today$/).or(page.getByRole('heading', { name: 'Is the bench clear?' }))).toBeVisible();
  const meter = page.getByLabel('Buffer pH 4');
  if (!(await meter.isVisible())) return;
  await meter.fill('4.01');
  await page.getByLabel('Buffer pH 7').fill('6.98');
  await page.getByLabel('Slope').fill('98.5');
  await press(page, 'Keep these figures');
}

export async function confirmAll(page: Page): Promise<void> {
  for (const box of await page.getByRole('checkbox').all()) await box.check();
  await press(page, 'Confirmed');
}

/** The lot that the page asks for, the weight that it asks for, and the checker where it asks for one. */
export async function weighDue(page: Page): Promise<void> {
  const asked = (await page.getByText(/The card asks for /).textContent()) ?? '';
  const lot = /asks for (\S+)\.$/.exec(asked)?.[1] ?? '';
  const grams = (
    (await page
      .locator('main')
      .getByText(/^[\d.]+ g$/)
      .first()
      .textContent()) ?? ''
  ).replace(/[^\d.]/g, '');
  await page.getByLabel('Scan or type the lot in your hand').fill(lot);
  await press(page, 'Check the lot');
  await expect(page.getByText(/is right$/)).toBeVisible();
  await press(page, 'Type the weight');
  await typeTwice(page, grams);
  const second = page.getByRole('button', { name: 'Ask a second person' });
  const record = page.getByRole('button', { name: /^Record / });
  await expect(second.or(record)).toBeVisible();
  if (await second.isVisible()) {
    await second.click();
    await signSecond(page, { lot, grams });
  } else await record.click();
}

export async function signSecond(page: Page, { lot, grams }: { readonly lot: string; readonly grams: string }): Promise<void> {
  await expect(heading(page)).toHaveText('Second person');
  await page.getByLabel('Your name').fill('checker');
  await page.getByLabel('Password').fill('green-clay-two');
  await page.getByLabel('Lot on the container').fill(lot);
  await page.getByLabel('What the scale shows').fill(grams);
  await press(page, 'Sign');
}
