/** The shell's own scheme: `linenfold://app/` is the page, `linenfold://app/papers/<kind>/<id>` a stored paper. */
export const scheme = 'linenfold';
export const pageAddress = `${scheme}://app/`;

/** Whether an address is the page itself (with any hash), and so may be navigated to. */
export function isPage(address: string): boolean {
  const url = parseOurs(address);
  return url !== null && (url.pathname === '/' || url.pathname === '/index.html');
}

/** The address as a URL when it is under our own scheme and host, else null. */
export function parseOurs(address: string): URL | null {
  try {
    const url = new URL(address);
    return url.protocol === `${scheme}:` && url.host === 'app' ? url : null;
  } catch {
    // Not an address at all.
    return null;
  }
}
