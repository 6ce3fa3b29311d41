import { app, shell } from 'electron';
import log from 'electron-log/main';
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { readPaperPath } from '#main/host/paper-path.ts';
import type { Paper } from '#main/host/served-desk.ts';
import { parseOurs } from './address.ts';

/**
 * Opens a paper of ours with the computer's own reader: a copy in the folder for temporary files, written anew each time.
 * Any other address is let be. The paper's name has been made safe for files by the desk.
 */
export function openPaperAddress(
  address: string,
  readPaper: (kind: string, id: string) => Promise<Paper | null>,
): void {
  const url = parseOurs(address);
  const asked = url === null ? null : readPaperPath(url.pathname);
  if (asked === null) return;
  void readPaper(asked.kind, asked.id)
    .then(async (paper) => {
      if (paper === null) return;
      const folder = path.join(app.getPath('temp'), 'Linenfold papers');
      mkdirSync(folder, { recursive: true });
      const file = path.join(folder, path.basename(paper.name));
      writeFileSync(file, paper.bytes);
      const wrong = await shell.openPath(file);
      if (wrong !== '') log.warn(`a paper was not opened: ${wrong}`);
    })
    .catch((error: unknown) => log.error('opening a paper', error));
}
