import { readFile } from 'node:fs/promises';
import { simpleParser } from 'mailparser';
import { extractText, getDocumentProxy } from 'unpdf';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import {
  button,
  field,
  link,
  makeFirstWindow,
  readPrices,
  stacks,
  waitForValue,
  waitUntilSaved,
  write,
} from './sheet.ts';

/** A new user's own two-window job, from the first start to a saved PDF and the mail that carries it. */
describe('a first job of her own', () => {
  let program: OpenProgram;
  beforeAll(async () => {
    program = await openInBrowser();
  });
  afterAll(async () => {
    await program.close();
  });

  it('offers a sample household and an empty start side by side', async () => {
    const { page } = program;
    await button(page, 'New client').waitFor();
    expect(await button(page, 'Open the sample household').isVisible()).toBe(true);
  });

  it('leads from the client to a measured window with three prices', async () => {
    const { page } = program;
    await makeFirstWindow(page, 'Bea Marsh');
    const prices = await readPrices(page);
    expect(prices).toHaveLength(3);
    for (const price of prices) expect(price).toMatch(/^\$[\d,]+(\.\d\d)?$/);
    expect(await page.getByText('Example rates.').isVisible()).toBe(true);
    expect(await stacks(page).filter({ hasText: 'advised' }).count()).toBe(1);
  });

  it('makes the next window like the one before', async () => {
    const { page } = program;
    await button(page, 'Add a window').click();
    await waitForValue(field(page, 'opening wide'), '');
    await write(page, 'opening wide', '30');
    await write(page, 'opening high', '4 ft 6');
    await write(page, 'sill from the floor', '75 cm');
    await button(page, 'Fill in what is usual').click();
    await expect.poll(() => readPrices(page)).toHaveLength(3);
    expect(await field(page, 'opening high').inputValue()).toBe('54');
    expect(await field(page, 'sill from the floor').inputValue()).toBe('≈29½');
    await waitUntilSaved(page);
  });

  it('draws the proposal, with both windows and the sums of the screen', async () => {
    const { page } = program;
    await link(page, 'Make a proposal').click();
    const sums = page.getByRole('row', { name: /in all/ });
    await sums.waitFor();
    const totals = (await sums.getByRole('cell').allTextContents()).map((text) => text.trim());
    await button(page, 'Make the proposal').click();
    const open = link(page, 'Open the PDF');
    await open.waitFor();
    const address = (await open.getAttribute('href')) ?? '';
    const bytes = await page.evaluate(
      async (path) => [...new Uint8Array(await (await fetch(path)).arrayBuffer())],
      address,
    );
    const { text } = await extractText(await getDocumentProxy(new Uint8Array(bytes)), { mergePages: true });
    for (const words of ['Bea Marsh', 'Heron linen', 'Window 2', ...totals]) expect(text).toContain(words);
  });

  it('writes a mail draft with the PDF in it', async () => {
    const { page } = program;
    await button(page, 'Write the mail').click();
    await write(page, 'to', 'bea@example.com');
    await button(page, 'Write the draft').click();
    await link(page, 'Download the draft').waitFor();
    const path = (await page.locator('dialog code').first().textContent()) ?? '';
    const mail = await simpleParser(await readFile(path));
    expect(mail.headers.get('x-unsent')).toBe('1');
    expect(mail.subject).toMatch(/^Proposal /);
    expect(mail.attachments.map((each) => each.contentType)).toEqual(['application/pdf']);
    await page.keyboard.press('Escape');
  });

  it('finds client, window and proposal by one field', async () => {
    const { page } = program;
    await page.keyboard.press('Control+k');
    await page.getByRole('combobox', { name: 'Find anything' }).fill('bea');
    await page.getByRole('option', { name: /Bea Marsh client/ }).waitFor();
    await page.keyboard.press('Enter');
    await stacks(page).first().waitFor();
  });
});
