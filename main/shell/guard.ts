import { app, type Session, type WebContents } from 'electron';
import { isPage } from './address.ts';

/**
 * `openPaper` is handed every address that a page wants in another window: it opens papers of ours and nothing else.
 * What no page may do, whatever is in it: leave, open windows of others, hold other pages, ask for the computer's devices.
 */
export function guardAllPages(openPaper: (address: string) => void): void {
  app.on('web-contents-created', (_event, contents) => guardPage(contents, openPaper));
}

function guardPage(contents: WebContents, openPaper: (address: string) => void): void {
  contents.on('will-navigate', (event, address) => {
    if (!isPage(address)) event.preventDefault();
  });
  contents.on('will-redirect', (event) => event.preventDefault());
  contents.on('will-attach-webview', (event) => event.preventDefault());
  // No window is ever opened; a paper of ours goes to the computer's own reader instead.
  contents.setWindowOpenHandler(({ url }) => {
    openPaper(url);
    return { action: 'deny' };
  });
}

/** How every window is made: the page is an ordinary web page in Chromium's sandbox. */
export const safePreferences = {
  contextIsolation: true,
  sandbox: true,
  nodeIntegration: false,
  nodeIntegrationInWorker: false,
  nodeIntegrationInSubFrames: false,
  webviewTag: false,
  webSecurity: true,
  // Chromium would fetch dictionaries from the network.
  spellcheck: false,
} as const;

/** Refuses every permission but writing text to the clipboard, which "copy details" needs. */
export function denyPermissions(session: Session): void {
  const allowed = new Set(['clipboard-sanitized-write']);
  session.setPermissionRequestHandler((contents, permission, answer) =>
    answer(allowed.has(permission) && isPage(contents.getURL())),
  );
  session.setPermissionCheckHandler((contents, permission) =>
    contents !== null ? allowed.has(permission) && isPage(contents.getURL()) : false,
  );
  session.setDevicePermissionHandler(() => false);
}
