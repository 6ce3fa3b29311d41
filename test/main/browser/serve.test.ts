import { os } from '@orpc/server';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request as sendHttp, type IncomingHttpHeaders } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { serveBrowserShell, type BrowserShell } from '#main/browser/serve.ts';
import type { ServedDesk } from '#main/host/served-desk.ts';

/** A desk that answers one request and holds one paper: what is tested here is who may ask. */
const desk: ServedDesk = {
  router: { echo: os.handler(() => 'heard') },
  readPaper: (kind, id) =>
    Promise.resolve(
      kind === 'proposal' && id === '7'
        ? { name: 'Proposal é.pdf', type: 'application/pdf', bytes: Buffer.from('%PDF-') }
        : null,
    ),
  close: () => Promise.resolve(),
};

let folder: string;
let shell: BrowserShell;
beforeEach(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'linenfold-page-'));
  writeFileSync(path.join(folder, 'index.html'), 'the page');
  shell = await serveBrowserShell({ desk, rendererFolder: folder, port: 0 });
});
afterEach(async () => {
  await shell.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
}

/** Sends exactly what is asked; `fetch` would set Host and Origin by itself. */
function send(method: string, target: string, headers: Record<string, string> = {}, body = ''): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const request = sendHttp({ host: '127.0.0.1', port: shell.port, method, path: target, headers }, (response) => {
      let text = '';
      response.setEncoding('utf8');
      response.on('data', (chunk: string) => (text += chunk));
      response.on('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, text }));
    });
    request.on('error', reject);
    request.end(body);
  });
}

const origin = () => `http://127.0.0.1:${shell.port}`;
const firstPath = () => shell.readAddress().slice(origin().length);

async function openDoor(): Promise<string> {
  const answer = await send('GET', firstPath());
  return answer.headers['set-cookie']?.[0]?.split(';')[0] ?? '';
}

function ask(headers: Record<string, string>, method = 'POST'): Promise<Answer> {
  return send(method, '/rpc/echo', { 'content-type': 'application/json', ...headers }, method === 'POST' ? '{}' : '');
}

describe('the first address', () => {
  it('exchanges its token for a cookie that scripts and other sites do not get', async () => {
    const answer = await send('GET', firstPath());
    expect([answer.status, answer.headers.location]).toEqual([303, '/']);
    expect(answer.headers['set-cookie']?.[0]).toMatch(/; HttpOnly; SameSite=Strict; Path=\/$/);
  });

  it('works once', async () => {
    const used = firstPath();
    await send('GET', used);
    expect((await send('GET', used)).status).toBe(401);
    expect(firstPath()).not.toBe(used);
  });

  it('leads a browser that already has its key back to the page', async () => {
    const used = firstPath();
    const cookie = await openDoor();
    const answer = await send('GET', used, { cookie });
    expect([answer.status, answer.headers.location]).toEqual([303, '/']);
  });

  it.each(['/?token=', '/?token=guess', '/'])('%s opens nothing', async (target) => {
    expect((await send('GET', target)).status).toBe(401);
  });
});

