import { BrowserWindow, dialog, ipcMain, screen } from 'electron';
import log from 'electron-log/main';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { isPage, pageAddress } from './address.ts';
import { channels } from './channels.ts';
import { safePreferences } from './guard.ts';
import { leastSize, parseWindowPlace, placeWindow, type WindowPlace } from './window-place.ts';

/** How long the page may take to save what is typed before the person is asked. */
const saveLimit = 3_000;

/** Opens the one window, at the place where it last was. `dataFolder` keeps that place in `window.json`. */
export function openWindow(preload: string, dataFolder: string): BrowserWindow {
  const placeFile = path.join(dataFolder, 'window.json');
  const { maximized, ...place } = placeWindow(
    readPlace(placeFile),
    screen.getAllDisplays().map((display) => display.workArea),
  );
  const window = new BrowserWindow({
    ...place,
    minWidth: leastSize.width,
    minHeight: leastSize.height,
    show: false,
    title: 'Linenfold',
    webPreferences: { ...safePreferences, preload },
  });
  if (maximized) window.maximize();
  window.once('ready-to-show', () => window.show());
  window.on('page-title-updated', (event) => event.preventDefault());
  reloadOnceWhenGone(window);
  closeWhenSaved(window, placeFile);
  void window.loadURL(pageAddress);
  return window;
}

/** Whether a message comes from the page itself, in the window's main frame, and not from anything held in it. */
export function isFromPage(event: Electron.IpcMainEvent, window: BrowserWindow | null): boolean {
  const frame = event.senderFrame;
  return (
    window !== null &&
    !window.isDestroyed() &&
    frame !== null &&
    event.sender === window.webContents &&
    frame === window.webContents.mainFrame &&
    isPage(frame.url)
  );
}

/** Delays closing until the page says that everything typed is saved; after the limit the person decides. */
function closeWhenSaved(window: BrowserWindow, placeFile: string): void {
  let asking = false;
  let watched = false;

  const letGo = () => {
    ipcMain.off(channels.closeReady, onReady);
    ipcMain.off(channels.closeWatched, onWatched);
    writePlace(window, placeFile);
    window.destroy();
  };
  const onReady = (event: Electron.IpcMainEvent) => {
    if (asking && isFromPage(event, window)) letGo();
  };
  const onWatched = (event: Electron.IpcMainEvent) => {
    if (isFromPage(event, window)) watched = true;
  };
  const onLimit = async () => {
    if (window.isDestroyed()) return;
    const { response } = await dialog.showMessageBox(window, {
      type: 'warning',
      message: 'Linenfold could not make sure that everything typed is saved.',
      detail: 'Keep the window open to look, or close it and lose what was typed last.',
      buttons: ['Keep open', 'Close anyway'],
      defaultId: 0,
      cancelId: 0,
    });
    asking = false;
    if (response === 1 && !window.isDestroyed()) letGo();
  };

  ipcMain.on(channels.closeReady, onReady);
  ipcMain.on(channels.closeWatched, onWatched);
  // A page that is being loaded holds nothing yet.
  window.webContents.on('did-navigate', () => (watched = false));
  window.on('close', (event) => {
    event.preventDefault();
    if (asking) return;
    // A page that has not started, or is gone, has nothing to save.
    if (!watched || window.webContents.isCrashed()) return letGo();
    asking = true;
    window.webContents.send(channels.closeAsked);
    setTimeout(() => {
      if (asking) void onLimit();
    }, saveLimit);
  });
}

function reloadOnceWhenGone(window: BrowserWindow): void {
  let reloaded = false;
  window.webContents.on('render-process-gone', (_event, details) => {
    log.error(`the page ended: ${details.reason}`);
    if (reloaded || details.reason === 'clean-exit') return;
    reloaded = true;
    window.webContents.reload();
  });
}

function readPlace(file: string): WindowPlace | null {
  try {
    return parseWindowPlace(readFileSync(file, 'utf8'));
  } catch {
    // The first start has no such file; a place that cannot be read is not worth a word.
    return null;
  }
}

function writePlace(window: BrowserWindow, file: string): void {
  const place: WindowPlace = { ...window.getNormalBounds(), maximized: window.isMaximized() };
  try {
    writeFileSync(file, JSON.stringify(place));
  } catch (error) {
    log.warn('the place of the window was not kept:', error);
  }
}
