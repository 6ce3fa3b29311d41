/**
 * The README's pictures, made from the invented sample household: the worksheet in a browser, a page of its proposal by
 * pdftoppm (poppler-utils). Writes build/pictures/. Needs the page built (`npm run build`) and Chromium.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { launchChromium, startBrowserShell } from './browser/browser-shell.ts';
import { waitForDesk } from './wait-for-desk.ts';
import { compileIfStale } from '../../build/compile.mjs';

const root = path.resolve(import.meta.dirname, '../..');
const folder = path.join(root, 'build', 'pictures');
mkdirSync(folder, { recursive: true });
if (!compileIfStale({ quiet: true })) process.exit(1);

/** The worksheet as it opens, and the whole proposal beside it. */
async function drawWorksheet(): Promise<void> {
  const shell = await startBrowserShell();
  const browser = await launchChromium();
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 1180 } });
    await page.goto(shell.readFirstAddress());
    await waitForDesk(page);
    await page.getByRole('button', { name: 'Open the sample household' }).click();
    await page.getByRole('heading', { name: 'Working' }).waitFor();
    await page.waitForFunction(() => document.fonts.status === 'loaded');
    await page.screenshot({ path: path.join(folder, 'worksheet.png') });
  } finally {
    await browser.close();
    await shell.stop();
  }
}

/** The page of the first window with its three options: the summary before it can take more than one. */
function drawProposalPage(): void {
  const work = mkdtempSync(path.join(os.tmpdir(), 'linenfold-pictures-'));
  try {
    const job = path.join(root, 'test', 'reference', 'sample.job.json');
    const pdf = path.join(work, 'proposal.pdf');
    execFileSync(process.execPath, [path.join(root, 'main/command/job.ts'), 'propose', job, '--out', pdf], {
      cwd: root,
    });
    const pages = execFileSync('pdftotext', [pdf, '-'], { encoding: 'utf8' }).split('\f');
    const page = String(1 + pages.findIndex((text) => /\b(window|piece) 1 of \d+/u.test(text)));
    execFileSync('pdftoppm', ['-png', '-r', '96', '-f', page, '-l', page, '-singlefile', pdf, path.join(work, 'page')]);
    writeFileSync(path.join(folder, 'proposal.png'), readFileSync(path.join(work, 'page.png')));
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

await drawWorksheet();
drawProposalPage();
console.log('build/pictures: worksheet.png, proposal.png');
