/** A figure to a number of decimals, halves away from zero: for results only, never before an engine is done with it. */
export function roundFigure(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  return (Math.sign(value) * Math.round(Math.abs(value) * scale)) / scale;
}
