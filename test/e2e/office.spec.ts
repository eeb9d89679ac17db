// The formulator changes a level, another one publishes, and the kiosk follows; every office page is clean under axe.
import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { batchCode } from '#lib/label/batch-code.ts';
import { localDay } from '#lib/units/time.ts';
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

const PAGES = [
  '',
  '/materials',
  '/offer',
  '/pairs',
  '/cautions',
  '/publish',
  '/editions',
  '/review',
  '/stops',
  '/complaints',
  '/people',
  '/examples',
  '/offer?active=niacinamide&level=20000',
  '/pairs?judge=new',
  '/cautions?caution=eyes',
];

test('office pages are clean under axe and have one heading each', async ({ page }) => {
  await signIn(page, 'formulator', 'white-clay-one');
  for (const path of PAGES) {
    await page.goto(`/office${path}`);
    await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1);
    await axe(page);
  }
});

/** What is wider than the place it has, and which of sections, content and panel lie over each other. */
const layoutFaults = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const parts = [document.documentElement, ...document.querySelectorAll('main, main *, aside, aside *, nav, nav *')];
    const wide = parts
      .filter(
        (part) =>
          part.clientWidth > 0 && part.scrollWidth > part.clientWidth + 1 && !part.closest('.for-readers, svg, select, [aria-hidden=true]'),
      )
      .map((part) => `${part.tagName} ${part.className} is ${part.scrollWidth} wide in ${part.clientWidth}`);
    const boxes = [...document.querySelectorAll('[data-screen-only], main, aside, section')].map((part) => ({
      part,
      box: part.getBoundingClientRect(),
    }));
    const over = boxes.flatMap(({ part, box }, index) =>
      boxes
        .slice(index + 1)
        .filter(({ part: other }) => !part.contains(other) && !other.contains(part))
        .filter(
          ({ box: { left, right, top, bottom } }) =>
            left < box.right - 1 && right > box.left + 1 && top < box.bottom - 1 && bottom > box.top + 1,
        )
        .map(({ part: other }) => `${part.tagName} lies over ${other.tagName}`),
    );
    return [...wide, ...over];
  });

for (const [way, size, percent] of [
  ['text', { width: 1440, height: 900 }, 200],
  ['zoom', { width: 720, height: 450 }, 100],
] as const) {
  test(`office at 200 % ${way}: nothing scrolls sideways and nothing lies over anything`, async ({ page }) => {
    await page.setViewportSize(size);
    await signIn(page, 'manager', 'red-clay-one');
    await page.goto('/office/people');
    const grow = (): Promise<void> =>
      page.evaluate((to) => {
        document.documentElement.style.fontSize = `${to}%`;
      }, percent);
    await grow();
    const found = [['people, with the form', await layoutFaults(page)]];
    await page.context().clearCookies();
    await signIn(page, 'formulator', 'white-clay-one');
    for (const path of PAGES) {
      await page.goto(`/office${path}`);
      await grow();
      found.push([path, await layoutFaults(page)]);
    }
    expect(found.filter(([, faults]) => faults?.length !== 0)).toEqual([]);
  });
}

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
  await page.waitForURL('**/office/offer?saved=*');
  await expect(page.getByRole('status').filter({ hasText: /Saved to the draft as revision \d+/ })).toBeVisible();
  await expect(page.getByText('Signed in as Formulator')).toBeVisible();
  await page.goto('/office/pairs?first=lactic-acid-50&second=illite');
  await page.getByLabel('Verdict').selectOption('caution');
  await page.getByLabel('Caution', { exact: true }).selectOption('staff-acid-clay');
  await page.getByRole('button', { name: 'Save the judgement' }).click();
  await page.waitForURL('**/office/pairs?saved=*');
  await page.goto('/office/publish');
  await expect(page.getByText('Another formulator must publish it')).toBeVisible();

  await page.context().clearCookies();
  await signIn(page, 'formulator2', 'white-clay-two');
  await page.goto('/office/publish');
  await page.getByLabel('Why').fill('Too short');
  await page.getByLabel('Your password again').fill('white-clay-two');
  await page.getByRole('button', { name: 'Publish edition 2' }).click();
  await expect(page.getByText('Look at 1 more change that may widen use')).toBeVisible();
  for (const box of await page.getByLabel('I have looked at this').all()) await box.check();
  await page.getByLabel('Why').fill('Illite and lactic acid kept their pH for a year in all of the trial jars');
  await page.getByLabel('From when').fill('2020-01-01T08:00');
  await page.getByRole('button', { name: 'Publish edition 2' }).click();
  await expect(page.getByText('That time has passed.')).toBeVisible();
  await page.getByLabel('From when').fill('');
  await page.getByRole('button', { name: 'Publish edition 2' }).click();
  await page.waitForURL('**/office/editions');
  await expect(page.getByRole('row').filter({ hasText: 'I approve edition 2 for sale.' })).toBeVisible();
});

