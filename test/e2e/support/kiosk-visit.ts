// What a customer does at the kiosk, by what a customer sees.
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect } from '@playwright/test';

export const PANEL = { width: 1080, height: 1920 };
export const TABLET = { width: 1280, height: 800 };
export const PHONE = { width: 390, height: 844 };

export const heading = (page: Page) => page.getByRole('heading', { level: 1 });
export const press = (page: Page, name: string | RegExp): Promise<void> =>
  page.getByRole('button', { name, exact: typeof name === 'string' }).click();
export const pick = async (page: Page, ...labels: readonly string[]): Promise<void> => {
  for (const label of labels) await page.getByLabel(label, { exact: true }).check();
};

export async function startVisit(page: Page): Promise<void> {
  await page.goto('/kiosk');
  await press(page, /^Start/);
  await expect(heading(page)).toHaveText('How old is the person who will use the mask?');
}

interface Answers {
  readonly age?: string;
  readonly wishes?: readonly string[];
  readonly sting?: string;
  readonly today?: readonly string[];
}

/** Answers every question and stands on the page with all of them. */
export async function answerAll(page: Page, answers: Answers = {}): Promise<void> {
  const {
    age = '18 or over',
    wishes = ['Skin that feels less dry or tight'],
    sting = 'Rarely or never',
    today = ['None of these'],
  } = answers;
  for (const labels of [[age], wishes, [sting], today]) {
    await pick(page, ...labels);
    await press(page, 'Continue');
  }
  await expect(heading(page)).toHaveText('Check your answers');
}

export async function seeMasks(page: Page, answers: Answers = {}): Promise<void> {
  await startVisit(page);
  await answerAll(page, answers);
  await press(page, 'Show my masks');
  await expect(heading(page)).toHaveText(/^We picked \d masks? for you$/);
}

export async function seeCautions(page: Page, answers: Answers = {}): Promise<void> {
  await seeMasks(page, answers);
  await page.getByRole('article').first().click();
  await press(page, 'Continue');
  await expect(heading(page)).toHaveText('Read these, then order');
}

export async function tickAll(page: Page): Promise<void> {
  for (const box of await page.getByRole('checkbox').all()) await box.check();
}

export async function orderMask(page: Page, answers: Answers = {}): Promise<string> {
  await seeCautions(page, answers);
  await tickAll(page);
  await press(page, /^Order for/);
  await expect(heading(page)).toHaveText('Show this code at the counter');
  return codeOn(page);
}

export const codeOn = async (page: Page): Promise<string> =>
  (await page
    .getByText(/^[A-Z]\d-\d{3}$/)
    .first()
    .textContent()) ?? '';

/** No violation of WCAG 2.0 to 2.2, A and AA, as far as a machine can tell. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`)).toEqual([]);
}

/** Nothing is wider than its place, and no text is cut off. */
export async function expectNothingCut(page: Page): Promise<void> {
  const wide = await page.evaluate(() =>
    [document.documentElement, ...document.querySelectorAll('main, main *, [data-main]')]
      .filter((part) => part.clientWidth > 0 && part.scrollWidth > part.clientWidth + 1 && !part.closest('.for-readers, svg'))
      .map((part) => `${part.tagName} ${part.className}`),
  );
  expect(wide).toEqual([]);
}
