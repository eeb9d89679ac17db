// A jar from the queue to the customer's hand, on the built pages, and what the bench does not let pass.
import type { Page } from '@playwright/test';
import { asMixer, BENCH, confirmAll, passFitness, signInAs, signSecond, typeTwice, weighDue } from './support/bench-work.ts';
import { expect, test } from './support/journey.ts';
import { expectAccessible, expectNothingCut, heading, orderMask, PANEL, press } from './support/kiosk-visit.ts';

// One jar after the other through one shop: what one test leaves in hand, the next goes on with.
test.describe.configure({ mode: 'serial' });
test.use({ viewport: BENCH, reducedMotion: 'reduce' } as Parameters<typeof test.use>[0]);

/** The page is readable, fits the bench's screen, and has one heading. */
async function look(page: Page): Promise<void> {
  await expect(heading(page)).toHaveCount(1);
  await expectAccessible(page);
  await expectNothingCut(page);
}

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const rail = (page: Page, name: string) => page.getByRole('navigation', { name: 'Steps' }).getByText(name, { exact: true });

async function openJar(page: Page): Promise<void> {
  await page.goto('/bench');
  await page.getByRole('link', { name: 'Go on with this jar' }).click();
}

/** Another page of the same person is a step ahead; the first one says so and moves nothing under the finger. */
async function pressElsewhere(page: Page, name: string): Promise<void> {
  const other = await page.context().newPage();
  await other.goto(page.url());
  await other.getByLabel('Code on the jar').fill(state.jar);
  await press(other, 'Go on');
  const before = (await heading(page).boundingBox())?.y;
  await press(other, name);
  await expect(page.getByText(/^This step was recorded elsewhere\. Nothing is lost/)).toBeVisible();
  expect((await heading(page).boundingBox())?.y).toBe(before);
  await look(page);
  await other.close();
}

const state = { order: '', orderId: '', jar: '' };

