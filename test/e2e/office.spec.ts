// The formulator changes a level, another one publishes, and the kiosk follows; every office page is clean under axe.
import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './support/journey.ts';

const signIn = async (page: Page, name: string, password: string): Promise<void> => {
  await page.goto('/sign-in');
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL('**/office');
};

const axe = async (page: Page): Promise<void> => {
  const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`)).toEqual([]);
};

test.use({ viewport: { width: 1440, height: 900 } });

test('office pages are clean under axe and have one heading each', async ({ page }) => {
  await signIn(page, 'formulator', 'white-clay-one');
  for (const path of [
    '',
    '/materials',
    '/offer',
    '/pairs',
    '/cautions',
    '/publish',
    '/editions',
    '/review',
    '/people',
    '/offer?active=niacinamide&level=20000',
    '/pairs?judge=new',
    '/cautions?caution=eyes',
  ]) {
    await page.goto(`/office${path}`);
    await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1);
    await axe(page);
  }
});

test('a wrong password says so, keeps the name and lets nobody in', async ({ page }) => {
  await page.goto('/office');
  await page.waitForURL('**/sign-in?next=%2Foffice');
  await page.getByLabel('Name').fill('formulator');
  await page.getByLabel('Password').fill('not this one');
  await page.getByRole('button', { name: 'Sign in' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'do not go together' })).toBeFocused();
  await expect(page.getByLabel('Name')).toHaveValue('formulator');
  await axe(page);
});

test('a changed price and a looser judgement are looked at, published by a second person, and in force', async ({ page }) => {
  await signIn(page, 'formulator', 'white-clay-one');
  await page.goto('/office/offer');
  await page.getByRole('link', { name: 'Change Panthenol, 1.5 %' }).click();
  await page.getByLabel(/Price of this level/).fill('abc');
  await page.getByRole('button', { name: 'Save to the draft' }).click();
  await expect(page.getByText('Type the price in digits')).toBeVisible();
  await page.getByLabel(/Price of this level/).fill('1.70');
  await page.getByRole('button', { name: 'Save to the draft' }).click();
  await page.waitForURL('**/office/offer');
  await page.goto('/office/pairs?first=lactic-acid-50&second=illite');
  await page.getByLabel('Verdict').selectOption('caution');
  await page.getByLabel('Caution', { exact: true }).selectOption('staff-acid-clay');
  await page.getByRole('button', { name: 'Save the judgement' }).click();
  await page.waitForURL('**/office/pairs');
  await page.goto('/office/publish');
  await expect(page.getByText('Another formulator must publish it')).toBeVisible();

  await page.context().clearCookies();
  await signIn(page, 'formulator2', 'white-clay-two');
  await page.goto('/office/publish');
  await page.getByLabel('Why').fill('Too short');
  await page.getByLabel('Your password again').fill('white-clay-two');
  await page.getByRole('button', { name: 'Publish edition 2' }).click();
  await expect(page.getByText('more changes that may widen use')).toBeVisible();
  for (const box of await page.getByLabel('I have looked at this').all()) await box.check();
  await page.getByLabel('Why').fill('Illite and lactic acid kept their pH for a year in all of the trial jars');
  await page.getByRole('button', { name: 'Publish edition 2' }).click();
  await page.waitForURL('**/office/editions');
  await expect(page.getByRole('row').filter({ hasText: 'I approve edition 2 for sale.' })).toBeVisible();
});

test('a rulebook that is no JSON, or unsound, is told apart from one that becomes the draft', async ({ page }) => {
  await signIn(page, 'formulator', 'white-clay-one');
  await page.goto('/office/editions');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page
      .getByRole('link', { name: /Download/ })
      .first()
      .click(),
  ]);
  const document = JSON.parse(await readFile(await download.path(), 'utf8'));
  const give = async (text: string): Promise<void> => {
    await page.goto('/office/publish');
    await page
      .getByLabel('Rulebook as a JSON file')
      .setInputFiles({ name: 'rulebook.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await page.getByRole('button', { name: 'Import into the draft' }).click();
  };
  await give('{"title":');
  await expect(page.getByText(/^This file is not JSON/)).toBeVisible();
  await give(JSON.stringify({ ...document, title: 7, shades: undefined }));
  await expect(page.getByText('This rulebook has 2 faults. Nothing was imported.')).toBeVisible();
  await expect(page.getByText(/^shades: is missing/)).toBeVisible();
  await axe(page);
  await give(JSON.stringify({ ...document, title: 'Masks of another year' }));
  await expect(page.getByRole('row').filter({ hasText: 'Masks of another year' })).toBeVisible();
});
