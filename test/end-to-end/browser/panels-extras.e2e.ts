import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { button, field, makeFirstWindow, readPrices, stacks, waitForText, waitForValue, write } from './sheet.ts';
import { tellViolations } from './tell-violations.ts';

/** What only some panels have. Figures worked by hand beside each. */
describe('panels that ask more', () => {
  let program: OpenProgram;
  beforeAll(async () => {
    program = await openInBrowser();
    await makeFirstWindow(program.page, 'Ines Brook');
  });
  afterAll(async () => {
    await program.close();
  });

  it('finds the length from the fixing, asked by a drawing', async () => {
    const { page } = program;
    await button(page, 'Find the length from the fixing').click();
    await page.getByRole('img', { name: /The fixing is the eye of the ring/ }).waitFor();
    await write(page, 'fixing, left', '92 1/4');
    await write(page, 'fixing, middle', '92');
    await write(page, 'heading below it', '1/2');
    await write(page, 'off the floor by', '1/2');
    // The shortest, 92, less 1/2 to the heading, less 1/2 off the floor.
    await waitForText(page.getByLabel('finished length', { exact: true }), /^91$/);
    await field(page, 'hem at').selectOption('sill');
    await write(page, 'off the sill by', '1/2');
    // The sill is 28 from the floor.
    await waitForText(page.getByLabel('finished length', { exact: true }), /^63$/);
    expect(await tellViolations(page)).toEqual([]);
    await button(page, 'Write the length itself instead').click();
    await waitForValue(field(page, 'finished length'), '91½');
  });

  it('goes round a bay', async () => {
    const { page } = program;
    await button(page, 'It goes round a bay').click();
    await write(page, 'run one', '24');
    await write(page, 'run two', '60');
    await write(page, 'run three', '24');
    await write(page, 'turn after one, °', '90');
    await write(page, 'turn after two, °', '90');
    await write(page, 'wall to rod', '4');
    // 108 less 4 x tan 45 at each of four run ends.
    await waitForText(page.getByLabel('rod face, round the bay'), /^92$/);
    await button(page, 'Straight rod instead').click();
    await waitForValue(field(page, 'rod face'), '60½');
  });

  it('takes bands on and off, and buys their cloth', async () => {
    const { page } = program;
    await button(page, 'Add a band').click();
    await waitForText(stacks(page).first().locator('.orders'), /band/);
    await field(page, 'along').selectOption('hem');
    await waitForText(stacks(page).first().locator('.orders'), /hem/);
    expect(await tellViolations(page)).toEqual([]);
    await button(page, 'Take this band off 1').click();
    await expect.poll(() => stacks(page).first().locator('.orders').textContent()).not.toMatch(/band/);
  });

  it('shows the near-whole case with its saving, and takes it only by a click', async () => {
    const { page } = program;
    // 79 + 2 x 3 1/2 + 3 1/2 = 89 1/2; x 2.5 / 54 = 4.14: five widths, and four still make 2.28.
    await write(page, 'rod face', '79');
    const first = stacks(page).first();
    await waitForText(first, /One width fewer would still hang well and saves \$/);
    const before = await readPrices(page);
    await first.getByRole('button', { name: /^Take 4 widths/ }).click();
    await expect.poll(() => field(page, 'widths each, instead').inputValue()).toBe('2');
    const after = await readPrices(page);
    expect(after).not.toEqual(before);
    await page.keyboard.press('Control+z');
    await expect.poll(() => readPrices(page)).toEqual(before);
  });
});
