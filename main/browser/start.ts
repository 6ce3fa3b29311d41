/**
 * Opens the browser shell: `node main/browser/start.ts [--no-open]`. Prints the address, tries to show it in a browser,
 * and serves until it is told to stop (Ctrl+C). Needs the renderer built in out/renderer.
 */
import { createRouterClient } from '@orpc/server';
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import path from 'node:path';
import type { Desk } from '#main/desk/create-desk.ts';
import { findDataFolder, findPapersFolder } from '#main/host/folders.ts';
import { openDesk } from '#main/host/open-desk.ts';
import { makeBrowserMachine } from './browser-machine.ts';
import { openBrowser } from './open-browser.ts';
import { serveBrowserShell } from './serve.ts';

const root = path.resolve(import.meta.dirname, '../..');

async function startBrowserShell(): Promise<void> {
  const rendererFolder = path.join(root, 'out', 'renderer');
  if (!existsSync(path.join(rendererFolder, 'index.html'))) {
    throw new Error('the page is not built yet: run "npm run build", or "npm start -- --browser", which does it');
  }
  const surroundings = { platform: process.platform, home: homedir(), env: process.env };
  const desk = openDesk({
    dataFolder: findDataFolder(surroundings),
    fontsFolder: null,
    cutPaperThread: null,
    machine: makeBrowserMachine(findPapersFolder(surroundings)),
    onFault: (error) => console.error(error),
  });
  const shell = await serveBrowserShell({
    desk,
    rendererFolder,
    port: readPort(process.env.LINENFOLD_PORT),
    onOpened: () => console.log(`For another browser: ${shell.readAddress()}`),
    onFault: (error) => console.error(error),
  });
  await sayTrouble(desk);
  const address = shell.readAddress();
  console.log(`Linenfold is open at ${address}`);
  console.log('Keep this terminal open; Ctrl+C ends Linenfold.');
  if (!process.argv.includes('--no-open')) openBrowser(address);

  let ending = false;
  const end = () => {
    if (ending) return;
    ending = true;
    void shell
      .close()
      .then(() => desk.close())
      .then(() => process.exit(0));
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, end);
}

/** A portfolio that cannot be opened is told here too: the page has a screen for it. */
async function sayTrouble(desk: Desk): Promise<void> {
  const { trouble } = await createRouterClient(desk.router).portfolio.readState({});
  if (trouble !== null) console.error(`${trouble.file}: ${trouble.says} ${trouble.remedy}`);
}

function readPort(text: string | undefined): number {
  if (text === undefined || text === '') return 0;
  const port = Number(text);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    throw new Error(`LINENFOLD_PORT is "${text}"; a port is a whole number from 0 to 65535`);
  }
  return port;
}

startBrowserShell().catch((error: unknown) => {
  console.error(`Linenfold cannot start: ${error instanceof Error ? error.message : String(error)}`);
  process.exit(1);
});