test('a judgement opens undecided, asks only for what its verdict needs, marks what is missing, and is sent once', async ({ page }) => {
  await signIn(page, 'formulator', 'white-clay-one');
  await page.goto('/office/pairs?judge=new');
  for (const label of ['First material', 'Second material', 'Verdict']) await expect(page.getByLabel(label)).toHaveValue('');
  await expect(page.getByLabel('Most of both together')).toHaveCount(0);
  await expect(page.getByLabel('Caution', { exact: true })).toHaveCount(0);
  const save = page.getByRole('button', { name: 'Save the judgement' });
  await save.click();
  await expect(page.getByText('mend the 5 marked fields')).toBeVisible();
  await expect(page.getByLabel('First material')).toBeFocused();
  await expect(page.getByText('Say why, so that somebody else can judge it again.')).toBeVisible();
  await axe(page);

  await page.getByLabel('First material').selectOption('niacinamide');
  await page.getByLabel('Second material').selectOption('niacinamide');
  await page.getByLabel('Verdict').selectOption('limit');
  await page.getByLabel('Reason').fill('Seen in the trial jars');
  await page.getByLabel('Source').fill('trial jars');
  await save.click();
  await expect(page.getByText('Choose another material than the first.')).toBeVisible();
  await expect(page.getByText('Type the share in digits')).toBeVisible();
  await expect(page.getByLabel('Reason')).toHaveValue('Seen in the trial jars');

  await page.getByLabel('Second material').selectOption('panthenol');
  await page.getByLabel('Most of both together').fill('2.5');
  const sent: string[] = [];
  page.on('request', (request) => request.url().endsWith('/api/office/draft') && sent.push(request.url()));
  await save.dblclick();
  await page.waitForURL('**/office/pairs?saved=*');
  expect(sent).toHaveLength(1);
  await expect(page.getByRole('row').filter({ hasText: 'Seen in the trial jars' })).toContainText('together at most 2.5');
});

test('a caution cannot be left without words', async ({ page }) => {
  await signIn(page, 'formulator', 'white-clay-one');
  await page.goto('/office/cautions?caution=eyes');
  await page.getByLabel('Words for the customer').fill('  ');
  await page.getByRole('button', { name: 'Save to the draft' }).click();
  await expect(page.getByText('A caution without words warns nobody.')).toBeVisible();
  await expect(page.getByLabel('Words for the customer')).toBeFocused();
  await expect(page.getByRole('row').filter({ hasText: 'Try first' })).toContainText(/Only after “.+\?”: Often, Sometimes, /);
});

