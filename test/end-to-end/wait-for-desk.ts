import type { Page } from 'playwright';

/** Waits until the page has asked the desk something and was answered (renderer/state/client.ts shows it). */
export async function waitForDesk(page: Page): Promise<void> {
  await page.locator('html[data-desk="answered"]').waitFor({ state: 'attached' });
}
