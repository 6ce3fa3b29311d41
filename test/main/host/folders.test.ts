import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { findDataFolder, findPapersFolder } from '#main/host/folders.ts';

let home: string;
beforeEach(() => {
  home = mkdtempSync(path.join(tmpdir(), 'linenfold-home-'));
});
afterEach(() => {
  rmSync(home, { recursive: true, force: true });
});

describe('the data folder', () => {
  // Electron's documentation of app.getPath('appData') names the same three folders.
  it.each([
    ['Linux', 'linux', {}, '.config/Linenfold'],
    ['Linux with XDG_CONFIG_HOME', 'linux', { XDG_CONFIG_HOME: '/elsewhere' }, '/elsewhere/Linenfold'],
    ['macOS', 'darwin', {}, 'Library/Application Support/Linenfold'],
    ['Windows', 'win32', { APPDATA: '/roaming' }, '/roaming/Linenfold'],
    ['any system with LINENFOLD_DATA', 'darwin', { LINENFOLD_DATA: '/mine' }, '/mine'],
  ] as const)('on %s', (_name, platform, env, expected) => {
    expect(findDataFolder({ platform, home, env })).toBe(path.resolve(home, expected));
  });
});

describe('the papers folder', () => {
  it('is Documents/Linenfold where nothing says otherwise', () => {
    expect(findPapersFolder({ platform: 'linux', home, env: {} })).toBe(path.join(home, 'Documents/Linenfold'));
  });

  it('follows the name of the documents in the language of the person', () => {
    mkdirSync(path.join(home, '.config'));
    writeFileSync(
      path.join(home, '.config/user-dirs.dirs'),
      '# by xdg-user-dirs\nXDG_DOCUMENTS_DIR="$HOME/Dokumenty"\n',
    );
    expect(findPapersFolder({ platform: 'linux', home, env: {} })).toBe(path.join(home, 'Dokumenty/Linenfold'));
  });

  it('does not take the home folder for the documents', () => {
    mkdirSync(path.join(home, '.config'));
    writeFileSync(path.join(home, '.config/user-dirs.dirs'), 'XDG_DOCUMENTS_DIR="$HOME/"\n');
    expect(findPapersFolder({ platform: 'linux', home, env: {} })).toBe(path.join(home, 'Documents/Linenfold'));
  });

  it('is LINENFOLD_PAPERS where that is set', () => {
    expect(findPapersFolder({ platform: 'linux', home, env: { LINENFOLD_PAPERS: '/papers' } })).toBe('/papers');
  });
});
