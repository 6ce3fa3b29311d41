import { BrowserWindow, dialog, shell } from 'electron';
import path from 'node:path';
import type { MachineAsk } from '#main/host/messages.ts';

/** Does what the desk asks of the machine. The answer is the chosen path where one was asked for, null when cancelled. */
export async function actForDesk(ask: MachineAsk, papersFolder: string): Promise<string | null> {
  const filters = (ask.filters ?? []).map(({ name, extensions }) => ({ name, extensions: [...extensions] }));
  const owner = BrowserWindow.getFocusedWindow() ?? BrowserWindow.getAllWindows()[0];
  switch (ask.act) {
    case 'chooseSavePath': {
      const options = { defaultPath: path.join(papersFolder, ask.suggestedName ?? ''), filters };
      const chosen = owner ? await dialog.showSaveDialog(owner, options) : await dialog.showSaveDialog(options);
      return chosen.canceled || !chosen.filePath ? null : chosen.filePath;
    }
    case 'chooseOpenPath': {
      const options = { filters, properties: ['openFile' as const] };
      const chosen = owner ? await dialog.showOpenDialog(owner, options) : await dialog.showOpenDialog(options);
      return chosen.canceled ? null : (chosen.filePaths[0] ?? null);
    }
    case 'openPath': {
      const fault = await shell.openPath(readPath(ask));
      if (fault !== '') throw new Error(fault);
      return null;
    }
    case 'showInFolder':
      shell.showItemInFolder(readPath(ask));
      return null;
  }
}

function readPath(ask: MachineAsk): string {
  if (ask.path === undefined || !path.isAbsolute(ask.path)) throw new Error(`${ask.act} needs an absolute path`);
  return ask.path;
}
