/** How many pleats or folds a panel shows, when the estimating engine has not laid them out. */
import { TICKS_PER_INCH } from '#shared/length.ts';
import type { Heading } from '#shared/words.ts';
import { nearestCount, wholeOnesIn } from './round-shapes.ts';

/** Pleats a width of cloth at 2.5 fullness: 5 in 1, 7 in 1 1/2, 10 in 2, 12 in 2 1/2, 15 in 3 (common practice). */
const PLEATS_PER_WIDTH = 5;
/** The cloth width that the rule above is about. */
const USUAL_WIDTH = 54 * TICKS_PER_INCH;
const USUAL_FULLNESS = 2.5;

/** Folds for each pleat of the common rule: soft headings throw more and smaller folds, grommets and waves fewer and larger. */
const FOLDS_PER_PLEAT: Readonly<Record<Heading, number>> = {
  'pinch-pleat': 1,
  goblet: 1,
  'box-pleat': 0.8,
  'pencil-pleat': 1.4,
  'rod-pocket': 1.4,
  tab: 0.8,
  grommet: 0.8,
  wave: 0.8,
  flat: 0.4,
};

export interface PleatInput {
  readonly heading: Heading;
  readonly pieces: number;
  /** Pleats of all pieces as laid out by the engine; null counts them here. */
  readonly pleats: number | null;
  /** Widths of all pieces, in halves. */
  readonly halfWidths: number | null;
  readonly fullness: number | null;
  /** Rod face with returns and overlap, in ticks. */
  readonly finishedWidth: number;
}

/** Widths of cloth in all pieces: as given, else from fullness and the usual cloth. */
export function countWidths(input: Pick<PleatInput, 'halfWidths' | 'fullness' | 'finishedWidth'>): number {
  if (input.halfWidths !== null && input.halfWidths > 0) return input.halfWidths / 2;
  return (positive(input.fullness, USUAL_FULLNESS) * input.finishedWidth) / USUAL_WIDTH;
}

/** Folds of one piece: whole, at least 2, at most 60 (beyond that a drawing says nothing more). */
export function countPleats(input: PleatInput): number {
  const whole =
    input.pleats !== null && input.pleats > 0
      ? input.pleats / input.pieces
      : wholeOnesIn((PLEATS_PER_WIDTH * FOLDS_PER_PLEAT[input.heading] * countWidths(input)) / input.pieces);
  return nearestCount(whole, 2, 60);
}

function positive(value: number | null, fallback: number): number {
  return value !== null && Number.isFinite(value) && value > 0 ? value : fallback;
}
