import { _electron, type ElectronApplication, type Page } from 'playwright';
import { writeElectronArguments } from '../../../build/electron-runtime.mjs';
import { makeFreshFolders, type FreshFolders } from '../fresh-folders.ts';
import { watchPageFaults, type PageFaults } from '../page-faults.ts';

/** The program open in Electron, on folders of its own. */
export interface OpenElectron {
  readonly app: ElectronApplication;
  readonly page: Page;
  readonly faults: PageFaults;
  readonly folders: FreshFolders;
  /** Closes the window as a person does, waits for the end, and fails when the page reported an error. */
  close(): Promise<void>;
}

/** Launches the runtime of ELECTRON_OVERRIDE_DIST_PATH on the built program. Given folders stay after closing. */
export async function openInElectron(given?: FreshFolders): Promise<OpenElectron> {
  const folders = given ?? makeFreshFolders();
  const app = await _electron.launch({ args: writeElectronArguments(), env: { ...folders.env } });
  const page = await app.firstWindow();
  const faults = watchPageFaults(page);
  return {
    app,
    page,
    faults,
    folders,
    async close() {
      const ended = new Promise<void>((resolve) => app.once('close', () => resolve()));
      await app.evaluate(({ BrowserWindow }) => {
        for (const window of BrowserWindow.getAllWindows()) window.close();
      });
      await ended;
      if (given === undefined) folders.remove();
      faults.check();
    },
  };
}
