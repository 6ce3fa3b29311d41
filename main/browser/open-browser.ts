import { spawn } from 'node:child_process';

const commandOf: Partial<Record<NodeJS.Platform, readonly [string, ...string[]]>> = {
  win32: ['rundll32', 'url.dll,FileProtocolHandler'],
  darwin: ['open'],
};

/**
 * Tries to show an address in the person's browser, quietly: on a computer without one nothing happens, and the address
 * that was printed serves. The address holds nothing that a shell would read (letters, digits, `-`, `_`, `:/?=.`).
 */
export function openBrowser(address: string): void {
  const [command, ...args] = commandOf[process.platform] ?? ['xdg-open'];
  const child = spawn(command, [...args, address], { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
}
