import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Locator } from 'playwright';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { button, field, waitForText, waitForValue, write } from './sheet.ts';
import { tellViolations } from './tell-violations.ts';

/** An invented room: a shade in one window and panels in the next, of one patterned cloth. */
const room = {
  ...{ linenfold: 1, units: 'in', currency: 'USD', client: { name: 'Ines Brook' }, priceBook: 'example' },
  cloth: [
    {
      ...{ id: 'face', role: 'face', name: 'Heron medallion', width: 54, price: '36.00/yd' },
      ...{ repeat: { vertical: 27, horizontal: 13.5 }, content: { cotton: 100 }, weight: '7 oz/yd2' },
    },
  ],
  rooms: [
    {
      ...{ name: 'Library', use: 'living', ceiling: 108 },
      openings: [
        {
          ...{ name: 'East window', width: 40, height: 54, sill: 30 },
          treatments: [
            {
              ...{ name: 'Shade', kind: 'roman-shade', style: 'flat', face: 'face', return: 0 },
              ...{ mount: { where: 'wall', above: 0 }, size: { basis: 'finished', width: 44, length: 58 } },
            },
          ],
        },
        {
          ...{ name: 'Garden door', width: 60, height: 80, sill: 0 },
          treatments: [
            {
              ...{ name: 'Panels', kind: 'panels', heading: 'pinch-pleat', arrangement: 'pair', face: 'face' },
              ...{ rodWidth: 80, finishedLength: 85, return: 3.5, overlap: 3.5, mount: { where: 'wall', above: 6 } },
            },
          ],
        },
      ],
    },
  ],
};

/** One level a room (common practice). Figures worked by hand beside each. */
describe('a motif at one height in two windows', () => {
  let program: OpenProgram;
  beforeAll(async () => {
    program = await openInBrowser();
    const buffer = Buffer.from(JSON.stringify(room));
    await program.page
      .getByLabel('Import a job file')
      .setInputFiles({ name: 'library.job.json', mimeType: 'application/json', buffer });
    await program.page.getByRole('heading', { name: 'Working' }).waitFor();
  });
  afterAll(async () => {
    await program.close();
  });

  function elevation(): Locator {
    return program.page.getByRole('group', { name: /^Elevation to scale/ }).first();
  }
  function working(): Locator {
    return program.page.getByRole('complementary', { name: 'Working' });
  }

  it('the shade is placed by a level, and the elevation draws it', async () => {
    const { page } = program;
    await button(page, 'Place the pattern').click();
    await write(page, 'motif above floor', '60');
    // The board is at 30 + 54 = 84: the motif 24 below it.
    await waitForText(working(), /motif below the top\s*24/);
    await expect
      .poll(() => elevation().getAttribute('aria-label'))
      .toMatch(/motifs at one level, 60 in above the floor/);
    expect(await tellViolations(page)).toEqual([]);
  });

  it('the panels of the next window follow it without a figure of their own', async () => {
    const { page } = program;
    await button(page, /^Garden door/).click();
    await button(page, 'Place the pattern').click();
    await waitForValue(field(page, 'motif above floor'), '');
    // The heading is at 80 + 6 = 86: 26 below it.
    await waitForText(working(), /motif below the top\s*26/);
  });

  it('and follow it when it moves', async () => {
    const { page } = program;
    await button(page, /^East window/).click();
    await write(page, 'motif above floor', '62');
    await waitForText(working(), /motif below the top\s*22/);
    await button(page, /^Garden door/).click();
    await waitForText(working(), /motif below the top\s*24/);
  });
});
