/** Where in a repeat a place along the cloth lies, in [0, size): below zero it lies before the start. */
export function intoRepeat(place: number, size: number): number {
  const rest = place % size;
  return rest < 0 ? rest + size : rest;
}
