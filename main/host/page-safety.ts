/** The headers that keep a page safe, the same in both shells. */

/**
 * Content Security Policy of every page. Inline style attributes are allowed (Svelte writes them into its templates),
 * inline style sheets and scripts are not; nothing is fetched from anywhere else.
 */
export const pagePolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "style-src-attr 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "frame-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'self'",
].join('; ');

/**
 * Headers for one answer. `type` is its media type. Only pages carry the policy: on a PDF it would stop the viewer that
 * the browser itself builds around the file.
 */
export function writeSafeHeaders(type: string): Record<string, string> {
  const headers: Record<string, string> = {
    'content-type': type,
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'cross-origin-resource-policy': 'same-origin',
    'cache-control': 'no-store',
  };
  if (type.startsWith('text/html')) {
    headers['content-security-policy'] = pagePolicy;
    headers['cross-origin-opener-policy'] = 'same-origin';
  }
  return headers;
}

/** Content-Disposition for a file name that may hold any letter (RFC 6266, with RFC 8187's encoding). */
export function writeDisposition(kind: 'inline' | 'attachment', name: string): string {
  const plain = name.replace(/[^\x20-\x7e]|["\\%]/g, '_');
  const encoded = encodeURIComponent(name).replace(/['()*]/g, (c) => `%${c.charCodeAt(0).toString(16).toUpperCase()}`);
  return `${kind}; filename="${plain}"; filename*=UTF-8''${encoded}`;
}
