/** How a share of daylight is shown: eyes judge light roughly by its cube root, so that 2 % is dim and not nothing. */

import { nearestCount } from './round-shapes.ts';

/** 0..1 for the picture; grows with `share`, 0 stays 0 and 1 stays 1. A drawing's measure, never a reading. */
export function shownLight(share: number): number {
  if (!Number.isFinite(share) || share <= 0) return 0;
  return Math.min(1, share) ** 0.42;
}

/** `about 9 %`, `less than 1 %`, `none`: for the drawing's words. */
export function sayLight(share: number): string {
  if (!(share > 0)) return 'none';
  return share < 0.01 ? 'less than 1 %' : `about ${nearestCount(share * 100, 1, 100)} %`;
}
