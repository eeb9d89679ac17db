// The customer's journey from the first touch to the code, and everything that can come in between.
import type { Page } from '@playwright/test';
import { startShop } from '#test/support/start-shop.ts';
import { expect, test } from './support/journey.ts';
import {
  answerAll,
  codeOn,
  expectAccessible,
  expectNothingCut,
  heading,
  orderMask,
  PANEL,
  PHONE,
  pick,
  press,
  seeCautions,
  seeMasks,
  startVisit,
  TABLET,
  tickAll,
} from './support/kiosk-visit.ts';

test.use({ viewport: PANEL, reducedMotion: 'reduce' } as Parameters<typeof test.use>[0]);

/** What a browser keeps of its own accord, and what this document was reached by. */
const keptBy = (page: Page): Promise<string> =>
  page.evaluate(async () =>
    JSON.stringify({
      local: { ...localStorage },
      session: { ...sessionStorage },
      databases: await indexedDB.databases(),
      cookies: document.cookie,
      address: location.href,
      history: history.state,
    }),
  );

test.describe('from questions to code', () => {
  test('every page can be read by everybody, has one heading with the focus, and keeps nothing outside itself', async ({ page }) => {
    const look = async (): Promise<void> => {
      await expect(heading(page)).toHaveCount(1);
      await expectAccessible(page);
      await expectNothingCut(page);
    };
    await page.goto('/kiosk');
    await look();
    await press(page, /^Start/);
    for (const [labels, place] of [
      [['18 or over'], 'Question 1 of 4'],
      [['Skin that feels less dry or tight', 'Skin that feels smoother'], 'Question 2 of 4'],
      [['Sometimes'], 'Question 3 of 4'],
      [['None of these'], 'Question 4 of 4'],
    ] as const) {
      await expect(page.locator('legend h1')).toBeFocused();
      await expect(page).toHaveTitle(new RegExp(`^${place}: .+ – Mask maker$`));
      await expect(page.locator('input:checked')).toHaveCount(0);
      await look();
      const before = page.url();
      await pick(page, ...labels);
      expect(page.url()).toBe(before);
      await expect(page.getByText(place)).toBeVisible();
      await press(page, 'Continue');
    }
    await expect(heading(page)).toBeFocused();
    await look();
    await press(page, 'Show my masks');
    await expect(page.getByRole('article')).toHaveCount(3);
    await look();
    await press(page, 'Why not the others?');
    await expect(page.getByRole('heading', { level: 2 }).first()).toBeVisible();
    await look();
    await press(page, 'Back to the masks');
    await page.getByRole('article').first().click();
    await press(page, 'Continue');
    await look();
    const kept = await keptBy(page);
    expect(kept).not.toMatch(/age-18|wish-|sting-|today-|Sometimes/);
    expect(JSON.parse(kept)).toMatchObject({ local: {}, session: {}, databases: [], cookies: '', history: { page: expect.any(Number) } });
    await tickAll(page);
    await press(page, /^Order for £/);
    await expect(heading(page)).toHaveText('Show this code at the counter');
    await look();
    expect(await codeOn(page)).toMatch(/^[A-Z]\d-\d{3}$/);
    await expect(page.getByRole('img', { name: 'The same code for a scanner' })).toBeVisible();
  });

  test('with the keyboard alone, and the focus is never under the bar', async ({ page }) => {
    await page.goto('/kiosk');
    const seen = async (): Promise<void> => {
      const isCovered = await page.evaluate(() => {
        const focused = document.activeElement;
        const { left, top, width, height } = focused?.getBoundingClientRect() ?? new DOMRect();
        const hit = document.elementFromPoint(left + width / 2, top + Math.min(height / 2, 20));
        return !(focused?.contains(hit) || hit?.contains(focused ?? null));
      });
      expect(isCovered).toBe(false);
    };
    const tabTo = async (name: string | RegExp): Promise<void> => {
      for (let turn = 0; turn < 40; turn += 1) {
        await page.keyboard.press('Tab');
        await seen();
        const found = await page.evaluate(() => document.activeElement?.closest('label, button')?.textContent ?? '');
        if (typeof name === 'string' ? found === name : name.test(found)) return;
      }
      throw new Error(`no way to ${name}`);
    };
    await tabTo(/^Start/);
    await page.keyboard.press('Enter');
    await expect(heading(page)).toBeFocused();
    await tabTo('18 or over');
    await page.keyboard.press('Space');
    await page.keyboard.press('Enter');
    await tabTo('Skin that feels less dry or tight');
    await page.keyboard.press('Space');
    await tabTo('Continue');
    await page.keyboard.press('Enter');
    await tabTo('Often');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await expect(page.getByLabel('Rarely or never')).toBeChecked();
    await tabTo('Continue');
    await page.keyboard.press('Enter');
    await tabTo('None of these');
    await page.keyboard.press('Space');
    await page.keyboard.press('Enter');
    await expect(heading(page)).toHaveText('Check your answers');
    await tabTo('Show my masks');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('radio').first()).toBeVisible();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
    await expect(page.getByRole('radio').first()).toBeChecked();
    await tabTo('Continue');
    await page.keyboard.press('Enter');
    await tabTo('I have read all of these');
    await page.keyboard.press('Space');
    await tabTo(/^Order for/);
    await page.keyboard.press('Enter');
    await expect(heading(page)).toHaveText('Show this code at the counter');
  });

  test('the masks show the same rows in the same order, and no score', async ({ page }) => {
    await seeMasks(page, { wishes: ['Skin that feels less dry or tight', 'Skin that feels smoother'] });
    const cards = await page.getByRole('article').all();
    expect(cards.length).toBeGreaterThan(0);
    const heads = await cards[0]?.locator('dt').allTextContents();
    const shared = page.locator('section', { has: page.getByRole('heading', { name: 'All of them' }) });
    expect(new Set([...(heads ?? []), ...(await shared.locator('dt').allTextContents())])).toEqual(
      new Set(['Chosen for', 'Good', 'Less good', 'Care']),
    );
    for (const card of cards) {
      expect(await card.locator('dt').allTextContents()).toEqual(heads);
      expect(await card.textContent()).not.toMatch(/%|\b(score|match|stars?)\b|\d+\/\d+/i);
    }
    expect(await page.getByRole('radio').evaluateAll((all) => all.every((one) => !(one as HTMLInputElement).checked))).toBe(true);
  });

  test('what is the same on every card is said once, above; what the milder one does less of stands on its card', async ({ page }) => {
    await seeMasks(page, { wishes: ['Skin that feels less dry or tight', 'Skin that feels smoother'] });
    await expect(page.getByText('Known for the ingredient, not tested here.')).toHaveCount(1);
    await expect(page.getByRole('article').filter({ hasText: 'Milder, and still close' })).toContainText(/Does less here: [a-z ]+\./);
    await press(page, 'Continue');
    await expect(page.getByRole('alert').getByText('Choose a mask first')).toBeVisible();
    await expect(page.getByRole('button', { name: 'Why not the others?' })).toBeInViewport({ ratio: 1 });
  });

  test('one of the others that fits can be chosen, with its own cautions, and stands beside the masks from then on', async ({ page }) => {
    await seeMasks(page);
    await press(page, 'Why not the others?');
    await press(page, 'Choose it: Rust Seam');
    await expect(heading(page)).toHaveText('Read these, then order');
    await expect(page.getByRole('heading', { name: 'Rust Seam' })).toBeVisible();
    await expect(page.getByText('It may mark light towels.')).toBeVisible();
    await page.goBack();
    await page.goBack();
    await expect(page.getByRole('article').filter({ hasText: 'You chose it from the others.' }).getByRole('radio')).toBeChecked();
    await expect(heading(page)).toHaveText('We picked 3 masks for you');
    await press(page, 'Continue');
    await tickAll(page);
    await press(page, /^Order for/);
    await expect(page.getByText(/^Rust Seam, 50\sg, £/)).toBeVisible();
  });

  test('a caution that only an answer adds is not on the jar: it is on the page with the code, whole', async ({ page }) => {
    await orderMask(page, { sting: 'Often' });
    await expect(page.getByText('The cautions below are for you. The others are on your jar.')).toBeVisible();
    const own = page.locator('section', { has: page.getByRole('heading', { name: 'For you, and not on your jar' }) });
    expect(await own.getByRole('listitem').allTextContents()).toEqual([
      expect.stringMatching(/^Try a little first.*do not use the mask\.$/),
    ]);
    await expectAccessible(page);
    await orderMask(page, { sting: 'Rarely or never' });
    await expect(page.getByText('The cautions are on your jar.')).toBeVisible();
    await expect(page.getByRole('heading', { name: 'For you, and not on your jar' })).toHaveCount(0);
  });

  test('the code cannot be reached before every tick is set, and none is set by itself', async ({ page }) => {
    await seeCautions(page, { sting: 'Sometimes' });
    const boxes = await page.getByRole('checkbox').all();
    expect(boxes.length).toBeGreaterThan(1);
    for (const [index, box] of boxes.entries()) {
      await expect(box).not.toBeChecked();
      await expect(page.getByRole('button', { name: 'Tick what you have read first' })).toHaveAttribute('aria-disabled', 'true');
      await expect(page.getByRole('button', { name: /^Order for/ })).toHaveCount(0);
      await box.check();
      if (index < boxes.length - 1) await page.getByRole('button', { name: 'Tick what you have read first' }).click({ force: true });
    }
    await expect(heading(page)).toHaveText('Read these, then order');
    await expect(page.getByRole('button', { name: /^Order for/ })).toBeVisible();
  });
});

