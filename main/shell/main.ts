/**
 * The Electron shell: one window, one host process, and nothing else. What can be done without Electron is done in
 * main/host, which the browser shell uses too.
 */
import { app, ipcMain, Menu, session, type BrowserWindow } from 'electron';
import log from 'electron-log/main';
import path from 'node:path';
import { findPapersFolder } from '#main/host/folders.ts';
import { claimOnlyInstance } from './only-instance.ts';
import { channels, type HostState } from './channels.ts';
import { denyPermissions, guardAllPages } from './guard.ts';
import { HostProcess } from './host-process.ts';
import { actForDesk } from './machine-acts.ts';
import { buildMenu } from './menu.ts';
import { openPaperAddress } from './open-paper.ts';
import { declareScheme, serveScheme } from './serve-scheme.ts';
import { isFromPage, openWindow } from './window.ts';

if (claimOnlyInstance()) startShell();
else app.quit();

function startShell(): void {
  const dataFolder = app.getPath('userData');
  const documents = app.getPath('documents');
  const home = app.getPath('home');
  const papersFolder = findPapersFolder(
    { platform: process.platform, home, env: process.env },
    // Without a folder for documents the system names the home folder itself.
    documents === home ? path.join(home, 'Documents') : documents,
  );
  const out = path.dirname(import.meta.dirname);
  let window: BrowserWindow | null = null;

  log.transports.file.resolvePathFn = () => path.join(dataFolder, 'logs', 'main.log');
  log.transports.console.level = app.isPackaged ? false : 'warn';
  log.errorHandler.startCatching({ showDialog: false });

  const host = new HostProcess(
    path.join(out, 'main', 'host.cjs'),
    {
      dataFolder,
      papersFolder,
      fontsFolder: path.join(out, 'fonts'),
      cutPaperThread: path.join(out, 'main', 'cut-paper-thread.cjs'),
    },
    {
      stateChanged: (state: HostState) => window?.webContents.send(channels.hostState, state),
      asked: (ask) => actForDesk(ask, papersFolder),
    },
  );

  declareScheme();
  guardAllPages((address) => openPaperAddress(address, (kind, id) => host.readPaper(kind, id)));

  ipcMain.on(channels.port, (event) => {
    const port = event.ports[0];
    if (port === undefined) return;
    if (isFromPage(event, window)) host.connect(port);
    else port.close();
  });

  app.on('second-instance', () => {
    if (window === null) return;
    if (window.isMinimized()) window.restore();
    window.focus();
  });
  app.on('window-all-closed', () => app.quit());

  let hostClosed = false;
  app.on('will-quit', (event) => {
    if (hostClosed) return;
    event.preventDefault();
    void host.close().then(() => {
      hostClosed = true;
      app.quit();
    });
  });

  void app.whenReady().then(() => {
    Menu.setApplicationMenu(buildMenu());
    denyPermissions(session.defaultSession);
    serveScheme(session.defaultSession, path.join(out, 'renderer'), (kind, id) => host.readPaper(kind, id));
    host.start();
    window = openWindow(path.join(out, 'preload', 'preload.cjs'), dataFolder);
    window.on('closed', () => (window = null));
    // A page that is loaded after the host's last change has to hear of it all the same.
    window.webContents.on('did-finish-load', () => window?.webContents.send(channels.hostState, host.state));
  });
}
