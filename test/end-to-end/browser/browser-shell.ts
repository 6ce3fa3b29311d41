import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { chromium, type Browser, type Page } from 'playwright';
import { makeFreshFolders, type FreshFolders } from '../fresh-folders.ts';
import { watchPageFaults, type PageFaults } from '../page-faults.ts';

const root = path.resolve(import.meta.dirname, '../../..');
const startLimit = 20_000;

/** The browser shell, running on folders of its own, with no browser yet. */
export interface RunningShell {
  readonly folders: FreshFolders;
  /** Origin, for example `http://127.0.0.1:40123`. */
  readonly origin: string;
  /** The newest first address, with a token that has not been used. */
  readFirstAddress(): string;
  /** Ends the shell as Ctrl+C does. The folders stay. */
  stop(): Promise<void>;
}

/** Starts the shell. `folders` of an earlier run make it a restart; without them a fresh pair is made. */
export async function startBrowserShell(folders: FreshFolders = makeFreshFolders()): Promise<RunningShell> {
  // Node itself and not npm: npm passes a signal to its shell only.
  const child = spawn(process.execPath, [path.join(root, 'main/browser/start.ts'), '--no-open'], {
    cwd: root,
    env: folders.env,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  child.stdout.on('data', (chunk: Buffer) => (said += chunk.toString()));
  child.stderr.on('data', (chunk: Buffer) => (said += chunk.toString()));
  const readFirstAddress = () => [...said.matchAll(/http:\/\/[^\s]+token=\S+/g)].at(-1)?.[0] ?? '';
  await waitFor(
    () => readFirstAddress() !== '',
    child,
    () => said,
  );
  return {
    folders,
    origin: new URL(readFirstAddress()).origin,
    readFirstAddress,
    async stop() {
      if (child.exitCode !== null || child.signalCode !== null) return;
      const ended = once(child, 'exit');
      child.kill('SIGTERM');
      await ended;
    },
  };
}

/** Chromium without a profile, a graphics card or the network. */
export function launchChromium(): Promise<Browser> {
  return chromium.launch({
    executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
}

/** The program open in Chromium, on folders of its own. */
export interface OpenProgram {
  readonly page: Page;
  readonly faults: PageFaults;
  readonly folders: FreshFolders;
  readonly shell: RunningShell;
  /** Closes everything, and fails when the page reported an error. The folders are removed unless they were given. */
  close(): Promise<void>;
}

export async function openInBrowser(given?: FreshFolders): Promise<OpenProgram> {
  const shell = await startBrowserShell(given);
  const browser = await launchChromium();
  const context = await browser.newContext({ viewport: { width: 1360, height: 860 } });
  const page = await context.newPage();
  const faults = watchPageFaults(page);
  await page.goto(shell.readFirstAddress());
  return {
    page,
    faults,
    folders: shell.folders,
    shell,
    async close() {
      await browser.close();
      await shell.stop();
      if (given === undefined) shell.folders.remove();
      faults.check();
    },
  };
}

async function waitFor(isDone: () => boolean, child: ChildProcess, readOutput: () => string): Promise<void> {
  const limit = performance.now() + startLimit;
  while (!isDone()) {
    if (child.exitCode !== null) throw new Error(`the shell ended with ${child.exitCode}:\n${readOutput()}`);
    if (performance.now() > limit) throw new Error(`the shell gave no address:\n${readOutput()}`);
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
}