test.describe('answering', () => {
  test('Continue without an answer says what to do, and leads there', async ({ page }) => {
    await startVisit(page);
    await press(page, 'Continue');
    await expect(page.getByRole('alert').getByText('Choose one answer')).toBeVisible();
    await expect(page).toHaveTitle(/^Error: Question 1 of 4/);
    await expectAccessible(page);
    await page.getByRole('link', { name: 'Go to the answers' }).click();
    await expect(page.getByLabel('18 or over')).toBeFocused();
    await pick(page, '18 or over');
    await expect(page.getByText('Choose one answer')).toHaveCount(0);
    await press(page, 'Continue');
    await pick(page, 'Skin that looks less shiny', 'Skin that feels smoother', 'Skin that feels calm');
    await press(page, 'Continue');
    await expect(page.getByRole('alert').getByText('Choose 2 at most')).toBeVisible();
  });

  test('Back and Continue keep every answer, with our button and with the browser’s', async ({ page }) => {
    await startVisit(page);
    await answerAll(page);
    await press(page, 'Back');
    await expect(page.getByLabel('None of these')).toBeChecked();
    await press(page, 'Back');
    await expect(page.getByLabel('Rarely or never')).toBeChecked();
    await page.goBack();
    await expect(page.getByLabel('Skin that feels less dry or tight')).toBeChecked();
    await page.goForward();
    await expect(page.getByLabel('Rarely or never')).toBeChecked();
    await press(page, 'Continue');
    await expect(heading(page)).toHaveText('Check your answers');
  });

  test('"None of these" and the others rule each other out', async ({ page }) => {
    await startVisit(page);
    for (const label of ['18 or over', 'Skin that feels calm', 'Rarely or never']) {
      await pick(page, label);
      await press(page, 'Continue');
    }
    await pick(page, 'It is sunburnt', 'It will get a lot of sun in the next 7 days', 'None of these');
    await expect(page.locator('input:checked')).toHaveCount(1);
    await pick(page, 'It is sunburnt');
    await expect(page.getByLabel('None of these')).not.toBeChecked();
  });

  test('an answer can be changed from the list, and the masks follow', async ({ page }) => {
    await seeMasks(page, { wishes: ['Skin that feels smoother'] });
    await expect(page.getByText('Feels smoother.').first()).toBeVisible();
    await press(page, 'Back');
    await press(page, 'Change: Does your skin sting, itch or go red when you try something new?');
    await pick(page, 'Often');
    await press(page, 'Continue');
    await expect(heading(page)).toHaveText('Check your answers');
    await press(page, 'Show my masks');
    await expect(page.getByText('Nothing we add fits what you asked for.')).toBeVisible();
    await press(page, 'Why not the others?');
    await expect(page.getByText('We leave it out because of one of your answers.')).toBeVisible();
    await expect(page.getByText('It has an acid in it.')).toBeHidden();
    await page.getByText('Show why').first().click();
    await expect(page.getByText('It has an acid in it.')).toBeVisible();
    await expectAccessible(page);
    await page
      .getByRole('button', { name: /^Change: Does your skin sting/ })
      .first()
      .click();
    await expect(page.getByLabel('Often')).toBeChecked();
  });
});

