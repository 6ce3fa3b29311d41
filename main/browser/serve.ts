/**
 * The browser shell: the same page and the same desk as in Electron, over HTTP on this computer's own loopback address.
 * Any page of any site can send requests to 127.0.0.1, so each request has to carry our Host, no foreign Origin, and a
 * key that only a token printed on the terminal gives.
 */
import { RPCHandler, BodyLimitPlugin } from '@orpc/server/node';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { writeDisposition, writeSafeHeaders } from '#main/host/page-safety.ts';
import { readPaperPath } from '#main/host/paper-path.ts';
import { readRendererFile } from '#main/host/renderer-files.ts';
import type { ServedDesk } from '#main/host/served-desk.ts';
import { makeKeyring, type Keyring } from './keyring.ts';

/** Loopback only: never a name, which could be made to mean another address. */
const loopback = '127.0.0.1';
/** Photographs are scaled down before they are sent; 64 MiB leaves room for a large job file. */
const largestBody = 64 * 1024 * 1024;

export interface BrowserShell {
  /** The first address, with the token that works once. It changes after each use. */
  readAddress(): string;
  readonly port: number;
  /** Stops serving. The desk stays open: whoever opened it closes it. */
  close(): Promise<void>;
}

export interface BrowserShellSettings {
  readonly desk: ServedDesk;
  /** Absolute path of the built renderer. */
  readonly rendererFolder: string;
  /** 0 takes any free port. */
  readonly port: number;
  /** Told each time a token was used, when the next first address is there. */
  readonly onOpened?: () => void;
  /** Told of every fault that is ours. */
  readonly onFault?: (error: unknown) => void;
}

/** Starts serving. Rejects with the system's error when the port is taken. */
export async function serveBrowserShell(settings: BrowserShellSettings): Promise<BrowserShell> {
  const handler = new RPCHandler(settings.desk.router, {
    plugins: [new BodyLimitPlugin({ maxBodySize: largestBody })],
  });
  const server = createServer();
  const port = await listen(server, settings.port);
  const keyring = makeKeyring(`linenfold_${port}`);

  server.on('request', (request: IncomingMessage, response: ServerResponse) => {
    answer(request, response).catch((error: unknown) => {
      settings.onFault?.(error);
      if (!response.headersSent) answerPlainly(response, 500, 'Something went wrong here; the terminal says what.');
      else response.destroy();
    });
  });

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const fault = findRequestFault(request, port);
    if (fault !== null) return answerPlainly(response, 403, fault);
    const url = new URL(request.url ?? '/', `http://${loopback}:${port}`);
    if (url.pathname === '/' && url.searchParams.has('token')) return admit(url, request, response);
    if (!keyring.holdsKey(request.headers.cookie)) {
      return answerPlainly(response, 401, 'Open Linenfold by the address that "npm start" prints: it carries the key.');
    }
    if (url.pathname === '/rpc' || url.pathname.startsWith('/rpc/')) return answerRpc(request, response);
    if (request.method !== 'GET' && request.method !== 'HEAD') return answerPlainly(response, 405, 'Only GET here.');
    const address = readPaperPath(url.pathname);
    if (address !== null) return answerPaper(address, url.searchParams.has('download'), response);
    const file = await readRendererFile(settings.rendererFolder, url.pathname);
    if (file === null) return answerPlainly(response, 404, 'There is nothing here.');
    response.writeHead(200, writeSafeHeaders(file.type)).end(file.bytes);
  }

  function admit(url: URL, request: IncomingMessage, response: ServerResponse): void {
    const home = { ...writeSafeHeaders('text/plain; charset=utf-8'), location: '/' };
    const key = keyring.exchange(url.searchParams.get('token') ?? '');
    if (key === null) {
      // A browser that restores its pages asks for the first address again, and has the key.
      if (keyring.holdsKey(request.headers.cookie)) {
        response.writeHead(303, home).end();
        return;
      }
      return answerPlainly(response, 401, 'This address was used before. The terminal shows one that works.');
    }
    response.writeHead(303, { ...home, 'set-cookie': keyring.writeCookie(key) }).end();
    settings.onOpened?.();
  }

  async function answerRpc(request: IncomingMessage, response: ServerResponse): Promise<void> {
    if (request.method !== 'POST') return answerPlainly(response, 405, 'Requests are sent by POST.');
    // A form of a foreign page could send a POST without an Origin in old browsers; ours always sends one.
    if (request.headers.origin === undefined) return answerPlainly(response, 403, 'A request needs an Origin.');
    for (const [name, value] of Object.entries(writeSafeHeaders('application/json'))) {
      if (name !== 'content-type') response.setHeader(name, value);
    }
    const { matched } = await handler.handle(request, response, { prefix: '/rpc' });
    if (!matched) answerPlainly(response, 404, 'There is no such request.');
  }

  async function answerPaper(
    address: { readonly kind: string; readonly id: string },
    download: boolean,
    response: ServerResponse,
  ): Promise<void> {
    const paper = await settings.desk.readPaper(address.kind, address.id);
    if (paper === null) return answerPlainly(response, 404, 'There is no such paper.');
    response.writeHead(200, {
      ...writeSafeHeaders(paper.type),
      'content-length': String(paper.bytes.byteLength),
      'content-disposition': writeDisposition(download ? 'attachment' : 'inline', paper.name),
    });
    response.end(paper.bytes);
  }

  return {
    readAddress: () => writeAddress(port, keyring),
    port,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/** What is wrong with where a request comes from, or null. Host and Origin are compared whole. */
function findRequestFault(request: IncomingMessage, port: number): string | null {
  if (request.headers.host !== `${loopback}:${port}`) return `This program answers only to ${loopback}:${port}.`;
  const { origin } = request.headers;
  if (origin !== undefined && origin !== `http://${loopback}:${port}`) return 'Pages of other sites may not ask here.';
  const site = request.headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin' && site !== 'none') return 'Pages of other sites may not ask here.';
  return null;
}

function writeAddress(port: number, keyring: Keyring): string {
  return `http://${loopback}:${port}/?token=${keyring.readToken()}`;
}

function answerPlainly(response: ServerResponse, status: number, sentence: string): void {
  response.writeHead(status, writeSafeHeaders('text/plain; charset=utf-8')).end(`${sentence}\n`);
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, loopback, () => {
      server.off('error', reject);
      resolve((server.address() as AddressInfo).port);
    });
  });
}
