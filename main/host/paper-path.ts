/** The kind and id in the path `/papers/<kind>/<id>` of an address, or null when it is no such path. */
export function readPaperPath(pathname: string): { readonly kind: string; readonly id: string } | null {
  const found = /^\/papers\/([a-z-]{1,40})\/([A-Za-z0-9_-]{1,80})$/.exec(pathname);
  return found?.[1] === undefined || found[2] === undefined ? null : { kind: found[1], id: found[2] };
}