test('an order from the kiosk is first in the queue; its card is one A5 page', async ({ page, context }) => {
  await page.setViewportSize(PANEL);
  state.order = await orderMask(page, { wishes: ['Skin that looks less shiny'] });
  await page.setViewportSize(BENCH);
  await asMixer(page);
  await expect(page.getByText(state.order).first()).toBeVisible();
  await look(page);
  const link = page.getByRole('link', { name: 'Print the card' });
  const sheet = await context.newPage();
  await sheet.goto((await link.getAttribute('href')) ?? '');
  await expect(button(sheet, 'Print')).toBeVisible();
  await expectAccessible(sheet);
  const weights = await sheet
    .locator('td bdi span:first-child')
    .evaluateAll((cells) => cells.map((cell) => Math.round(cell.getBoundingClientRect().right * 2) / 2));
  expect(new Set(weights).size).toBe(1);
  const pdf = (await sheet.pdf({ preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  // 148 × 210 mm in points.
  expect(pdf).toMatch(/\/MediaBox\s*\[\s*0 0 4(19|20)[.\d]* 59[456][.\d]*\s*\]/);
});

test('scale and meter are checked first; protection comes before any powder, whatever the address', async ({ page }) => {
  await asMixer(page);
  await press(page, 'Take this order');
  await expect(heading(page)).toHaveText('Check the scale first');
  await look(page);
  await page.getByLabel(/, empty$/).fill('0.00');
  await page.getByLabel('1 g weight').fill('1,00');
  await page.getByLabel('50 g weight').fill('50.00');
  await press(page, 'Keep these figures');
  await expect(page.getByText('You typed 1,00. Use a point, not a comma: 1.00.')).toBeVisible();
  await page.getByLabel('1 g weight').fill('1.05');
  await press(page, 'Keep these figures');
  await expect(page.getByText(/^Outside its tolerance/)).toBeVisible();
  await passFitness(page);
  await expect(heading(page)).toHaveText('Is the bench clear?');
  await expect(heading(page)).toBeFocused();
  await look(page);
  await expect(button(page, 'Not yet: confirm all')).toHaveAttribute('aria-disabled', 'true');
  await confirmAll(page);
  await expect(heading(page)).toHaveText('Before the first powder');
  await page.reload();
  await expect(heading(page)).toHaveText('Before the first powder');
  await expect(page.getByRole('checkbox', { checked: true })).toHaveCount(0);
  await look(page);
  await confirmAll(page);
});

test('the tare is typed twice alike; the jar gets its code', async ({ page }) => {
  await asMixer(page);
  await openJar(page);
  await expect(heading(page)).toHaveText('Weigh the empty jar');
  await press(page, 'Type the weight');
  await page.locator('#typed-weight').fill('42.00');
  await press(page, 'Next');
  await expect(page.getByText('42.00')).toHaveCount(0);
  await page.locator('#typed-weight').fill('42.10');
  await press(page, 'Compare');
  await expect(page.getByText(/^The two entries differ/)).toBeVisible();
  await typeTwice(page, '42.00');
  await expect(heading(page)).toHaveText('Write this code on the jar');
  state.jar =
    (await page
      .getByText(/^ML\d{9}[0-9A-Z]$/)
      .first()
      .textContent()) ?? '';
  await look(page);
  await press(page, 'It is on the jar');
  await expect(heading(page)).toHaveText('Kaolin, white');
});

test('a wrong lot is stopped before anything is poured; light is added to; heavy has no way but mending', async ({ page }) => {
  await asMixer(page);
  await openJar(page);
  await press(page, 'It is on the jar');
  await page.getByLabel('Scan or type the lot in your hand').fill('NIA-N-106');
  await press(page, 'Check the lot');
  await expect(page.getByText('Asked for KAO-N-101')).toBeVisible();
  await expect(page.getByText('In your hand NIA-N-106')).toBeVisible();
  await expect(button(page, 'Not yet: check the lot')).toBeVisible();
  await look(page);
  await page.getByLabel('Scan or type the lot in your hand').fill('kao-n-101');
  await press(page, 'Check the lot');
  await press(page, 'Type the weight');
  await page.locator('#typed-weight').fill('0.40');
  await press(page, 'Next');
  await expect(page.getByRole('status')).toHaveText('Add 0.12 g');
  await look(page);
  await press(page, 'Type it again');
  await typeTwice(page, '0.80');
  await expect(page.getByRole('status')).toHaveText('Too much by 0.23 g');
  await press(page, 'Mend it');
  await expect(heading(page)).toHaveText('You poured 0.80 g. The most is 0.57 g');
  await look(page);
  await page.reload();
  await page.getByLabel('Code on the jar').fill(state.jar.slice(-5));
  await press(page, 'Go on');
  await expect(heading(page)).toHaveText('You poured 0.80 g. The most is 0.57 g');
  await expect(page.getByRole('heading', { name: /^Take 0\.\d\d\sg out of the boat$/ })).toBeVisible();
  await page.getByLabel('Taken out').fill('0.28');
  await press(page, 'It is taken out');
  await expect(heading(page)).toHaveText('Kaolin, white');
  await expect(page.getByText(/^0\.52\sg should be left in the boat/)).toBeVisible();
  await look(page);
  await weighDue(page);
  await expect(heading(page)).toHaveText('Titanium dioxide 20\u00a0% in kaolin');
});

test('a page that was closed asks which jar is there and goes on at the same step; the last entry can be taken back', async ({ page }) => {
  await asMixer(page);
  await openJar(page);
  await expect(heading(page)).toHaveText('Which jar is in front of you?');
  await look(page);
  await page.getByLabel('Code on the jar').fill('00099');
  await press(page, 'Go on');
  await expect(page.getByText(/^Not the jar of this order/)).toBeVisible();
  await page.getByLabel('Code on the jar').fill(state.jar.toLowerCase());
  await press(page, 'Go on');
  await expect(heading(page)).toHaveText('Titanium dioxide 20\u00a0% in kaolin');
  await press(page, 'Something went wrong');
  await expect(page.getByRole('heading', { name: 'Take back 0.52 g of Kaolin, white' })).toBeVisible();
  await expectAccessible(page);
  await press(page, 'It was typed wrongly');
  await expect(heading(page)).toHaveText('Kaolin, white');
  await weighDue(page);
  await weighDue(page);
  await expect(heading(page)).toHaveText('Wetting oil');
});

test('too much oil: the batch grows with a second person’s look, and everything already in gets its top-up', async ({ page }) => {
  await asMixer(page);
  await openJar(page);
  await page.getByLabel('Code on the jar').fill(state.jar);
  await press(page, 'Go on');
  await page.getByLabel('Scan or type the lot in your hand').fill('R2-OIL-118');
  await press(page, 'Check the lot');
  await press(page, 'Type the weight');
  await typeTwice(page, '2.40');
  await press(page, 'Mend it');
  await expect(heading(page)).toHaveText(/^You poured 2\.40\sg/);
  await look(page);
  await press(page, 'Ask a second person to check');
  await page.getByLabel('Your name').fill('mixer');
  await page.getByLabel('Password').fill('green-clay-one');
  await press(page, 'Sign');
  await expect(page.getByText('The second person must be somebody else.')).toBeVisible();
  await press(page, 'Ask a second person to check');
  await page.getByLabel('Your name').fill('checker');
  await page.getByLabel('Password').fill('green-clay-two');
  await press(page, 'Sign');
  await expect(heading(page)).toHaveText('Kaolin, white');
  await expect(page.getByText('Any released lot will do.')).toBeVisible();
  for (const lot of ['KAO-N-101', 'TIO-20-103']) {
    await page.getByLabel('Scan or type the lot in your hand').fill(lot);
    await press(page, 'Check the lot');
    await press(page, 'Type the weight');
    await typeTwice(page, '0.11');
    await button(page, /^Record /).click();
  }
  await expect(heading(page)).toHaveText('Work to a smooth paste');
  await look(page);
  await pressElsewhere(page, 'Smooth, no dry specks');
  await weighDue(page);
});

test('a flagged weighing is read by a second person on a page that does not hold the first reading', async ({ page }) => {
  await asMixer(page);
  await openJar(page);
  await page.getByLabel('Code on the jar').fill(state.jar);
  await press(page, 'Go on');
  await page.getByLabel('Temperature').fill('75');
  await press(page, 'Keep it');
  await expect(page.getByText(/^Too warm/)).toBeVisible();
  await page.getByLabel('Temperature').fill('22');
  await press(page, 'Keep it');
  await expect(heading(page)).toContainText('NIACINamide');
  await page.getByLabel('Scan or type the lot in your hand').fill('NIA-N-106');
  await press(page, 'Check the lot');
  await press(page, 'Type the weight');
  await typeTwice(page, '1.26');
  await press(page, 'Ask a second person');
  await expect(heading(page)).toHaveText('Second person');
  expect(await page.content()).not.toContain('1.26');
  await look(page);
  await signSecond(page, { lot: 'NIA-N-106', grams: '1.25' });
  await expect(page.getByText(/^The two of you read different things/)).toBeVisible();
  await press(page, 'Ask a second person');
  await signSecond(page, { lot: 'nia-n-106', grams: '1.26' });
  await expect(heading(page)).toHaveText('Stir until nothing is left undissolved');
  await expect(rail(page, 'No grains')).toBeVisible();
});

test('checks, release, label and handing over', async ({ page, context }) => {
  await asMixer(page);
  await openJar(page);
  await page.getByLabel('Code on the jar').fill(state.jar);
  await press(page, 'Go on');
  await press(page, 'No grains');
  await press(page, 'It is not');
  await expect(page.getByText(/^Work it again/)).toBeVisible();
  await look(page);
  await press(page, 'It is good');
  await expect(heading(page)).toHaveText('Measure the pH');
  await page.getByLabel('pH', { exact: true }).fill('2.9');
  await press(page, 'Keep it');
  await expect(page.getByText(/^The pH was 2.90/)).toBeVisible();
  await look(page);
  await page.getByLabel('pH', { exact: true }).fill('5.62');
  await press(page, 'Keep it');
  await expect(heading(page)).toHaveText('Look, smell and colour');
  await look(page);
  await press(page, 'It is good');
  await press(page, 'Type the weight');
  await typeTwice(page, '91.50');
  await expect(page.getByText('It holds 49.50 g. Fill it up to 50 g and weigh again.')).toBeVisible();
  await press(page, 'Type the weight');
  await typeTwice(page, '92.10');
  await expect(heading(page)).toHaveText('Release this jar');
  await look(page);
  await page.getByLabel('Code on the jar').fill('ML263290009X');
  await press(page, 'Release this jar');
  await expect(page.getByText('That is the code of another jar.')).toBeVisible();
  await page.getByLabel('Code on the jar').fill(state.jar);
  await press(page, 'Release this jar');
  await expect(heading(page)).toHaveText('Released. Label it and hand it over');
  await look(page);
  const [label] = await Promise.all([context.waitForEvent('page'), press(page, 'Print the label')]);
  await expect(button(label, 'Print')).toBeVisible();
  await expect(label.getByText(state.jar)).toBeVisible();
  await expectAccessible(label);
  const pdf = (await label.pdf({ preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  // 90 × 50 mm in points.
  expect(pdf).toMatch(/\/MediaBox\s*\[\s*0 0 25[45][.\d]* 14[12][.\d]*\s*\]/);
  // Lines, no picture: a thermal printer has no grey.
  expect(pdf).not.toMatch(/\/Subtype\s*\/Image/);
  await label.close();
  state.orderId = page.url().split('/').at(-1) ?? '';
  await page.getByLabel('Code on the label').fill(state.jar);
  await press(page, 'Hand it over');
  await expect(heading(page)).toHaveText('Handed over');
  await look(page);
  await page.goto(`/bench/print/card/${state.orderId}`);
  await expect(heading(page)).toHaveText('This order is over. Its card is not printed.');
  await look(page);
  await page.goto('/bench');
  await expect(page.getByText(state.order)).toHaveCount(0);
});

test('the manager sees the jar among what is sold', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await signInAs(page, 'manager', 'red-clay-one');
  await page.goto('/office/review');
  await page.getByText('Table', { exact: true }).click();
  await expect(page.getByRole('row').filter({ hasText: 'Chalk Down' })).toContainText('100 %');
  await expectAccessible(page);
  await page.getByText('Chart', { exact: true }).click();
  await expect(page.getByText('1 jar sold: too few to compare combinations')).toBeVisible();
  await expectAccessible(page);
});

test('a text that does not fit its label blocks the print and says so', async ({ page }) => {
  await asMixer(page);
  await page.route('**/bench/print/label/**', async (route) => {
    const response = await route.fetch();
    const long = 'Keep from children. '.repeat(30);
    await route.fulfill({ response, body: (await response.text()).replaceAll('Keep from children.', long) });
  });
  await page.goto(`/bench/print/label/${state.orderId}`);
  await expect(page.getByText('This text does not fit its label')).toBeVisible();
  await expect(button(page, 'Print')).toHaveCount(0);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText(state.jar)).toBeHidden();
  await expect(page.getByText('This text does not fit its label')).toBeVisible();
});

test('a counter’s screen and the office do not get in', async ({ page }) => {
  await page.goto('/bench');
  await expect(page).toHaveURL(/\/sign-in\?next=%2Fbench$/);
  expect((await page.request.get('/api/bench/queue')).status()).toBe(401);
});