test.describe('a visit without masks', () => {
  const cases = [
    ['age', 'Our masks are for people of 16 and over', ['Under 16'], []],
    ['wait', 'Best to wait a little', ['18 or over'], ['It is sunburnt']],
    [
      'professional',
      'Please ask a pharmacist or doctor first',
      ['18 or over'],
      ['It has a rash, blisters or wet patches', 'It is sunburnt'],
    ],
    [
      'mole',
      'Please show that mark to a doctor',
      ['18 or over'],
      ['It has a mole or mark that is new or has changed', 'It has a cut, a scrape or raw skin'],
    ],
  ] as const;
  for (const [name, title, age, today] of cases) {
    test(`${name}: calm, with the reason covered, and a way to change the answer`, async ({ page }) => {
      await startVisit(page);
      await pick(page, ...age);
      await press(page, 'Continue');
      if (today.length > 0) {
        for (const label of ['Skin that feels calm', 'Rarely or never']) {
          await pick(page, label);
          await press(page, 'Continue');
        }
        await pick(page, ...today);
        await press(page, 'Continue');
      }
      await expect(heading(page)).toHaveText(title);
      await expectAccessible(page);
      const words = ((await page.locator('main').textContent()) ?? '').replace(/treatment/g, '');
      expect(words).not.toMatch(/!|\b(error|warning|unfortunately|danger|acne|eczema|treat)\b/i);
      const stops = await page.evaluate(() => {
        const stop = ['rgb(155, 27, 46)', 'rgb(252, 230, 232)'];
        return [...document.querySelectorAll('main *')].filter((part) => {
          const { color, backgroundColor, borderTopColor } = getComputedStyle(part);
          return stop.includes(color) || stop.includes(backgroundColor) || stop.includes(borderTopColor);
        }).length;
      });
      expect(stops).toBe(0);
      await expect(page.getByText('You answered:')).toBeHidden();
      await page.getByText('Show why').click();
      await expect(page.getByText('You answered:')).toBeVisible();
      for (const answer of [...(name === 'age' ? age : today)]) await expect(page.getByText(answer, { exact: true })).toBeVisible();
      await press(page, 'Change an answer');
      await expect(heading(page)).toHaveText('Check your answers');
    });
  }

  test('the worst comes first, the others are named under it', async ({ page }) => {
    await startVisit(page);
    for (const label of ['18 or over', 'Skin that feels calm', 'Rarely or never']) {
      await pick(page, label);
      await press(page, 'Continue');
    }
    await pick(page, 'It is sunburnt', 'It has a mole or mark that is new or has changed');
    await press(page, 'Continue');
    await expect(heading(page)).toHaveText('Please show that mark to a doctor');
    await expect(page.getByText('Best to wait a little.')).toBeVisible();
  });
});

