import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import {
  button,
  field,
  makeFirstWindow,
  readPrices,
  stacks,
  waitForText,
  waitForValue,
  waitUntilSaved,
  write,
} from './sheet.ts';

describe('what is typed into a worksheet', () => {
  let program: OpenProgram;
  beforeAll(async () => {
    program = await openInBrowser();
    await makeFirstWindow(program.page, 'Cora Lind');
    await waitUntilSaved(program.page);
  });
  afterAll(async () => {
    await program.close();
  });

  it('reprices all three while she types', async () => {
    const { page } = program;
    const before = await readPrices(page);
    await field(page, 'rod face').fill('120');
    const after = await readPrices(page);
    expect(after).toHaveLength(3);
    after.forEach((price, index) => expect(price).not.toBe(before[index]));
    await page.keyboard.press('Control+z');
    await expect.poll(() => readPrices(page)).toEqual(before);
  });

  it('keeps what cannot be read, says so with an example, and never guesses', async () => {
    const { page } = program;
    const prices = await readPrices(page);
    await write(page, 'rod face', '6O 1/2');
    const told = page.locator('[data-name="rodWidth"]');
    await waitForText(told, /write it as 84 1\/2/);
    expect(await field(page, 'rod face').inputValue()).toBe('6O 1/2');
    expect(await field(page, 'rod face').getAttribute('aria-invalid')).toBe('true');
    await waitForText(told, /60½ still counts/);
    expect(await readPrices(page)).toEqual(prices);
    await waitUntilSaved(page);
    await page.reload();
    await waitForValue(field(page, 'rod face'), '6O 1/2');
    await write(page, 'rod face', '60 1/2');
    await waitForValue(field(page, 'rod face'), '60½');
    expect(await field(page, 'rod face').getAttribute('aria-invalid')).toBe('false');
  });

  it('tells an unlikely length at once and leaves it as written', async () => {
    const { page } = program;
    await write(page, 'finished length', '24');
    await waitForText(page.locator('[data-name="finishedLength"]'), /above the sill: the window shows below it/);
    expect(await field(page, 'finished length').inputValue()).toBe('24');
    await page.keyboard.press('Control+z');
    await waitForValue(field(page, 'finished length'), '91½');
  });

  it('tells an impossible one, and leaves only that window without a price', async () => {
    const { page } = program;
    await write(page, 'sill from the floor', '60');
    await waitForText(page.locator('[data-name="height"]'), /above the ceiling at 96 in/);
    expect(await stacks(page).count()).toBe(0);
    await page.keyboard.press('Control+z');
    await stacks(page).first().waitFor();
  });

  it('undoes and redoes across screens, adding and removing too', async () => {
    const { page } = program;
    await button(page, 'Remove this window').click();
    await page.getByText('has no window yet').waitFor();
    await page.keyboard.press('Control+z');
    await waitForValue(field(page, 'rod face'), '60½');
    await page.keyboard.press('Control+Shift+z');
    await page.getByText('has no window yet').waitFor();
    await page.getByRole('link', { name: 'Practice' }).click();
    await field(page, "your name or your firm's").waitFor();
    await page.keyboard.press('Control+z');
    await page.getByText(/^Undone: Window removed/).waitFor();
    await page.goBack();
    await waitForValue(field(page, 'rod face'), '60½');
  });

  it('loses nothing that was typed just before the window went away', async () => {
    const { page } = program;
    await waitUntilSaved(page);
    await field(page, 'notes').fill('a note that was never left');
    // Gone within the pause after which a field is sent: only the browser's own storage has it.
    await page.goto('about:blank');
    await page.goto(program.shell.origin);
    await page.getByRole('link', { name: 'First project' }).click();
    await waitForValue(field(page, 'notes'), 'a note that was never left');
  });

  it('changes what goes behind, and lets the program choose again', async () => {
    const { page } = program;
    const good = stacks(page).first();
    const title = (await good.getByRole('heading').textContent()) ?? '';
    await button(page, 'Change what goes behind for Good').click();
    await button(page, 'Unlined').click();
    await waitForText(good.getByRole('heading'), /Unlined/);
    await button(page, 'Add a layer').click();
    await button(page, 'Add a layer').click();
    await field(page, 'Layer 1').selectOption('inter-heavy');
    await waitForText(good, /interlining/);
    await button(page, 'Let the program choose').click();
    await button(page, 'Done').click();
    await waitForText(good.getByRole('heading'), title);
  });
});
