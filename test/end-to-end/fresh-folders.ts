import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

/** A data folder and a papers folder of a test's own, which two launches one after the other may share. */
export interface FreshFolders {
  readonly data: string;
  readonly papers: string;
  /** The environment for a program that is to use them. */
  readonly env: Readonly<Record<string, string>>;
  remove(): void;
}

export function makeFreshFolders(): FreshFolders {
  const folder = mkdtempSync(path.join(tmpdir(), 'linenfold-test-'));
  const data = path.join(folder, 'data');
  const papers = path.join(folder, 'papers');
  const env: Record<string, string> = { LINENFOLD_DATA: data, LINENFOLD_PAPERS: papers };
  for (const [name, value] of Object.entries(process.env)) {
    if (value !== undefined && !name.startsWith('LINENFOLD_')) env[name] = value;
  }
  return { data, papers, env, remove: () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }) };
}