test.describe('nobody is there', () => {
  test('after 90 s we ask, with the page covered and the focus on staying; any touch or key goes on, as often as it takes', async ({
    page,
  }) => {
    await page.clock.install();
    await startVisit(page);
    await pick(page, '16 or 17');
    const dialog = page.getByRole('alertdialog', { name: 'Are you still here?' });
    for (let turn = 0; turn < 12; turn += 1) {
      // The clock also runs on by itself: a slow machine may take a few of these seconds.
      await page.clock.runFor(80_000);
      await expect(dialog).toBeHidden();
      await page.clock.runFor(11_000);
      await expect(dialog).toBeVisible();
      await expect(page.getByRole('button', { name: 'I am still here' })).toBeFocused();
      if (turn === 0) await expectAccessible(page);
      if (turn === 0) await press(page, 'I am still here');
      else if (turn % 2 === 0) await page.keyboard.press('Shift');
      else await page.mouse.click(500, 300);
      await expect(dialog).toBeHidden();
      await expect(page.getByLabel('16 or 17')).toBeChecked();
    }
  });

  test('60 s later everything is wiped: no way back, no trace', async ({ page }) => {
    await page.clock.install();
    await startVisit(page);
    await answerAll(page, { age: '16 or 17' });
    await page.clock.runFor(91_000);
    await expect(page.getByText(/^We will wipe your answers in [45]\d seconds, to keep them private\.$/).first()).toBeVisible();
    const fresh = page.waitForEvent('load');
    await page.clock.runFor(61_000);
    await fresh;
    await expect(heading(page)).toHaveText('Make a clay mask that suits you');
    for (let turn = 0; turn < 3; turn += 1) {
      await page.goBack();
      await expect(heading(page)).toHaveText('Make a clay mask that suits you');
    }
    await page.reload();
    await press(page, /^Start/);
    await expect(page.locator('input:checked')).toHaveCount(0);
    expect(await keptBy(page)).not.toMatch(/age-16|wish-|sting-|today-/);
  });

  test('"I need more time" makes it ten times as long', async ({ page }) => {
    await page.clock.install();
    await startVisit(page);
    await press(page, 'More');
    await press(page, 'I need more time');
    await press(page, 'Close');
    await page.clock.runFor(850_000);
    await expect(page.getByRole('alertdialog')).toBeHidden();
    await page.clock.runFor(51_000);
    await expect(page.getByRole('alertdialog')).toBeVisible();
  });

  test('the page with the code clears itself', async ({ page }) => {
    await page.clock.install();
    await orderMask(page);
    await page.clock.runFor(61_000);
    await expect(page.getByRole('alertdialog')).toBeVisible();
    const fresh = page.waitForEvent('load');
    await page.clock.runFor(61_000);
    await fresh;
    await expect(heading(page)).toHaveText('Make a clay mask that suits you');
  });

  test('Start again asks once and wipes', async ({ page }) => {
    await startVisit(page);
    await pick(page, '16 or 17');
    await press(page, 'More');
    await expectAccessible(page);
    await press(page, 'Start again');
    await press(page, 'Go on');
    await expect(page.getByLabel('16 or 17')).toBeChecked();
    await press(page, 'More');
    await press(page, 'Start again');
    const fresh = page.waitForEvent('load');
    await press(page, 'Wipe and start again');
    await fresh;
    await expect(heading(page)).toHaveText('Make a clay mask that suits you');
  });
});

