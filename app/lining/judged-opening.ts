import type { Opening } from '#shared/job.ts';
import type { Ticks } from '#shared/length.ts';
import type { JudgedOpening } from './judge-input.ts';

/**
 * The opening as readings see it. Only where a bed or a bath stands may it be without sizes: its own then stand for them,
 * and no reading looks at them, because nothing of a window is behind it.
 */
export function judgedOpening(
  opening: Opening,
  finished: { readonly width: Ticks; readonly length: Ticks },
): JudgedOpening {
  return { ...opening, width: opening.width ?? finished.width, height: opening.height ?? finished.length };
}
