import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { makeFreshFolders, type FreshFolders } from '../fresh-folders.ts';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';
import { button, waitForText } from './sheet.ts';

/** A portfolio that cannot be opened: a screen that names the file and the way out, and leaves the file alone. */
describe('a portfolio that is damaged', () => {
  let folders: FreshFolders | null = null;
  let program: OpenProgram | null = null;
  afterEach(async () => {
    await program?.close();
    folders?.remove();
  });

  it('is named with its remedy, is not touched, and is tried again on asking', async () => {
    folders = makeFreshFolders();
    mkdirSync(folders.data, { recursive: true });
    const file = path.join(folders.data, 'portfolio.sqlite');
    const damage = 'SQLite format 3\0'.padEnd(8192, 'not a page of a portfolio ');
    writeFileSync(file, damage);
    program = await openInBrowser(folders);
    const { page } = program;
    const alert = page.getByRole('alert');
    await alert.waitFor();
    await waitForText(alert, /The portfolio is damaged/);
    await waitForText(alert, /What to do\./);
    await waitForText(alert, /portfolio\.sqlite/);
    expect(readFileSync(file, 'latin1')).toBe(damage);
    // Mended outside: put aside, so that a new one can be begun.
    renameSync(file, path.join(folders.data, 'put-aside.sqlite'));
    await button(page, 'Try again').click();
    await button(page, 'New client').waitFor();
  });
});