test.describe('the server', () => {
  test.use({ expectedErrors: [/Failed to load resource/] });

  test('is away: no masks, answers kept, and the visit goes on by itself', async ({ page, context }) => {
    await page.clock.install();
    await startVisit(page);
    await answerAll(page);
    await context.setOffline(true);
    await press(page, 'Show my masks');
    await expect(heading(page)).toHaveText('We cannot check our list right now');
    await expectAccessible(page);
    await page.clock.runFor(11_000);
    await expect(page.getByRole('article')).toHaveCount(0);
    await context.setOffline(false);
    await page.clock.runFor(6_000);
    await expect(page.getByRole('article').first()).toBeVisible();
  });

  test('is away when a visit is wiped: the answers go at once, the document as soon as another can be had', async ({ page, context }) => {
    await page.clock.install();
    await startVisit(page);
    await pick(page, '16 or 17');
    await context.setOffline(true);
    await press(page, 'More');
    await press(page, 'Start again');
    await press(page, 'Wipe and start again');
    await expect(heading(page)).toHaveText('Make a clay mask that suits you');
    await page.goBack();
    await expect(heading(page)).toHaveText('Make a clay mask that suits you');
    await context.setOffline(false);
    const fresh = page.waitForEvent('load');
    await page.clock.runFor(6_000);
    await fresh;
    await press(page, /^Start/);
    await expect(page.locator('input:checked')).toHaveCount(0);
  });

  test('has published meanwhile: a page that nobody uses loads itself anew', async ({ page }) => {
    await page.clock.install();
    await page.goto('/kiosk');
    await page.route('**/api/health', async (route) => {
      const response = await route.fetch();
      await route.fulfill({ response, json: { ...(await response.json()), editionNo: 99 } });
    });
    // Once a touch is answered the page is alive, and so is its clock.
    await press(page, 'Your answers');
    await press(page, 'Close');
    const fresh = page.waitForEvent('load');
    await page.clock.runFor(61_000);
    await fresh;
  });

  test('took the order but its answer was lost: sent again with the same key, stored once', async ({ page }) => {
    await page.clock.install();
    await seeCautions(page);
    await tickAll(page);
    const sent: string[] = [];
    const codes: string[] = [];
    await page.route('**/api/kiosk/order', async (route) => {
      sent.push(route.request().postDataJSON().requestKey);
      const reply = await route.fetch();
      codes.push((await reply.json()).code);
      if (sent.length === 1) await route.abort('connectionreset');
      else await route.fulfill({ response: reply });
    });
    await press(page, /^Order for/);
    await expect(heading(page)).toHaveText('We cannot check our list right now');
    await expect(page.getByText('it counts once')).toBeVisible();
    await page.clock.runFor(6_000);
    await expect(heading(page)).toHaveText('Show this code at the counter');
    expect(sent).toHaveLength(2);
    expect(new Set(sent).size).toBe(1);
    expect(codes).toEqual([await codeOn(page), await codeOn(page)]);
  });

  test('lost the answer to an order: another mask is another order, and so is the same mask for the next customer', async ({ page }) => {
    const keys: string[] = [];
    const outcomes: number[] = [];
    await page.route('**/api/kiosk/order', async (route) => {
      keys.push(route.request().postDataJSON().requestKey);
      const reply = await route.fetch();
      outcomes.push(reply.status());
      if (keys.length === 1) await route.abort('connectionreset');
      else await route.fulfill({ response: reply });
    });
    await seeCautions(page);
    await tickAll(page);
    await press(page, /^Order for/);
    await expect(heading(page)).toHaveText('We cannot check our list right now');
    await page.goBack();
    await page.getByRole('article').nth(1).click();
    await press(page, 'Continue');
    await tickAll(page);
    await press(page, /^Order for/);
    await expect(heading(page)).toHaveText('Show this code at the counter');
    // The page is never loaded anew here, as when no fresh document can be had.
    await page.route('**/api/health', (route) => route.abort());
    await press(page, /^Done/);
    await press(page, /^Start/);
    await answerAll(page);
    await press(page, 'Show my masks');
    await page.getByRole('article').first().click();
    await press(page, 'Continue');
    await tickAll(page);
    await press(page, /^Order for/);
    await expect(heading(page)).toHaveText('Show this code at the counter');
    expect(new Set(keys).size).toBe(3);
    expect(outcomes).toEqual([200, 200, 200]);
  });

  test('has taken the mask off its list: said at the order, and the others are a touch away', async ({ page }) => {
    await seeCautions(page);
    await tickAll(page);
    await page.route('**/api/kiosk/order', (route) =>
      route.fulfill({ status: 409, json: { ok: false, refusal: { kind: 'no-longer-offered' } } }),
    );
    await press(page, /^Order for/);
    await expect(heading(page)).toHaveText('That mask is no longer on our list');
    await expectAccessible(page);
    await press(page, 'Look at the others');
    await expect(page.getByRole('article').first()).toBeVisible();
  });

  test('sells from another edition: the answers stay, are shown again, and count under the new one', async ({ page }) => {
    await startVisit(page);
    await answerAll(page);
    const seen = { count: 0 };
    await page.route('**/api/kiosk/masks', async (route) => {
      seen.count += 1;
      const asked = route.request().postDataJSON();
      const body = seen.count === 1 ? { ...asked, editionHash: 'f'.repeat(64) } : asked;
      await route.fulfill({ response: await route.fetch({ postData: body }) });
    });
    await press(page, 'Show my masks');
    await expect(page.getByText('We changed our list a moment ago')).toBeVisible();
    await expect(page.getByText('18 or over')).toBeVisible();
    await press(page, 'Show my masks');
    await expect(page.getByRole('article').first()).toBeVisible();
  });

  test('has a fault: a number for staff, and nothing else', async ({ page }) => {
    await startVisit(page);
    await answerAll(page);
    const problem = {
      type: 'urn:jarwright:problem:fault',
      kind: 'fault',
      title: '',
      detail: '',
      fields: [],
      faultId: '0198-42',
      isRetryable: false,
    };
    await page.route('**/api/kiosk/masks', (route) => route.fulfill({ status: 500, json: problem }));
    await press(page, 'Show my masks');
    await expect(page.getByText('Please ask our staff and show them this: 0198-42')).toBeVisible();
  });
});

