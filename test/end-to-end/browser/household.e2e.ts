import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { button, link, stacks, waitForText } from './sheet.ts';

const household = path.resolve(import.meta.dirname, '../../../main/desk/sample-household.json');

describe('the sample household and job files', () => {
  let program: OpenProgram;
  beforeAll(async () => {
    program = await openInBrowser();
  });
  afterAll(async () => {
    await program.close();
  });

  it('is marked as a sample, and one click removes it', async () => {
    const { page } = program;
    await button(page, 'Open the sample household').click();
    await stacks(page).first().waitFor();
    await page.getByText('sample, invented').waitFor();
    await link(page, 'Clients').click();
    await button(page, 'Remove the sample').click();
    await button(page, 'Open the sample household').waitFor();
  });

  it('tells every fault of a job file, with path and remedy', async () => {
    const { page, faults } = program;
    faults.allow(/422/);
    const broken = readFileSync(household, 'utf8')
      .replace('"units": "in"', '"units": "ell"')
      .replace('"rooms"', '"roms"');
    await page
      .getByLabel('Import a job file')
      .setInputFiles({ name: 'broken.json', mimeType: 'application/json', buffer: Buffer.from(broken) });
    const told = page.getByRole('alert').filter({ hasText: 'broken.json was not imported' });
    await told.waitFor();
    await waitForText(told, /units/);
    await waitForText(told, /did you mean rooms\?/);
  });

  it('imports a whole job, and hands it out again', async () => {
    const { page } = program;
    await page.getByLabel('Import a job file').setInputFiles(household);
    await stacks(page).first().waitFor();
    expect(await page.getByText('sample, invented').count()).toBe(0);
    const download = page.waitForEvent('download');
    await button(page, 'Export as a job file').click();
    const file = await (await download).path();
    const exported = JSON.parse(readFileSync(file, 'utf8')) as { linenfold: number; rooms: unknown[] };
    expect(exported.linenfold).toBe(1);
    expect(exported.rooms).toHaveLength(
      (JSON.parse(readFileSync(household, 'utf8')) as { rooms: unknown[] }).rooms.length,
    );
  });

  it('marks the number that a line of the working explains, and the other way round', async () => {
    const { page } = program;
    const step = page
      .getByRole('complementary')
      .getByRole('listitem')
      .filter({ hasText: 'width with returns and overlap' });
    await step.hover();
    await expect.poll(() => page.locator('.measures .marked').count()).toBe(4);
    await page.getByLabel('rod face', { exact: true }).focus();
    await expect.poll(() => step.getAttribute('class')).toMatch(/marked/);
  });
});
