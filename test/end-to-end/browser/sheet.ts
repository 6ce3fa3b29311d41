import { expect } from 'vitest';
import type { Locator, Page } from 'playwright';

/** A field of the worksheet or of a slip, by its label. */
export function field(page: Page, label: string): Locator {
  return page.getByLabel(label, { exact: true }).first();
}

export function button(page: Page, name: string | RegExp): Locator {
  return page.getByRole('button', { name }).first();
}

export function link(page: Page, name: string | RegExp): Locator {
  return page.getByRole('link', { name }).first();
}

/** Writes into a field and leaves it, as a person does. */
export async function write(page: Page, label: string, text: string): Promise<void> {
  await field(page, label).fill(text);
  await field(page, label).blur();
}

/** Waits until the head says that everything is saved. */
export async function waitUntilSaved(page: Page): Promise<void> {
  await page
    .getByRole('status')
    .filter({ hasText: /^saved / })
    .waitFor();
}

/** Waits until a locator holds this text. */
export async function waitForText(locator: Locator, text: string | RegExp): Promise<void> {
  await expect.poll(async () => (await locator.textContent()) ?? '', { timeout: 10_000 }).toMatch(text);
}

export async function waitForValue(locator: Locator, value: string): Promise<void> {
  await expect.poll(() => locator.inputValue(), { timeout: 10_000 }).toBe(value);
}

/** From first start to a worksheet with one measured window, a cloth, and example rates: three prices. */
export async function makeFirstWindow(page: Page, client: string): Promise<void> {
  await button(page, 'New client').click();
  await write(page, 'name', client);
  await button(page, 'Go on to the first room').click();
  await field(page, 'used as').selectOption('bedroom');
  await write(page, 'ceiling', `8' 0"`);
  await write(page, 'opening wide', '48 1/2');
  await write(page, 'opening high', '60');
  await write(page, 'sill from the floor', '28');
  await button(page, 'Draw it and go on').click();
  await button(page, 'Fill in what is usual').click();
  await button(page, 'Add a new cloth').click();
  await write(page, 'What is it called?', 'Heron linen');
  await button(page, 'Add it').click();
  await write(page, 'what it costs you', '36');
  await button(page, 'Done').click();
  await button(page, 'Use the example rates').click();
  await stacks(page).first().waitFor();
}

/** The three columns. */
export function stacks(page: Page): Locator {
  return page.getByRole('region', { name: 'Three stacks, three prices' }).getByRole('article');
}

/** The three prices as shown, left to right. */
export async function readPrices(page: Page): Promise<string[]> {
  const texts = await stacks(page).locator('.price strong').allTextContents();
  return texts.map((text) => text.trim());
}
