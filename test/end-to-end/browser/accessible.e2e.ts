import AxeBuilder from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { button, link, stacks } from './sheet.ts';

/** WCAG 2.2 AA by axe-core's rules, in both colour schemes. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const SCHEMES = ['light', 'dark'] as const;

const PLACES: readonly (readonly [name: string, hash: string, heading: string])[] = [
  ['clients', '#/clients', 'Clients'],
  ['proposals', '#/proposals', 'Proposals'],
  ['cloth', '#/cloth', 'Cloth'],
  ['workroom', '#/workroom', 'Workroom'],
  ['money', '#/money', 'Money'],
  ['letterhead and words', '#/practice/paper', 'Practice'],
  ['allowances', '#/practice/allowances', 'Practice'],
  ['settings by kind', '#/practice/kinds', 'Practice'],
  ['price book', '#/practice/rates', 'Practice'],
];

describe('every place by axe-core', () => {
  let program: OpenProgram;
  let project = '';
  beforeAll(async () => {
    program = await openInBrowser();
    await button(program.page, 'Open the sample household').waitFor();
  });
  afterAll(async () => {
    await program.close();
  });

  async function check(): Promise<void> {
    for (const colorScheme of SCHEMES) {
      await program.page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      // The pages of a PDF are the browser's own viewer's.
      const { violations } = await new AxeBuilder({ page: program.page }).withTags(TAGS).exclude('iframe').analyze();
      const told = violations.map(
        (each) => `${colorScheme} ${each.id}: ${each.nodes.map((node) => node.target.join(' ')).join(', ')}`,
      );
      expect(told).toEqual([]);
    }
  }

  it('first start', check);

  it('worksheet', async () => {
    await button(program.page, 'Open the sample household').click();
    await stacks(program.page).first().waitFor();
    project = new URL(program.page.url()).hash;
    await check();
  });

  it('worksheet at 200 % zoom: nothing scrolls sideways', async () => {
    await program.page.setViewportSize({ width: 640, height: 480 });
    const wider = await program.page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wider).toBeLessThanOrEqual(0);
    await check();
    await program.page.setViewportSize({ width: 1360, height: 860 });
  });

  it('what goes behind', async () => {
    await button(program.page, /Change what goes behind/).click();
    await program.page.getByRole('dialog').waitFor();
    await check();
    await program.page.keyboard.press('Escape');
  });

  it('search', async () => {
    await program.page.keyboard.press('Control+k');
    await program.page.getByRole('listbox', { name: 'Found' }).getByRole('option').first().waitFor();
    await check();
    await program.page.keyboard.press('Escape');
  });

  it('proposal', async () => {
    await link(program.page, 'Make a proposal').click();
    await button(program.page, 'Make the proposal').waitFor();
    await check();
  });

  it.each(PLACES)('%s', async (_name, hash, heading) => {
    await program.page.evaluate((to) => {
      window.location.hash = to;
    }, hash);
    await program.page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor();
    await check();
  });

  it('a page of the starter book, the whole of a cloth, and a light meter', async () => {
    const { page } = program;
    await page.evaluate(() => {
      window.location.hash = '#/cloth';
    });
    await button(page, 'Soft blackout, white').click();
    await button(page, 'Make it mine, in its place').waitFor();
    await check();
    await button(page, 'Make it mine, in its place').click();
    await page.getByText('What it does').click();
    await page.getByText('Measured spectra').click();
    await check();
    await button(page, 'Measure it at a window').click();
    await page.getByLabel('pair 1, bare').fill('dark');
    await page.getByLabel('pair 1, bare').blur();
    await page.getByText(/"dark" is not a reading/).waitFor();
    await check();
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
  });

  it('goes back to the window where it was', async () => {
    await program.page.evaluate((to) => {
      window.location.hash = to;
    }, project);
    await stacks(program.page).first().waitFor();
  });
});