test.describe('screens', () => {
  for (const [name, viewport] of [
    ['panel', PANEL],
    ['tablet', TABLET],
    ['phone', PHONE],
  ] as const) {
    test(`${name} at 200 % text: nothing is cut, nothing scrolls sideways, and the way on can be reached`, async ({ page }) => {
      await page.setViewportSize(viewport);
      await page.goto('/kiosk');
      await press(page, 'Bigger text');
      await press(page, 'Biggest');
      await press(page, 'Close');
      const look = async (name_: string | RegExp): Promise<void> => {
        await expectNothingCut(page);
        const button = page.getByRole('button', { name: name_ }).last();
        await button.scrollIntoViewIfNeeded();
        await expect(button).toBeInViewport();
      };
      await look(/^Start/);
      await press(page, /^Start/);
      for (const labels of [
        ['18 or over'],
        ['Skin that feels less dry or tight', 'Skin that feels smoother'],
        ['Sometimes'],
        ['None of these'],
      ]) {
        await look('Continue');
        await pick(page, ...labels);
        await press(page, 'Continue');
      }
      await look('Show my masks');
      await press(page, 'Show my masks');
      await expect(page.getByRole('article').first()).toBeVisible();
      await look('Continue');
      await page.getByRole('article').first().click();
      await press(page, 'Continue');
      await look('Tick what you have read first');
      await tickAll(page);
      await press(page, /^Order for/);
      await expect(heading(page)).toHaveText('Show this code at the counter');
      await look('Done');
      await expectAccessible(page);
    });
  }

  test('targets of the panel are at least 88 px high and 16 px apart', async ({ page }) => {
    await startVisit(page);
    const targets = page.locator('main label, [data-face="kiosk"]:has(main) > :last-child button');
    const boxes = await targets.evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as DOMRect));
    expect(boxes.length).toBeGreaterThanOrEqual(7);
    for (const box of boxes) expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(88);
    for (const [index, a] of boxes.entries()) {
      for (const b of boxes.slice(index + 1)) {
        const apart = Math.max(b.top - a.bottom, a.top - b.bottom, b.left - a.right, a.left - b.right);
        if (apart > -80) expect(apart).toBeGreaterThanOrEqual(16);
      }
    }
  });

  test('Back, the action and More stand where they stood, on every page and screen, in one row', async ({ page }) => {
    for (const viewport of [PANEL, { width: 800, height: 1280 }, TABLET, PHONE]) {
      await page.setViewportSize(viewport);
      const place = async (name: string | RegExp) => {
        const box = await page.getByRole('button', { name }).last().boundingBox();
        return [box?.x, box?.width].map(Math.round as (x: unknown) => number);
      };
      await startVisit(page);
      const places = [await place('Back'), await place('Continue'), await place('More')];
      await answerAll(page, { sting: 'Sometimes' });
      expect([await place('Back'), await place('Show my masks'), await place('More')]).toEqual(places);
      await press(page, 'Show my masks');
      await page.getByRole('article').first().click();
      await press(page, 'Why not the others?');
      expect([await place('Back to the masks'), await place('More')]).toEqual(places.slice(1));
      await press(page, 'Back to the masks');
      await press(page, 'Continue');
      expect([await place('Back'), await place('Tick what you have read first'), await place('More')]).toEqual(places);
    }
  });

  test('a counter that the shop does not have is said to be none', async ({ page }) => {
    await page.goto('/kiosk?counter=XX');
    await expect(heading(page)).toHaveText('No counter XX');
    await expect(page.getByRole('button')).toHaveCount(0);
    await expectAccessible(page);
  });

  test('at a counter of its own the order belongs to that counter', async ({ page }) => {
    await page.goto('/kiosk?counter=CS');
    await press(page, /^Start/);
    await answerAll(page);
    await press(page, 'Show my masks');
    await page.getByRole('article').first().click();
    await press(page, 'Continue');
    await tickAll(page);
    const asked = page.waitForRequest('**/api/kiosk/order');
    await press(page, /^Order for/);
    expect((await asked).postDataJSON().counterCode).toBe('CS');
    const fresh = page.waitForEvent('load');
    await press(page, 'Done');
    await fresh;
    expect(page.url()).toContain('counter=CS');
  });
});

test('a shop that has nothing to show yet says so, calmly', async ({ page }) => {
  const shop = await startShop({ args: ['--empty'] });
  await page.goto(`${shop.url}/kiosk`);
  await expect(heading(page)).toHaveText('This kiosk is not open yet');
  await expectAccessible(page);
  await shop.stop();
});
