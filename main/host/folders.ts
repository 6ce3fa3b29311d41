import { readFileSync } from 'node:fs';
import path from 'node:path';

/** Where things lie on this computer, when no Electron is there to say it. */

/** What the answer depends on, given so that it can be tested for every system. */
export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly home: string;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/**
 * The folder that holds `portfolio.sqlite`: LINENFOLD_DATA, or `Linenfold` in the system's folder for a person's program
 * data. It is the same folder that Electron calls userData, so that both shells show one portfolio.
 */
export function findDataFolder({ platform, home, env }: Surroundings): string {
  if (env.LINENFOLD_DATA) return path.resolve(env.LINENFOLD_DATA);
  if (platform === 'win32') return path.join(env.APPDATA || path.join(home, 'AppData', 'Roaming'), 'Linenfold');
  if (platform === 'darwin') return path.join(home, 'Library', 'Application Support', 'Linenfold');
  return path.join(env.XDG_CONFIG_HOME || path.join(home, '.config'), 'Linenfold');
}

/** The folder where papers are written: LINENFOLD_PAPERS, or `Linenfold` in the person's documents. */
export function findPapersFolder(surroundings: Surroundings, documents = findDocuments(surroundings)): string {
  const { env } = surroundings;
  return env.LINENFOLD_PAPERS ? path.resolve(env.LINENFOLD_PAPERS) : path.join(documents, 'Linenfold');
}

/** The person's documents. Linux names them in user-dirs.dirs (freedesktop.org, xdg-user-dirs), in the person's language. */
function findDocuments({ platform, home, env }: Surroundings): string {
  const usual = path.join(home, 'Documents');
  if (platform === 'win32' || platform === 'darwin') return usual;
  const named = readUserDirs(path.join(env.XDG_CONFIG_HOME || path.join(home, '.config'), 'user-dirs.dirs'));
  if (named === null) return usual;
  const folder = named.replace(/^\$HOME(?=\/|$)/, home);
  // user-dirs names the home folder itself for a folder that the person does without.
  return path.isAbsolute(folder) && path.relative(folder, home) !== '' ? folder : usual;
}

function readUserDirs(file: string): string | null {
  try {
    return /^XDG_DOCUMENTS_DIR="(.*)"$/m.exec(readFileSync(file, 'utf8'))?.[1] ?? null;
  } catch {
    // Most computers without a desktop have no such file.
    return null;
  }
}
