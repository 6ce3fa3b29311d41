import { app } from 'electron';
import { mkdirSync } from 'node:fs';
import path from 'node:path';

/**
 * Claims the portfolio for this process: false when another one has it, which is then asked to show its window. The lock
 * belongs to the data folder, so the folder is settled first; nothing else may run before this.
 */
export function claimOnlyInstance(): boolean {
  if (process.env.LINENFOLD_DATA) app.setPath('userData', path.resolve(process.env.LINENFOLD_DATA));
  const dataFolder = app.getPath('userData');
  mkdirSync(dataFolder, { recursive: true });
  // Chromium's own files stay apart from the portfolio.
  app.setPath('sessionData', path.join(dataFolder, 'page'));
  return app.requestSingleInstanceLock();
}
