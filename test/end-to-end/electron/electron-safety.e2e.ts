import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { waitForDesk } from '../wait-for-desk.ts';
import { openInElectron, type OpenElectron } from './electron-shell.ts';

/** Rules of Electron's own security checklist (electronjs.org, "Security"), tried in the running program. */
describe('a page in the Electron shell', () => {
  let program: OpenElectron;
  beforeAll(async () => {
    program = await openInElectron();
    await waitForDesk(program.page);
  });
  afterAll(async () => {
    await program.close();
  });

  it('is served under our own scheme, with the policy', async () => {
    expect(program.page.url()).toBe('linenfold://app/');
    const policy = await program.page.evaluate(async () => (await fetch('/')).headers.get('content-security-policy'));
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self'");
  });

  it('has nothing of Node or Electron', async () => {
    const types = await program.page.evaluate(() =>
      ['require', 'process', 'module', 'Buffer', 'global', 'electron', 'ipcRenderer'].filter((name) => name in window),
    );
    expect(types).toEqual([]);
  });

  it('reaches the program by four names only', async () => {
    const names = await program.page.evaluate(() =>
      Object.keys((window as unknown as { linenfoldShell: object }).linenfoldShell).sort(),
    );
    expect(names).toEqual(['confirmClose', 'kind', 'onCloseAsked', 'onHostState']);
  });

  it('is isolated and in the sandbox', async () => {
    const preferences = await program.app.evaluate(({ BrowserWindow }) => {
      // Not declared, but the only way to read what a window was made with.
      const contents = BrowserWindow.getAllWindows()[0]?.webContents as unknown as {
        getLastWebPreferences(): Record<string, unknown>;
      };
      return contents.getLastWebPreferences();
    });
    expect(preferences).toMatchObject({
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webSecurity: true,
      webviewTag: false,
    });
  });

  it.each([
    'https://example.org/',
    'http://127.0.0.1:9/',
    'file:///etc/hostname',
    'data:text/html,other',
    'linenfold://other/',
    'linenfold://app/assets/',
    'linenfold://app/papers/proposal/1',
  ])('cannot leave for %s', async (address) => {
    program.faults.allow(/Not allowed to|Content Security Policy|ERR_/);
    await program.page.evaluate((target) => {
      window.location.href = target;
    }, address);
    // Electron's own answer, after the page's next turn: Playwright still waits for a navigation that was stopped.
    await program.page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 100)));
    const shown = await program.app.evaluate(({ BrowserWindow }) => {
      const contents = BrowserWindow.getAllWindows()[0]?.webContents;
      return [contents?.getURL(), contents?.isLoadingMainFrame()];
    });
    expect(shown).toEqual(['linenfold://app/', false]);
    expect(await program.page.evaluate(() => document.documentElement.dataset.desk)).toBe('answered');
  });

  it.each([
    'https://example.org/',
    'file:///etc/hostname',
    'linenfold://app/',
    'linenfold://app/papers/proposal/1',
    'about:blank',
  ])('cannot open a window on %s', async (address) => {
    program.faults.allow(/Not allowed to/);
    expect(await program.page.evaluate((target) => window.open(target) === null, address)).toBe(true);
    expect(program.app.windows()).toHaveLength(1);
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

  it.each(['geolocation', 'notifications', 'camera', 'microphone', 'midi', 'clipboard-read'])(
    'is not permitted: %s',
    async (name) => {
      const state = await program.page.evaluate(
        async (asked) => (await navigator.permissions.query({ name: asked as PermissionName })).state,
        name,
      );
      expect(state).toBe('denied');
    },
  );

  it('gets no camera and no position', async () => {
    const outcome = await program.page.evaluate(async () => {
      const camera = await navigator.mediaDevices.getUserMedia({ video: true }).then(
        () => 'given',
        (error: unknown) => (error as Error).name,
      );
      const position = await new Promise<string>((resolve) => {
        navigator.geolocation.getCurrentPosition(
          () => resolve('given'),
          (error) => resolve(error.code === error.PERMISSION_DENIED ? 'denied' : `code ${error.code}`),
        );
      });
      return { camera, position };
    });
    expect(['NotAllowedError', 'NotFoundError']).toContain(outcome.camera);
    expect(outcome.position).toBe('denied');
  });

  it('finds no paper that is not there', async () => {
    program.faults.allow(/404|Failed to load resource/);
    expect(await program.page.evaluate(async () => (await fetch('/papers/proposal/none')).status)).toBe(404);
  });
});
