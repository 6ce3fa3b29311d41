import { randomBytes, timingSafeEqual } from 'node:crypto';

/**
 * Who may ask: a token that works once, in the first address, is exchanged for a key that the browser keeps as a cookie.
 * After each exchange a new token is there for another browser.
 */
export interface Keyring {
  /** The token that the next first address has to carry. */
  readToken(): string;
  /** Takes a token; the key to set as a cookie when it was the current one, else null. A token works once. */
  exchange(token: string): string | null;
  /** Whether a Cookie header carries a key that was given out. */
  holdsKey(cookieHeader: string | undefined): boolean;
  /** The Set-Cookie value for a key. Strict and not readable by scripts; it ends with the browser's session. */
  writeCookie(key: string): string;
}

/** `cookieName` has to differ for two shells on one computer: cookies of 127.0.0.1 do not know the port. */
export function makeKeyring(cookieName: string): Keyring {
  const draw = () => randomBytes(32).toString('base64url');
  const keys: string[] = [];
  let token = draw();
  return {
    readToken: () => token,
    exchange(given) {
      if (!isSame(given, token)) return null;
      token = draw();
      const key = draw();
      keys.push(key);
      return key;
    },
    holdsKey(cookieHeader) {
      const found = (cookieHeader ?? '')
        .split(';')
        .map((part) => part.trim())
        .find((part) => part.startsWith(`${cookieName}=`))
        ?.slice(cookieName.length + 1);
      return found !== undefined && keys.some((key) => isSame(found, key));
    },
    writeCookie: (key) => `${cookieName}=${key}; HttpOnly; SameSite=Strict; Path=/`,
  };
}

/** Compares in a time that tells nothing about where two texts differ. */
function isSame(one: string, other: string): boolean {
  const a = Buffer.from(one);
  const b = Buffer.from(other);
  return a.length === b.length && timingSafeEqual(a, b);
}
