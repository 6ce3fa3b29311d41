import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { waitForDesk } from '../wait-for-desk.ts';
import { openInBrowser, type OpenProgram } from './browser-shell.ts';

describe('the browser shell in Chromium', () => {
  let program: OpenProgram;
  beforeAll(async () => {
    program = await openInBrowser();
    await waitForDesk(program.page);
  });
  afterAll(async () => {
    await program.close();
  });

  it('shows the page at an address without the token', () => {
    expect(program.page.url()).toBe(`${program.shell.origin}/`);
  });

  it('answers again after each of five reloads', async () => {
    for (let time = 1; time <= 5; time += 1) {
      await program.page.reload();
      await waitForDesk(program.page);
    }
  });

  it('runs no inline script and no inline handler', async () => {
    program.faults.allow(/Content Security Policy|unsafe-eval/);
    const ran = await program.page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.ranInline = true';
      document.head.append(script);
      document.body.setAttribute('onclick', 'window.ranHandler = true');
      document.body.click();
      return ['ranInline', 'ranHandler'].filter((name) => name in window);
    });
    expect(ran).toEqual([]);
  });

  it('asks no other origin, not even on this computer', async () => {
    program.faults.allow(/Content Security Policy|Failed to fetch/);
    await expect(program.page.evaluate(() => fetch('http://127.0.0.1:9/'))).rejects.toThrow(/fetch/);
  });
});

describe('a page of another site in the same browser', () => {
  let program: OpenProgram;
  let foreign: ReturnType<typeof createServer>;
  let foreignOrigin: string;
  beforeAll(async () => {
    program = await openInBrowser();
    await waitForDesk(program.page);
    foreign = createServer((_request, response) => {
      response
        .writeHead(200, { 'content-type': 'text/html' })
        .end('<!doctype html><link rel="icon" href="data:,">foreign');
    });
    await new Promise<void>((resolve) => foreign.listen(0, '127.0.0.1', resolve));
    foreignOrigin = `http://127.0.0.1:${(foreign.address() as AddressInfo).port}`;
  });
  afterAll(async () => {
    foreign.close();
    foreign.closeAllConnections();
    await program.close();
  });

  it('can neither ask, nor read, nor frame the program, though the browser holds its key', async () => {
    const page = await program.page.context().newPage();
    await page.goto(foreignOrigin);
    const outcome = await page.evaluate(async (target) => {
      const attempt = async (path: string, options: RequestInit) => {
        try {
          const answer = await fetch(target + path, { credentials: 'include', ...options });
          return `answered ${answer.status} ${await answer.text()}`;
        } catch {
          return 'refused';
        }
      };
      const asked = await attempt('/rpc/portfolio/readState', { method: 'POST', body: '{}' });
      const blind = await attempt('/rpc/portfolio/readState', { method: 'POST', body: '{}', mode: 'no-cors' });
      const read = await attempt('/', {});
      const frame = document.createElement('iframe');
      frame.src = `${target}/`;
      const loaded = new Promise((resolve) => frame.addEventListener('load', resolve));
      document.body.append(frame);
      await loaded;
      return { asked, blind, read };
    }, program.shell.origin);
    expect(outcome.asked).toBe('refused');
    // A blind request is sent; the shell refuses it (test/main/browser/serve.test.ts), and the page learns nothing.
    expect(['refused', 'answered 0 ']).toContain(outcome.blind);
    expect(outcome.read).toBe('refused');
    const framed = page.frames().find((frame) => frame !== page.mainFrame());
    expect(await framed?.locator('body').textContent()).not.toContain('Linenfold');
    await page.close();
  });
});
