import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { button, field, link, stacks, waitForText, waitForValue, waitUntilSaved, write } from './sheet.ts';

/** What has the focus: its label, else its words. Waits for it, because screens read from the desk first. */
async function expectFocus(page: Page, name: string): Promise<void> {
  const read = () =>
    page.evaluate(() => {
      const element = document.activeElement;
      if (element instanceof HTMLInputElement || element instanceof HTMLSelectElement)
        return element.labels?.[0]?.textContent.trim() ?? '';
      return element === document.body ? 'the body' : (element?.textContent.trim() ?? '');
    });
  await expect.poll(read, { timeout: 10_000 }).toBe(name);
}

/** By how much the page is wider than its window, in CSS pixels. */
function readOverflow(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
}

/** A first visit that is interrupted, mistyped and reconsidered: nothing typed is lost, and the focus goes on. */
describe('nothing typed is lost', () => {
  let program: OpenProgram;
  /** Address of the worksheet. */
  let sheet = '';
  beforeAll(async () => {
    program = await openInBrowser();
  });
  afterAll(async () => {
    await program.close();
  });

  it('a new client half written is there again after the window was closed', async () => {
    const { page } = program;
    await button(page, 'New client').click();
    await write(page, 'name', 'Cora Finch');
    await write(page, 'phone', '555 0100');
    await page.reload();
    await waitForValue(field(page, 'name'), 'Cora Finch');
    await waitForValue(field(page, 'phone'), '555 0100');
    await button(page, 'Go on to the first room').click();
    await expectFocus(page, 'used as');
  });

  it('typing south in the list of facings picks south', async () => {
    const { page } = program;
    await field(page, 'faces').focus();
    await page.keyboard.type('south');
    await waitForValue(field(page, 'faces'), 'S');
  });

  it('what the room wishes is asked on the slip: to be hidden by night, and a careful purse', async () => {
    const { page } = program;
    await field(page, 'privacy').selectOption('night');
    await field(page, 'purse').selectOption('careful');
  });

  it('the focus goes to the next field of the new window, and after the usual values to the cloth', async () => {
    const { page } = program;
    await write(page, 'ceiling', '96');
    await write(page, 'opening wide', '48');
    await write(page, 'opening high', '60');
    await write(page, 'sill from the floor', '28');
    await button(page, 'Draw it and go on').click();
    await waitForValue(page.getByLabel('privacy', { exact: true }), 'night');
    await waitForValue(page.getByLabel('purse', { exact: true }), 'careful');
    await expectFocus(page, 'from the left wall');
    await button(page, 'Fill in what is usual').click();
    await expectFocus(page, 'cloth');
  });

  it('a price in another currency is refused in words, and the cloth is marked', async () => {
    const { page } = program;
    await button(page, 'Add a new cloth').click();
    await write(page, 'What is it called?', 'Heron linen');
    await button(page, 'Add it').click();
    await write(page, 'what it costs you', '£42');
    await waitForText(page.locator('dialog'), /not in USD, and nothing is converted/);
    await button(page, 'Done').click();
    await expectFocus(page, 'cloth');
    await waitForText(page.locator('.picker'), / wide ✕ a field of it cannot be read/);
    await button(page, 'Use the example rates').click();
    await expectFocus(page, 'Make a proposal');
  });

  it('a text that cannot be read stands above the button of the proposal, with a link to its field', async () => {
    const { page } = program;
    await waitUntilSaved(page);
    sheet = page.url();
    await link(page, 'Make a proposal').click();
    const told = page.getByRole('alert', { name: 'To be mended first' });
    await waitForText(told, /Heron linen: what it costs you\s+"£42" cannot be read/);
    await told.getByRole('link').click();
    await expectFocus(page, 'what it costs you');
    await page.keyboard.type('36');
    await waitForValue(field(page, 'what it costs you'), '36');
    await button(page, 'Done').click();
    await waitUntilSaved(page);
    await page.goBack();
    await button(page, 'Make the proposal').waitFor();
    expect(await told.count()).toBe(0);
  });

  it('made twice with nothing changed it is the same paper, with a copy for the decorator', async () => {
    const { page } = program;
    await button(page, 'Make the proposal').click();
    await expectFocus(page, 'Open the PDF');
    await button(page, 'Make the proposal').click();
    await page.getByText(/^Nothing has changed since: proposal \S+ stands as it is\./).waitFor();
    const copy = await link(page, "Decorator's copy").getAttribute('href');
    const type = await page.evaluate(async (path) => (await fetch(path)).headers.get('content-type'), copy ?? '');
    expect(type).toContain('application/pdf');
  });

  it('a mail half written is there again, until it is given up', async () => {
    const { page } = program;
    await button(page, 'Write the mail').click();
    await write(page, 'text', 'Dear Cora, see page two.');
    await page.reload();
    await button(page, 'Write the mail').click();
    await waitForValue(field(page, 'text'), 'Dear Cora, see page two.');
    await button(page, 'Not now').click();
    await button(page, 'Write the mail').click();
    expect(await field(page, 'text').inputValue()).toMatch(/^Dear Cora,\n/);
    await page.keyboard.press('Escape');
  });

  it('her own rates outlive the example rates, and a bare number takes the unit of its field', async () => {
    const { page } = program;
    await link(page, 'Practice').click();
    await link(page, 'Price book').click();
    await button(page, 'Begin my own, empty').click();
    const rod = page.getByLabel(/^rod, /).first();
    await rod.fill('9');
    await rod.blur();
    await waitForValue(rod, '9/ft');
    await button(page, 'Use the example rates instead').click();
    await expectFocus(page, 'Back to my own rates');
    await button(page, 'Back to my own rates').click();
    await waitForValue(rod, '9/ft');
    await waitUntilSaved(page);
  });

  it('the worksheet says that cloth is sold at cost while no markup is set', async () => {
    const { page } = program;
    await page.goto(sheet);
    await stacks(page).first().waitFor();
    await page.getByText(/Cloth is sold at cost: no markup is set/).waitFor();
    await button(page, 'Use the example rates').click();
    await page.getByText('Your own are kept.').waitFor();
    await field(page, 'priced in').selectOption('GBP');
    await page.getByText(/Amounts in the price book and of cloth are not converted/).waitFor();
    await waitUntilSaved(page);
  });

  it('long names make no page wider than its window', async () => {
    const { page } = program;
    const long = 'The window over the half landing of the back stairs, beside the linen cupboard';
    await write(page, 'window', long);
    expect(await page.locator('.worksheet .title').getAttribute('title')).toBe(long);
    await page.goto(sheet.replace(/#.*/, '#/practice'));
    await write(page, 'best is called', 'Interlined by hand, with weighted hems and every seam of the lining felled');
    await waitUntilSaved(page);
    await page.goto(sheet);
    await stacks(page).first().waitFor();
    await page.getByLabel('Working of').selectOption({ index: 2 });
    expect(await readOverflow(page)).toBeLessThanOrEqual(0);
    await page.setViewportSize({ width: 390, height: 844 });
    await expect.poll(() => readOverflow(page)).toBeLessThanOrEqual(0);
    await page.setViewportSize({ width: 1360, height: 860 });
  });

  it('generic linings are found by name', async () => {
    const { page } = program;
    await page.keyboard.press('Control+k');
    await page.getByRole('combobox', { name: 'Find anything' }).fill('dim-out');
    await page.getByRole('option', { name: /Dim-out lining, white generic lining/ }).waitFor();
    await page.keyboard.press('Escape');
  });
});
