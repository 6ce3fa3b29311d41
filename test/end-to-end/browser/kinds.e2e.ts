import { extractText, getDocumentProxy } from 'unpdf';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { KIND_CASES, pickKind, takeSteps } from './kind-steps.ts';
import {
  button,
  field,
  link,
  makeFirstWindow,
  readPrices,
  stacks,
  waitForText,
  waitForValue,
  waitUntilSaved,
  write,
} from './sheet.ts';
import { tellViolations } from './tell-violations.ts';

/** Each kind from an empty window to three prices and into the proposal. */
describe('every kind of treatment', () => {
  let program: OpenProgram;
  beforeAll(async () => {
    program = await openInBrowser();
    await makeFirstWindow(program.page, 'Greta Holm');
  });
  afterAll(async () => {
    await program.close();
  });

  it('is asked for in the words of the trade', async () => {
    const { page } = program;
    await button(page, 'Add a treatment').click();
    const dialog = page.getByRole('dialog');
    await dialog.waitFor();
    expect(await dialog.getByRole('listitem').count()).toBe(KIND_CASES.length + 1);
    expect(await tellViolations(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'hidden' });
  });

  it.each(KIND_CASES)('$name: an empty window, its measurements, three prices', async (kind) => {
    const { page } = program;
    await button(page, 'Add a window').click();
    await waitForValue(field(page, 'opening wide'), '');
    await write(page, 'window', `Place of the ${kind.name.toLowerCase()}`);
    await write(page, 'opening wide', '48 1/2');
    await write(page, 'opening high', '60');
    await write(page, 'sill from the floor', '28');
    await button(page, 'change the kind').click();
    await pickKind(page, kind.name);
    await page.getByRole('heading', { name: 'Three stacks and three prices will stand here' }).waitFor();
    await takeSteps(page, kind.steps);
    await expect.poll(() => readPrices(page)).toHaveLength(3);
    for (const price of await readPrices(page)) expect(price).toMatch(/^\$[\d,]+(\.\d\d)?$/);
    const first = stacks(page).first();
    expect(await first.locator('.readings summary').count()).toBe(kind.readings);
    for (const chip of kind.bought) await waitForText(first.locator('.orders'), chip);
    await waitForText(page.getByRole('complementary', { name: 'Working' }), kind.working);
    expect(await tellViolations(page)).toEqual([]);
    await button(page, 'Work drawing').click();
    await page
      .getByRole('dialog')
      .getByRole('img', { name: /^Work drawing/ })
      .waitFor();
    await page.keyboard.press('Escape');
    await waitUntilSaved(page);
  });

  it('stands in the proposal, each with its name and the sums of the screen', async () => {
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
    for (const words of [...KIND_CASES.map(({ name }) => `Place of the ${name.toLowerCase()}`), ...totals])
      expect(text).toContain(words);
  });
});

/** Several treatments at one window, and what a kind keeps when it becomes another. */
describe('several treatments at one window', () => {
  let program: OpenProgram;
  beforeAll(async () => {
    program = await openInBrowser();
    await makeFirstWindow(program.page, 'Hedda Moor');
  });
  afterAll(async () => {
    await program.close();
  });

  it('a valance over panels takes the return that clears them by one click', async () => {
    const { page } = program;
    await button(page, 'Add a treatment').click();
    await pickKind(page, 'Valance');
    await button(page, 'Fill in what is usual').click();
    await expect.poll(() => readPrices(page)).toHaveLength(3);
    await write(page, 'return, left', '4');
    await waitForText(page.locator('.measures'), /hangs over Panels, which stands 3½ in.*Give 5½ in/);
    await button(page, 'Take a return of 5½ in').click();
    expect(await field(page, 'return, left').inputValue()).toBe('5½');
    expect(await button(page, /Take a return/).count()).toBe(0);
    await page.getByRole('group', { name: 'Treatments' }).getByRole('button', { name: 'Panels' }).click();
    expect(await field(page, 'rod face').inputValue()).toBe('60½');
    await page.getByRole('group', { name: 'Treatments' }).getByRole('button', { name: 'Valance' }).click();
  });

  it('becomes another kind and back without losing what was chosen or measured', async () => {
    const { page } = program;
    await write(page, 'how many alike', '2');
    await write(page, 'treatment', 'Top of the window');
    await button(page, 'change the kind').click();
    await pickKind(page, 'Cornice');
    expect(await field(page, 'treatment').inputValue()).toBe('Top of the window');
    expect(await field(page, 'how many alike').inputValue()).toBe('2');
    expect(await field(page, 'face of the box').inputValue()).toBe('');
    await button(page, 'change the kind').click();
    await pickKind(page, 'Valance');
    expect(await field(page, 'return, left').inputValue()).toBe('5½');
    await page.keyboard.press('Control+z');
    await field(page, 'face of the box').waitFor();
    await page.keyboard.press('Control+z');
    await field(page, 'face, end to end').waitFor();
  });

  it('keeps what cannot be read on the sheet of a kind, and says so', async () => {
    const { page } = program;
    await write(page, 'face, end to end', '6O');
    await waitForText(page.locator('[data-name="width"]').last(), /write it as/);
    await waitUntilSaved(page);
    await page.reload();
    await page.getByRole('group', { name: 'Treatments' }).getByRole('button', { name: 'Top of the window' }).click();
    expect(await field(page, 'face, end to end').inputValue()).toBe('6O');
    await write(page, 'face, end to end', '64 1/2');
    await field(page, 'style').selectOption('gathered');
    await field(page, 'hangs from').selectOption('rod');
    await write(page, 'fullness', '2 1/2');
    await field(page, 'style').selectOption('tailored');
    expect(await page.getByLabel('rod diameter', { exact: true }).count()).toBe(0);
    await expect.poll(() => readPrices(page)).toHaveLength(3);
    await field(page, 'style').selectOption('gathered');
    expect(await field(page, 'fullness').inputValue()).toBe('2½');
    await expect.poll(() => readPrices(page)).toHaveLength(3);
  });
});
