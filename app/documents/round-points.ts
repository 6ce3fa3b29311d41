/** Coordinates are written to a thousandth of a point: finer than any printer, and files stay small and repeatable. */
export function roundPoints(value: number): number {
  const rounded = Math.round(value * 1000) / 1000;
  return rounded === 0 ? 0 : rounded;
}

/** How many whole lines of `leading` fit in `room`. */
export function wholeLines(room: number, leading: number): number {
  return Math.max(0, Math.floor(room / leading + 1e-6));
}
