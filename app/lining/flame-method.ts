/**
 * Which test of NFPA 701 an assembly falls under: 1 up to 700 g/m2, 2 above it and whenever a vinyl-coated blackout is
 * in it. The weight is of all layers sewn together. The standard pairs 700 g/m2 with 21 oz/yd2 (712): between them, 2.
 */
export function nfpaMethod(gramsPerM2: number, vinylBlackout: boolean): 1 | 2 {
  return vinylBlackout || gramsPerM2 > 700 ? 2 : 1;
}
