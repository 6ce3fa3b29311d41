import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { button, field, makeFirstWindow, stacks, waitUntilSaved, write } from './sheet.ts';
import { tellViolations } from './tell-violations.ts';

describe('the order of treatments, windows and rooms', () => {
  let program: OpenProgram;
  beforeAll(async () => {
    program = await openInBrowser();
    await makeFirstWindow(program.page, 'Ivo Lark');
  });
  afterAll(async () => {
    await program.close();
  });

  const tabs = (page: Page) => page.getByRole('group', { name: 'Treatments' }).getByRole('button').allTextContents();
  const add = async (page: Page, kind: string): Promise<void> => {
    await button(page, 'Add a treatment').click();
    await page
      .getByRole('dialog')
      .getByRole('button', { name: new RegExp(`^${kind}`) })
      .click();
    await page.getByRole('dialog').waitFor({ state: 'hidden' });
  };

  it('a valance stands nearest the room, a shade nearest the glass', async () => {
    const { page } = program;
    await add(page, 'Roman shade');
    await add(page, 'Valance');
    await expect.poll(() => tabs(page)).toEqual(['Valance', 'Panels', 'Roman shade']);
  });

  it('by keyboard one goes towards the glass, undo brings it back, and it stays after a reload', async () => {
    const { page } = program;
    await page.getByRole('group', { name: 'Treatments' }).getByRole('button', { name: 'Panels' }).click();
    await button(page, 'Towards the glass').focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => tabs(page)).toEqual(['Valance', 'Roman shade', 'Panels']);
    expect(await button(page, 'Towards the glass').isDisabled()).toBe(true);
    await page.keyboard.press('Control+z');
    await expect.poll(() => tabs(page)).toEqual(['Valance', 'Panels', 'Roman shade']);
    await page.keyboard.press('Control+y');
    await waitUntilSaved(page);
    await page.reload();
    await expect.poll(() => tabs(page)).toEqual(['Valance', 'Roman shade', 'Panels']);
    expect(await tellViolations(page)).toEqual([]);
  });

  it('a window moves before its neighbour', async () => {
    const { page } = program;
    const names = () => page.locator('.rooms [role="button"]').evaluateAll((all) => all.map((each) => each.ariaLabel));
    await button(page, 'Add a window').click();
    await button(page, 'Move before Window').click();
    await expect.poll(async () => (await names())[0] ?? '').toMatch(/^Window 2/);
    await page.keyboard.press('Control+z');
    await expect.poll(async () => (await names())[0] ?? '').toMatch(/^Window(?! 2)/);
  });

  it('a bed stands in the room without a window: its platform alone is asked', async () => {
    const { page } = program;
    await button(page, 'Add a bed').click();
    await field(page, 'platform wide').waitFor();
    for (const label of ['opening wide', 'opening high', 'sill from the floor', 'glass'])
      expect(await field(page, label).count(), label).toBe(0);
    await write(page, 'platform wide', '60');
    await write(page, 'platform long', '80');
    await write(page, 'drop to the hem', '14');
    await field(page, 'cloth').selectOption({ label: 'Heron linen' });
    await stacks(page).first().waitFor();
    expect(await tellViolations(page)).toEqual([]);
  });
});
