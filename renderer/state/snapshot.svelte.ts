/** A plain copy of reactive state, for what leaves the page (see client.ts). */
export function takeSnapshot(value: unknown): unknown {
  return $state.snapshot(value);
}
