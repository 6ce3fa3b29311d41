import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { waitForDesk } from '../wait-for-desk.ts';
import { openInElectron, type OpenElectron } from './electron-shell.ts';

describe('the cut plan in Electron', () => {
  let program: OpenElectron;
  beforeAll(async () => {
    program = await openInElectron();
    await waitForDesk(program.page);
  });
  afterAll(() => program.close());

  it("is laid in a worker of the page's own, served by the program's scheme", async () => {
    const { page } = program;
    await page.getByRole('button', { name: 'Open the sample household' }).click();
    await page.getByRole('link', { name: 'Cut plan', exact: true }).click();
    const cloth = page.getByRole('region', { name: 'Larch stripe', exact: true });
    await cloth.getByRole('button', { name: /^East window 1:/ }).waitFor();
    await expect
      .poll(() => cloth.textContent())
      .toMatch(/no layout of these cuts takes less|No layout takes less than/);
  });

  it('is drawn on paper by the built thread of the host process', async () => {
    const { page } = program;
    await page.getByRole('button', { name: 'Cut plan to print' }).click();
    const ready = page.getByRole('link', { name: /^open the (\d+ pages|page)$/ });
    await ready.waitFor({ timeout: 60_000 });
    const address = (await ready.getAttribute('href')) ?? '';
    expect(await page.evaluate(async (from) => (await (await fetch(from)).text()).slice(0, 5), address)).toBe('%PDF-');
  });
});
