import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { afterEach, describe, expect, it } from 'vitest';
import type { HostState } from '../../../renderer/state/shell.ts';
import { writeElectronArguments } from '../../../build/electron-runtime.mjs';
import { makeFreshFolders } from '../fresh-folders.ts';
import { waitForDesk } from '../wait-for-desk.ts';
import { openInElectron, type OpenElectron } from './electron-shell.ts';

let program: OpenElectron | null = null;
afterEach(async () => {
  await program?.close();
  program = null;
});

/** The process that owns the portfolio. */
async function findHost(open: OpenElectron): Promise<number> {
  const pid = await open.app.evaluate(
    ({ app }) => app.getAppMetrics().find((one) => one.name === 'linenfold-host')?.pid ?? 0,
  );
  expect(pid).toBeGreaterThan(0);
  return pid;
}

/** Records what the page is told of the host from now on. */
function watchHost(open: OpenElectron): Promise<void> {
  return open.page.evaluate(() => {
    const told: string[] = [];
    Object.assign(window, { hostTold: told });
    window.linenfoldShell?.onHostState((state: HostState) => told.push(state));
  });
}

async function waitUntilTold(open: OpenElectron, states: readonly string[]): Promise<void> {
  await open.page.waitForFunction(
    (wanted) => JSON.stringify((window as unknown as { hostTold: string[] }).hostTold) === wanted,
    JSON.stringify(states),
  );
}

describe('the life of the Electron shell', () => {
  it('answers again after each of five reloads', async () => {
    program = await openInElectron();
    for (let time = 1; time <= 5; time += 1) {
      await program.page.reload();
      await waitForDesk(program.page);
    }
  });

  it('starts the host again when it dies, and says so; a second death soon after is final', async () => {
    program = await openInElectron();
    await waitForDesk(program.page);
    await watchHost(program);

    const first = await findHost(program);
    process.kill(first, 'SIGKILL');
    await waitUntilTold(program, ['gone', 'up']);
    await program.page.reload();
    await waitForDesk(program.page);

    await watchHost(program);
    const second = await findHost(program);
    expect(second).not.toBe(first);
    process.kill(second, 'SIGKILL');
    await waitUntilTold(program, ['failed']);
  });

  it('is one program for one portfolio: a second start ends and the first window stays', async () => {
    program = await openInElectron();
    await waitForDesk(program.page);
    const executable = await program.app.evaluate(({ app }) => app.getPath('exe'));
    const second = spawn(executable, writeElectronArguments(), { env: program.folders.env, stdio: 'ignore' });
    const [code] = (await once(second, 'exit')) as [number | null];
    expect(code).toBe(0);
    expect(program.app.windows()).toHaveLength(1);
    await program.page.reload();
    await waitForDesk(program.page);
  });

  it('opens the window where it was', async () => {
    const folders = makeFreshFolders();
    const wanted = { x: 40, y: 50, width: 1100, height: 700 };
    const first = await openInElectron(folders);
    await first.app.evaluate(
      ({ BrowserWindow }, bounds) => BrowserWindow.getAllWindows()[0]?.setBounds(bounds),
      wanted,
    );
    await first.close();
    const again = await openInElectron(folders);
    const found = await again.app.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.getBounds());
    await again.close();
    folders.remove();
    expect(found).toEqual(wanted);
  });

  it('asks before it closes on a page that cannot say that all is saved', async () => {
    program = await openInElectron();
    await waitForDesk(program.page);
    await program.app.evaluate(({ dialog }) => {
      const asked: string[] = [];
      Object.assign(globalThis, { asked });
      dialog.showMessageBox = (...args: unknown[]) => {
        asked.push((args.at(-1) as { message: string }).message);
        return Promise.resolve({ response: 0, checkboxChecked: false });
      };
    });
    // The page is busy for longer than the shell waits.
    await program.page.evaluate(() => {
      setTimeout(() => {
        const until = performance.now() + 4_500;
        while (performance.now() < until);
      }, 0);
    });
    await program.app.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.close());
    await expect
      .poll(() => program?.app.evaluate(() => (globalThis as unknown as { asked: string[] }).asked), {
        timeout: 10_000,
      })
      .toEqual(['Linenfold could not make sure that everything typed is saved.']);
    expect(program.app.windows()).toHaveLength(1);
    // The answer was "Keep open"; free again, the page closes in the usual way (afterEach).
    await program.page.waitForFunction(() => true);
  });
});
