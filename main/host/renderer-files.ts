import { readFile } from 'node:fs/promises';
import path from 'node:path';

const typeOfEnding: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.ttf': 'font/ttf',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
};

export interface RendererFile {
  /** Media type. */
  readonly type: string;
  readonly bytes: Uint8Array;
}

/**
 * One file of the built renderer, or null when there is none. `urlPath` is the path part of an address as it arrived,
 * `/` meaning the page itself. A path that leads out of `folder`, or a file of an ending that is not served, is none.
 */
export async function readRendererFile(folder: string, urlPath: string): Promise<RendererFile | null> {
  let wanted: string;
  try {
    wanted = decodeURIComponent(urlPath);
  } catch {
    // A broken percent sequence names no file of ours.
    return null;
  }
  if (wanted.includes('\0') || wanted.includes('\\')) return null;
  const file = path.resolve(folder, `.${wanted === '/' ? '/index.html' : wanted}`);
  if (!file.startsWith(path.resolve(folder) + path.sep)) return null;
  const type = typeOfEnding[path.extname(file)];
  if (type === undefined) return null;
  try {
    return { type, bytes: await readFile(file) };
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'ENOENT' || code === 'EISDIR' || code === 'ENOTDIR') return null;
    throw error;
  }
}
