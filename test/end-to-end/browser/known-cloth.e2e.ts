import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Locator, Page } from 'playwright';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { button, field, stacks, waitForText, waitForValue, waitUntilSaved, write } from './sheet.ts';

/** What a decorator knows of her cloth: from the starter book to a measured value, into the readings of a window. */
describe('cloth that knows itself', () => {
  let program: OpenProgram;
  let project = '';
  beforeAll(async () => {
    program = await openInBrowser();
    await button(program.page, 'Open the sample household').click();
    await stacks(program.page).first().waitFor();
    project = new URL(program.page.url()).hash;
  });
  afterAll(async () => {
    await program.close();
  });

  const goTo = (hash: string) =>
    program.page.evaluate((to) => {
      window.location.hash = to;
    }, hash);
  const daylight = (page: Page): Locator => page.getByRole('group', { name: 'Daylight', exact: true });
  const share = (page: Page, label: string): Locator => daylight(page).getByLabel(label, { exact: true });
  async function writeShare(page: Page, label: string, text: string): Promise<void> {
    await share(page, label).fill(text);
    await share(page, label).blur();
  }

  it('the starter book says of every value where it comes from', async () => {
    const { page } = program;
    await goTo('#/cloth');
    await button(page, 'Velvet').click();
    const row = page.getByRole('dialog').getByRole('row', { name: /the sun's heat/ });
    await waitForText(row, /passes 7 %, sends back 32 %.*typical, assumed: between closed dark and closed medium/s);
    await page.keyboard.press('Escape');
  });

  it('makes a generic lining hers in its place, and its row in the book goes', async () => {
    const { page } = program;
    await button(page, 'Standard lining, white').click();
    await button(page, 'Make it mine, in its place').click();
    await waitForValue(field(page, 'weight'), '140 g/m2');
    await page.getByText('What it does').click();
    await waitForValue(share(page, 'passes'), '35 %');
    expect(await page.getByLabel('daylight passed, where it comes from').inputValue()).toBe('assumed');
    expect(await button(page, 'Standard lining, white').count()).toBe(1);
  });

  it('asks which yard is meant, with what each would weigh', async () => {
    const { page } = program;
    await write(page, 'weight', '5 oz');
    await page.getByText(/"5 oz" could mean a running or a square yard/).waitFor();
    // 5 oz a running yard at 54 in is 113 g/m2, a square yard 170 (common practice).
    await button(page, /a running yard, 54 in wide: 113 g/).waitFor();
    await button(page, /a square yard: 170 g/).click();
    await waitForValue(field(page, 'weight'), '5 oz/yd2');
  });

  it('more light than there is stays as typed, with what would be right', async () => {
    const { page } = program;
    await writeShare(page, 'sends back, room side', '70');
    await daylight(page)
      .getByText(/make 105 %, more than the light there is; write 65 % or less, or lower the other first/)
      .waitFor();
    await writeShare(page, 'passes', '25');
    await waitForValue(share(page, 'sends back, room side'), '70 %');
    expect(await share(page, 'sends back, room side').getAttribute('aria-invalid')).toBe('false');
    expect(await page.getByLabel('daylight passed, where it comes from').inputValue()).toBe('');
  });

  it('an emptied value shows the typical one, and says so', async () => {
    const { page } = program;
    await write(page, 'thickness', '');
    expect(await field(page, 'thickness').getAttribute('placeholder')).toBe('0.3');
    await waitForText(page.locator('.told', { has: field(page, 'thickness') }), /typical, assumed/);
    await write(page, 'thickness', '0.4 mm');
    await waitForValue(field(page, 'thickness'), '0.4');
    await page.getByLabel('thickness, where it comes from').selectOption({ label: "supplier's" });
  });

  it('spectra are pasted, and a wrong number is named', async () => {
    const { page } = program;
    await page.getByText('Measured spectra').click();
    const numbers = Array.from({ length: 16 }, () => '0.2');
    await write(page, 'spectrum, passes', numbers.join(' ').replace(/0\.2 0\.2$/, '2 0.2'));
    await page.getByText(/the 15th number, at 680 nm, is 2: more than all the light/).waitFor();
    await write(page, 'spectrum, passes', numbers.join('\n'));
    await page.getByText('The other is not used without it.').waitFor();
    await write(page, 'spectrum, sends back', numbers.map(() => '65 %').join(' '));
    await waitForValue(field(page, 'spectrum, sends back'), numbers.map(() => '0.65').join(' '));
  });

  it('two readings at a window give what it passes, and typed mistakes are answered', async () => {
    const { page } = program;
    await button(page, 'Measure it at a window').click();
    const dialog = page.getByRole('dialog', { name: /Light through/ });
    await page.getByText(/Never look into the sun/).waitFor();
    await write(page, 'pair 1, bare', '10,000');
    await write(page, 'pair 1, with the sample', '30000');
    await dialog.getByText(/30000 lux is more than the 10000 without the sample; read both again/).waitFor();
    expect(await button(page, 'Put it in').isDisabled()).toBe(true);
    await write(page, 'pair 1, with the sample', '3000');
    await dialog.getByLabel("the window's glass").selectOption({ label: 'single' });
    // 0.3 × (1 − 0.1474 × 0.7) = 0.269 behind single glass; worked by hand.
    await waitForText(dialog.getByRole('status'), /Passes\s+27 %, between 23 % and 31 %/);
    await button(page, 'Put it in').click();
    await waitForValue(page.getByLabel('daylight passed, where it comes from'), 'measured-at-home');
    expect(await share(page, 'passes').inputValue()).toMatch(/^26\.9/);
    expect(await field(page, 'give or take').inputValue()).toMatch(/^3\.\d+ %$/);
    await page.keyboard.press('Control+z');
    await waitForValue(share(page, 'passes'), '25 %');
    await page.keyboard.press('Control+Shift+z');
    await waitForValue(page.getByLabel('daylight passed, where it comes from'), 'measured-at-home');
  });

  it('a certificate is named with its test, and the caution stands beside it', async () => {
    const { page } = program;
    await write(page, 'certificate', 'Invented 12');
    await page.getByText('A certificate counts with its test: name both.').waitFor();
    await write(page, 'given under the test', 'NFPA 701, test 1');
    await page.getByText('A certificate counts with its test: name both.').waitFor({ state: 'detached' });
    await page.getByText(/the whole made-up treatment has to comply, and the local authority decides/).waitFor();
    await page.getByLabel('a needle').selectOption({ label: 'holes show' });
    await waitUntilSaved(page);
    await button(page, 'Done').click();
  });

  it('is there after a reload, in the window that uses it, and in the job file', async () => {
    const { page } = program;
    await page.reload();
    await page.getByRole('heading', { level: 1, name: 'Cloth' }).waitFor();
    await button(page, 'Standard lining, white').click();
    await page.getByText('What it does').click();
    await waitForValue(field(page, 'given under the test'), 'NFPA 701, test 1');
    await page.keyboard.press('Escape');
    await goTo(project);
    await stacks(page).first().waitFor();
    const [download] = await Promise.all([page.waitForEvent('download'), button(page, 'Export as a job file').click()]);
    const job = JSON.parse(await readFile(await download.path(), 'utf8')) as WireJob;
    expect(job.cloth?.find(({ id }) => id === 'std-white')).toMatchObject({
      weight: '5 oz/yd2',
      thickness: 0.4,
      needle: 'shows',
      flame: { test: 'NFPA 701, test 1', certificate: 'Invented 12' },
      sources: { transmittance: 'measured-at-home', thickness: 'supplier' },
    });
  });
});
