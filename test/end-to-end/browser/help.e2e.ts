import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { tellViolations } from './tell-violations.ts';
import { button, stacks } from './sheet.ts';

describe('the help, by keyboard', () => {
  let program: OpenProgram;
  beforeAll(async () => {
    program = await openInBrowser();
    await button(program.page, 'Open the sample household').waitFor();
  });
  afterAll(async () => {
    await program.close();
  });

  const help = (page: Page) => page.getByRole('dialog', { name: 'Help' });

  it('F1 opens it on the very first screen, and Escape closes it', async () => {
    const { page } = program;
    await page.keyboard.press('F1');
    await help(page).getByRole('heading', { level: 2, name: 'Measuring' }).waitFor();
    await page.keyboard.press('Escape');
    // Taken away, not only closed: until then F1 still belongs to the one that closes.
    await help(page).waitFor({ state: 'detached' });
  });

  it('words are found, and Enter reads where they stand', async () => {
    const { page } = program;
    await page.keyboard.press('F1');
    const search = help(page).getByRole('combobox', { name: 'Find in the help' });
    await expect.poll(() => search.evaluate((field) => field === document.activeElement)).toBe(true);
    await page.keyboard.type('narrowest');
    await help(page).getByRole('option').first().waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.evaluate(() => document.activeElement?.id ?? '')).toMatch(/^help-/);
    await page.keyboard.press('Escape');
  });

  it('the question mark of a worksheet opens the section of its kind, drawn and worked', async () => {
    const { page } = program;
    await button(page, 'Open the sample household').click();
    await stacks(page).first().waitFor();
    await button(page, 'Help about panels').focus();
    await page.keyboard.press('Enter');
    await help(page).getByRole('heading', { level: 2, name: 'Panels' }).waitFor();
    await expect.poll(() => help(page).locator('article svg').count()).toBeGreaterThan(10);
    await help(page).getByText('Pinch pleat', { exact: true }).waitFor();
  });

  it('counts in centimetres where that is asked', async () => {
    const { page } = program;
    await help(page).getByRole('button', { name: 'centimetres' }).click();
    await help(page).getByText('20 cm', { exact: true }).first().waitFor();
    await help(page).getByRole('button', { name: 'inches' }).click();
  });

  it.each(['Roman shade', 'What goes behind'])('is read by everybody: %s', async (section) => {
    const { page } = program;
    await help(page).getByRole('button', { name: section, exact: true }).click();
    await help(page).getByRole('heading', { level: 2, name: section }).waitFor();
    expect(await tellViolations(page)).toEqual([]);
  });

  it('closed, the focus is back at the question mark', async () => {
    const { page } = program;
    await page.keyboard.press('Escape');
    await help(page).waitFor({ state: 'hidden' });
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe('Help about panels');
  });

  it('the search that reaches everything reaches the help', async () => {
    const { page } = program;
    await page.keyboard.press('Control+k');
    await page.keyboard.type('job files');
    await page.keyboard.press('Enter');
    await help(page).getByRole('heading', { level: 2, name: 'Job files' }).waitFor();
    await page.keyboard.press('Escape');
  });
});