test('people are added by the manager; a formulator sees who there is and why there is no form', async ({ page }) => {
  await signIn(page, 'formulator', 'white-clay-one');
  await page.goto('/office/people');
  await expect(page.getByRole('row', { name: /^Second formulator/ })).toBeVisible();
  await expect(page.getByText('The manager adds people')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Add this person' })).toHaveCount(0);
  await page.context().clearCookies();
  await signIn(page, 'manager', 'red-clay-one');
  await page.goto('/office/people');
  await page.getByLabel('Full name').fill('Third formulator');
  await page.getByLabel('Name to sign in with').fill('formulator3');
  await page.getByLabel('Role').selectOption('formulator');
  await page.getByLabel('First password').fill('white-clay-three');
  await page.getByRole('button', { name: 'Add this person' }).click();
  await expect(page.getByText('Added. They can sign in now.')).toBeVisible();
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

test('a shade is stopped with a reason, the kiosk honours it, and a second person lifts it', async ({ page }) => {
  await signIn(page, 'formulator', 'white-clay-one');
  await page.goto('/office/stops');
  await page.getByLabel('What sort of thing').selectOption('shade');
  await page.getByRole('button', { name: 'Stop it now' }).click();
  await expect(page.getByText('Choose what is to be stopped.')).toBeVisible();
  await expect(page.getByText('Say why.')).toBeVisible();
  await page.getByLabel('Which one').selectOption({ label: 'Rust Seam' });
  await page.getByLabel('Why').fill('colour off in two jars');
  await page.getByRole('button', { name: 'Stop it now' }).click();
  await expect(page.getByText(/^Stopped\. (No open order has it|\d+ open orders? waits?: )/)).toBeVisible();
  await axe(page);

  await page.getByRole('link', { name: 'Lift the stop on Rust Seam' }).click();
  await page.getByLabel('Why it may go on').fill('drawdown repeated, colour right');
  await page.getByLabel('Name').fill('formulator');
  await page.getByLabel('Password').fill('white-clay-one');
  await page.getByRole('button', { name: 'Lift the stop' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'must be somebody else' })).toBeVisible();
  await expect(page.getByLabel('Why it may go on')).toHaveValue('drawdown repeated, colour right');
  await axe(page);
  await page.getByLabel('Name').fill('manager');
  await page.getByLabel('Password').fill('red-clay-one');
  await page.getByRole('button', { name: 'Lift the stop' }).click();
  await expect(page.getByRole('cell', { name: /Lifted .* drawdown repeated/ })).toBeVisible();
});

test('nothing typed is said at the field; a capital is no other name; a page for another role says so and leads on', async ({ page }) => {
  await page.goto('/sign-in?next=%2Foffice');
  await page.getByRole('button', { name: 'Sign in' }).click();
  await expect(page.getByText('Type the name you sign in with.')).toBeVisible();
  await expect(page.getByLabel('Name')).toBeFocused();
  await page.getByLabel('Name').fill('Mixer ');
  await page.getByLabel('Password').fill('green-clay-one');
  await page.getByRole('button', { name: 'Sign in' }).click();
  await expect(page.getByText('You are signed in as Mixer, mixer')).toBeVisible();
  await expect(page.getByText('The page you asked for belongs to the office.')).toBeVisible();
  await axe(page);
  await page.getByRole('link', { name: 'Go to the bench' }).click();
  await page.waitForURL('**/bench');
});

test('a complaint is written down against a jar of this shop only, and nothing that was typed is lost on the way', async ({ page }) => {
  await signIn(page, 'manager', 'red-clay-one');
  await page.goto('/office/complaints');
  const write = page.getByRole('button', { name: 'Write it down' });
  await write.click();
  await expect(page.getByText('Give the code from the label.')).toBeVisible();
  await expect(page.getByText('Write down what they said.')).toBeVisible();
  await page.getByLabel('What they said').fill('Paler than on the screen.');
  await page.getByLabel('Code of the jar').fill('ML263290001Q');
  await write.click();
  await expect(page.getByText('read it again, letter by letter')).toBeVisible();
  await page.getByLabel('Code of the jar').fill(batchCode({ shop: 'ML', day: localDay('2020-02-29'), runningNo: 1 }).toLowerCase());
  await write.click();
  await expect(page.getByText('No jar of this shop has that code.')).toBeVisible();
  await expect(page.getByLabel('What they said')).toHaveValue('Paler than on the screen.');
  await axe(page);
});
