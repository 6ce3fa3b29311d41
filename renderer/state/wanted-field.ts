/** Which field of another screen a link leads to: the screen takes it when it opens, once. */
export interface Wanted {
  /** The treatment that is to be shown, where an opening has several. */
  readonly treatment: string | null;
  /** Selectors, the best first. */
  readonly fields: readonly string[];
}

let wanted: Wanted | null = null;

export function want(given: Wanted): void {
  wanted = given;
}

export function takeWanted(): Wanted | null {
  const taken = wanted;
  wanted = null;
  return taken;
}
