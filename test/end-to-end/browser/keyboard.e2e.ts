import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { field, stacks, waitForValue, waitUntilSaved } from './sheet.ts';

/** What has the focus, by its label or its words. */
function readFocus(page: Page): Promise<string> {
  return page.evaluate(() => {
    const element = document.activeElement;
    if (element instanceof HTMLInputElement || element instanceof HTMLSelectElement)
      return element.labels?.[0]?.textContent.trim() ?? element.ariaLabel ?? '';
    return (element?.getAttribute('aria-label') ?? element?.textContent.trim() ?? '').slice(0, 80);
  });
}

/** Tab until something of that name has the focus; fails after so many that a person would have given up. */
async function tabTo(page: Page, name: string | RegExp): Promise<void> {
  const wanted = typeof name === 'string' ? (text: string) => text === name : (text: string) => name.test(text);
  const passed: string[] = [];
  for (let press = 0; press < 60; press += 1) {
    await page.keyboard.press('Tab');
    const focused = await readFocus(page);
    if (wanted(focused)) return;
    passed.push(focused);
  }
  throw new Error(`Tab never came to ${String(name)}, but to ${passed.join(' | ')}`);
}

describe('with the keyboard alone', () => {
  let program: OpenProgram;
  beforeAll(async () => {
    program = await openInBrowser();
  });
  afterAll(async () => {
    await program.close();
  });

  it('a client, a room and a window are written down', async () => {
    const { page } = program;
    await page.getByRole('button', { name: 'New client' }).waitFor();
    await tabTo(page, 'New client');
    await page.keyboard.press('Enter');
    await page.keyboard.type('Dora Vale');
    await page.keyboard.press('Enter');
    await field(page, 'used as').waitFor();
    await tabTo(page, 'opening wide');
    await page.keyboard.type('60');
    await page.keyboard.press('Tab');
    await page.keyboard.type('54');
    await page.keyboard.press('Tab');
    await page.keyboard.type('30');
    await page.keyboard.press('Enter');
    await field(page, 'from the left wall').waitFor();
    await waitForValue(field(page, 'sill from the floor'), '30');
  });

  it('Tab goes down the sheet in measuring order, and Enter too', async () => {
    const { page } = program;
    await field(page, 'opening wide').focus();
    const order = ['opening high', 'sill from the floor', 'from the left wall', 'glass'];
    for (const name of order) {
      await page.keyboard.press('Tab');
      expect(await readFocus(page)).toBe(name);
    }
    await field(page, 'rod above frame').focus();
    for (const [text, next] of [
      ['4', 'rod face'],
      ['72', 'finished length'],
      ['87 1/2', 'return, left'],
      ['3 1/2', 'return, right'],
      ['3 1/2', 'overlap, in all'],
      ['3 1/2', 'fullness'],
    ] as const) {
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
      expect(await readFocus(page)).toBe(next);
    }
    await waitUntilSaved(page);
  });

  it('a cloth is added, and three stacks stand there', async () => {
    const { page } = program;
    await tabTo(page, 'Add a new cloth');
    await page.keyboard.press('Enter');
    await page.keyboard.type('Vale check');
    await page.keyboard.press('Enter');
    await expect.poll(() => readFocus(page)).toBe('width');
    await page.keyboard.press('Escape');
    await expect.poll(() => readFocus(page)).toBe('cloth');
    await stacks(page).first().waitFor();
  });

  it('a valance is added and measured', async () => {
    const { page } = program;
    await page.getByRole('link', { name: 'Skip to the sheet' }).focus();
    await page.keyboard.press('Enter');
    await tabTo(page, 'Add a treatment');
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(() => readFocus(page)).toBe('style');
    for (const next of ['hung', 'top above frame', 'face, end to end']) {
      await page.keyboard.press('Enter');
      expect(await readFocus(page)).toBe(next);
    }
    for (const [text, next] of [
      ['76', 'return, left'],
      ['5 1/2', 'return, right'],
      ['', 'finished length'],
      ['16', 'board depth'],
    ] as const) {
      if (text !== '') await page.keyboard.type(text);
      await page.keyboard.press('Enter');
      expect(await readFocus(page)).toBe(next);
    }
    await stacks(page).first().waitFor();
    await waitUntilSaved(page);
  });

  it('a window is chosen on the elevation, and the focus is seen', async () => {
    const { page } = program;
    await page.getByRole('link', { name: 'Skip to the sheet' }).focus();
    await page.keyboard.press('Enter');
    await tabTo(page, /^Window/);
    await page.keyboard.press('Enter');
    const outlined = await page.evaluate(() => document.activeElement?.matches(':focus-visible') ?? false);
    expect(outlined).toBe(true);
  });
});