describe('who may ask', () => {
  it('the page itself', async () => {
    const answer = await ask({ cookie: await openDoor(), origin: origin() });
    expect([answer.status, JSON.parse(answer.text)]).toEqual([200, { json: 'heard' }]);
  });

  it.each([
    ['nobody without a key', () => ({ origin: origin() }), 401],
    ['nobody with a made-up key', () => ({ origin: origin(), cookie: `linenfold_${shell.port}=guess` }), 401],
  ] as const)('%s', async (_name, headers, status) => {
    await openDoor();
    expect((await ask(headers())).status).toBe(status);
  });

  it.each([
    ['a page of another site', { origin: 'https://example.org' }],
    ['a page of another port', { origin: 'http://127.0.0.1:1' }],
    ['a page of the same port by another name', { origin: 'http://localhost' }],
    ['a page without an origin of its own', { origin: 'null' }],
    ['a request that says it crosses sites', { 'sec-fetch-site': 'cross-site' }],
    ['a request that says it comes from another port', { 'sec-fetch-site': 'same-site' }],
  ])('not %s, key or no key', async (_name, headers) => {
    const cookie = await openDoor();
    expect((await ask({ cookie, origin: origin(), ...headers })).status).toBe(403);
  });

  it.each(['example.org', 'localhost', '127.0.0.1', '127.0.0.1:1'])('not under the name %s', async (host) => {
    const cookie = await openDoor();
    expect((await send('GET', '/', { cookie, host })).status).toBe(403);
    expect((await ask({ cookie, origin: origin(), host })).status).toBe(403);
  });

  it('not without an origin, when something is to be done', async () => {
    expect((await ask({ cookie: await openDoor() })).status).toBe(403);
  });

  it('not by GET, which a picture of a foreign page could send', async () => {
    expect((await ask({ cookie: await openDoor(), origin: origin() }, 'GET')).status).toBe(405);
  });

  it('not by another address: only 127.0.0.1 is listened on', async () => {
    // A server that listens on every address would answer on each of 127.0.0.0/8, and on ::1.
    expect(await canConnect('127.0.0.2', shell.port)).toBe(false);
    expect(await canConnect('::1', shell.port)).toBe(false);
    expect(await canConnect('127.0.0.1', shell.port)).toBe(true);
  });
});

describe('what is served', () => {
  it('the page, with the policy', async () => {
    const answer = await send('GET', '/', { cookie: await openDoor() });
    expect([answer.status, answer.text]).toEqual([200, 'the page']);
    expect(answer.headers['content-security-policy']).toContain("default-src 'none'");
  });

  it('a paper, to be read or to be kept', async () => {
    const cookie = await openDoor();
    const shown = await send('GET', '/papers/proposal/7', { cookie });
    expect([shown.status, shown.headers['content-type'], shown.text]).toEqual([200, 'application/pdf', '%PDF-']);
    expect(shown.headers['content-disposition']).toMatch(/^inline;/);
    const kept = await send('GET', '/papers/proposal/7?download=1', { cookie });
    expect(kept.headers['content-disposition']).toBe(
      `attachment; filename="Proposal _.pdf"; filename*=UTF-8''Proposal%20%C3%A9.pdf`,
    );
  });

  it.each(['/papers/proposal/8', '/papers/other/7', '/nothing.js', '/../package.json'])('not %s', async (target) => {
    expect((await send('GET', target, { cookie: await openDoor() })).status).toBe(404);
  });

  it('no paper without a key', async () => {
    expect((await send('GET', '/papers/proposal/7')).status).toBe(401);
  });

  it('no request that is not in the contract', async () => {
    const cookie = await openDoor();
    expect((await send('POST', '/rpc/nothing', { cookie, origin: origin() }, '{}')).status).toBe(404);
  });

  it('no body larger than the limit', async () => {
    const cookie = await openDoor();
    const headers = { cookie, origin: origin(), 'content-type': 'application/json', 'content-length': '99999999' };
    const answer = await new Promise<number>((resolve, reject) => {
      const request = sendHttp(
        { host: '127.0.0.1', port: shell.port, method: 'POST', path: '/rpc/echo', headers },
        (response) => {
          resolve(response.statusCode ?? 0);
          request.destroy();
        },
      );
      request.on('error', reject);
      request.write('{');
    });
    expect(answer).toBe(413);
  });
});

it('says that a port is taken', async () => {
  await expect(serveBrowserShell({ desk, rendererFolder: folder, port: shell.port })).rejects.toThrow(/EADDRINUSE/);
});

function canConnect(host: string, port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect({ host, port, timeout: 2_000 });
    const end = (answer: boolean) => {
      socket.destroy();
      resolve(answer);
    };
    socket.on('connect', () => end(true));
    socket.on('error', () => end(false));
    socket.on('timeout', () => end(false));
  });
}
