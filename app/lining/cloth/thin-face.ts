/** A face that wants body behind it and that a thick interlining would drown (common practice; the weight is assumed). */
import type { FaceCloth } from '#shared/cloth.ts';
import { weightOf } from './resolve-cloth.ts';

/** In g/m2. */
export const THIN_FACE = 160;

export function isThin(face: FaceCloth): boolean {
  return weightOf(face).gramsPerM2 < THIN_FACE;
}
