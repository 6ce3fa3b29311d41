import AxeBuilder from '@axe-core/playwright';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { button, stacks } from './sheet.ts';

const ROOM = path.resolve(import.meta.dirname, '../../reference/rooms/06-listed-sash-pelmet.json');
const SHEER = path.resolve(import.meta.dirname, '../../reference/rooms/04-sheer-linen-north.json');
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

describe('what the lining engine knows, on the screen', () => {
  let program: OpenProgram;
  beforeAll(async () => {
    program = await openInBrowser();
    await button(program.page, 'Open the sample household').click();
    await stacks(program.page).first().waitFor();
  });
  afterAll(async () => {
    await program.close();
  });

  async function checkAxe(): Promise<void> {
    for (const colorScheme of ['light', 'dark'] as const) {
      await program.page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      const { violations } = await new AxeBuilder({ page: program.page }).withTags(TAGS).analyze();
      expect(
        violations.map((each) => `${each.id}: ${each.nodes.map((node) => node.target.join(' ')).join(', ')}`),
      ).toEqual([]);
    }
  }

  it('one slider by keyboard, from noon to overcast, said in words; then night', async () => {
    const { page } = program;
    const sky = page.getByRole('slider', { name: 'sky, from overcast to noon sun' });
    const seen = stacks(page).first().locator('.seen');
    const titles = () => stacks(page).first().locator('.lit svg').first().getAttribute('aria-label');
    expect(await sky.getAttribute('aria-valuetext')).toBe('noon sun');
    const noon = await titles();
    await sky.press('Home');
    expect(await sky.getAttribute('aria-valuetext')).toBe('overcast');
    expect(await titles()).not.toBe(noon);
    await sky.press('ArrowRight');
    expect(await sky.inputValue()).toBe('1');
    await page.getByRole('radio', { name: 'by night' }).check({ force: true });
    expect(await sky.isDisabled()).toBe(true);
    expect(await seen.textContent()).toMatch(/^lit from the room alone; /);
    await checkAxe();
    await page.getByRole('radio', { name: 'by day' }).check({ force: true });
  });

  it('a reading opened shows value, range, what it rests on, its working, and what is assumed', async () => {
    const readings = program.page.getByRole('list', { name: 'Readings of Good' });
    expect(await readings.getByRole('listitem').count()).toBe(5);
    await readings.getByText('light', { exact: true }).click();
    const opened = readings.locator('.told');
    await opened.getByText('light with the glass').waitFor();
    const text = (await opened.textContent()) ?? '';
    expect(text).toMatch(/\d %\s*\(\d+ % to \d+ %\)/);
    expect(text).toContain('Assumed, not measured');
    expect(text).toMatch(/composed with D = /);
    await checkAxe();
  });

  it('why not another: answered, with a stop that can be insisted on and then stands on the option', async () => {
    const { page } = program;
    await page.getByLabel('heading', { exact: true }).first().selectOption('grommet');
    await button(page, /^Why not …\?/).click();
    const dialog = page.getByRole('dialog', { name: 'Why not …?' });
    await dialog.waitFor();
    await checkAxe();
    const heavy = dialog.getByRole('listitem').filter({ hasText: 'Thickly interlined' });
    expect(await heavy.textContent()).toMatch(/stop/);
    await heavy.getByRole('button', { name: /Take it for Good all the same/ }).click();
    await dialog.waitFor({ state: 'hidden' });
    await stacks(page)
      .first()
      .getByText(/offered because it was asked for/)
      .waitFor();
    await button(page, /^Change what goes behind/).click();
    await page
      .getByRole('dialog')
      .getByText(/kept as your wish, and written on the proposal/)
      .waitFor();
    await page.keyboard.press('Escape');
  });

  it('a wish of the room changes what is chosen, and says so', async () => {
    const { page } = program;
    await page.getByLabel('privacy', { exact: true }).selectOption('night');
    await page.getByLabel('purse', { exact: true }).selectOption('careful');
    await page
      .getByText(/By night|Drawn by night/)
      .first()
      .waitFor({ state: 'attached' });
  });

  it('two treatments of one opening: each drawn or open, and the window together', async () => {
    const { page } = program;
    await page.evaluate(() => {
      window.location.hash = '#/clients';
    });
    await page.locator('input[type=file]').first().setInputFiles(ROOM);
    const together = page.getByRole('region', { name: 'All together at Sash' });
    await together.waitFor();
    const light = () => together.locator('dd').first().textContent();
    const drawn = await light();
    const curtain = together.getByRole('switch', { name: /Curtains/ });
    await curtain.press('Space');
    expect(await curtain.isChecked()).toBe(false);
    expect(await light()).toMatch(/as the bare glass/);
    expect(await light()).not.toBe(drawn);
    expect(await together.textContent()).toMatch(/Cornice stays as it is/);
    await checkAxe();
    await page.setViewportSize({ width: 640, height: 480 });
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wider).toBeLessThanOrEqual(0);
    await page.setViewportSize({ width: 1360, height: 860 });
  });

  it('a sheer is one option, and by day it alone is drawn', async () => {
    const { page } = program;
    await page.evaluate(() => {
      window.location.hash = '#/clients';
    });
    await page.locator('input[type=file]').first().setInputFiles(SHEER);
    const together = page.getByRole('region', { name: 'All together at North window' });
    await together.waitFor();
    await together.getByRole('button', { name: 'as by day: the sheer alone' }).click();
    expect(await together.getByRole('switch', { name: /Drapery/ }).isChecked()).toBe(false);
    expect(await together.getByRole('switch', { name: /Sheer/ }).isChecked()).toBe(true);
    await together.getByRole('button', { name: 'as by night: all drawn' }).click();
    expect(await together.getByRole('switch', { name: /Drapery/ }).isChecked()).toBe(true);
    await page
      .getByRole('button', { name: /^Sheer/ })
      .first()
      .click();
    await page.getByRole('article', { name: 'Better: Unlined sheer' }).getByText('The same as Good').waitFor();
    await page
      .getByRole('article', { name: 'Best: Unlined sheer' })
      .getByText(/Nothing more is offered\./)
      .waitFor();
    await checkAxe();
  });
});
