/**
 * A Roman shade: flat, with soft folds (hobbled) or relaxed, inside the frame or in front of it, and the decorator's own
 * practice of making it. Allowances that no handbook printed are marked "from memory".
 */
import type { LengthUnit, Ticks } from '../length.ts';
import type { Practice, Thousandths } from '../practice.ts';
import type { MountPlace } from '../words.ts';
import { defaultLengths } from './length-settings.ts';
import type { LengthsOf, LengthTable } from './length-settings.ts';
import type { TreatmentBase } from './treatment-base.ts';

export const ROMAN_STYLES = ['flat', 'soft-fold', 'relaxed'] as const;
export type RomanStyle = (typeof ROMAN_STYLES)[number];

/** How it is raised. A cord that a child can reach is never the default. */
export const SHADE_LIFTS = ['cordless', 'inaccessible-cords', 'motor', 'cords'] as const;
export type ShadeLift = (typeof SHADE_LIFTS)[number];

export const RIB_PLACES = ['rows', 'none'] as const;

/**
 * `opening`: readings of the frame, the workroom deducts. `finished`: the shade as it shall be, deductions taken: taking
 * them twice is a classic remake.
 */
export type RomanSize =
  | {
      readonly basis: 'opening';
      /** Top, middle and bottom; at least one. */
      readonly widths: readonly Ticks[];
      /** Left, middle and right; at least one. */
      readonly lengths: readonly Ticks[];
      readonly diagonals: readonly [Ticks, Ticks] | null;
      /** Frame depth that is free of handles, tiles and sill lip; null when not measured. */
      readonly depth: Ticks | null;
    }
  | { readonly basis: 'finished'; readonly width: Ticks; readonly length: Ticks };

export interface RomanShadeTreatment extends TreatmentBase {
  readonly kind: 'roman-shade';
  /** Resolved for this treatment alone, its own section with it. */
  readonly practice: Practice & { readonly romanShade: RomanShadePractice };
  readonly style: RomanStyle;
  readonly mount: { readonly where: MountPlace; readonly above: Ticks };
  readonly size: RomanSize;
  /** Thick cloth takes the larger deduction inside a frame. */
  readonly thick: boolean;
  /** Side returns of an outside mount, board front to wall; 0 inside a frame. */
  readonly returns: { readonly left: Ticks; readonly right: Ticks };
  /** Rows as the practice's row rule counts them; null: by the usual spacing. */
  readonly rows: number | null;
  /** Columns of rings; null: by the greatest spacing, on edges and seams. */
  readonly columns: number | null;
  readonly ribs: (typeof RIB_PLACES)[number];
  readonly lift: ShadeLift;
  /** The end of the board at which it is worked. */
  readonly control: 'left' | 'right';
  /** A valance of its own in front of the board, by its finished depth. */
  readonly valance: { readonly depth: Ticks } | null;
}

export const ROMAN_LENGTHS = {
  unlinedWidth: { inch: 4, centimetre: 10, says: 'Added to the finished width of an unlined face, both sides.' },
  unlinedLength: { inch: 5, centimetre: 12.5, says: 'Added to the finished length of an unlined face.' },
  linedWidth: { inch: 6, centimetre: 15, says: 'Added to the finished width of a lined face, both sides.' },
  linedLength: { inch: 10, centimetre: 25, says: 'Added to the finished length of a lined face: hem 4, top 6.' },
  linedTop: { inch: 6, centimetre: 15, says: 'Of what is added to a lined face, this lies above its top.' },
  unlinedTop: { inch: 3, centimetre: 7.5, says: 'The same of an unlined face (from memory).' },
  softFoldAdded: { inch: 10, centimetre: 25, says: 'Added to the cloth of soft folds.' },
  relaxedExtra: { inch: 5, centimetre: 12.5, says: 'Added for the dip of a relaxed shade, 4 to 6 in.' },
  oneWidthMargin: { inch: 6, centimetre: 15, says: 'One width of cloth does when finished width and this fit across.' },
  leastMargin: { inch: 2, centimetre: 5, says: 'The face is at least this much narrower than the cloth.' },
  leastSide: { inch: 3, centimetre: 7.5, says: 'Least cut width of a side piece (from memory).' },
  seam: { inch: 0.5, centimetre: 1.5, says: 'Lost from each of two widths at a join.' },
  insideDeduction: { inch: 0.25, centimetre: 0.6, says: 'Off the narrowest reading inside a frame.' },
  thickDeduction: { inch: 0.375, centimetre: 1, says: 'The same for thick cloth.' },
  lengthDeduction: { inch: 0.25, centimetre: 0.6, says: 'Off the shortest length, where that rule is chosen.' },
  diagonalTolerance: {
    inch: 0.25,
    centimetre: 0.6,
    says: 'Diagonals further apart than this ask for an outside mount.',
  },
  rowSpacing: { inch: 6, centimetre: 15, says: 'Usual spacing of the rows.' },
  largeRowSpacing: { inch: 9, centimetre: 22.5, says: 'The same on large shades, 8 to 10 in.' },
  largeWidth: { inch: 72, centimetre: 180, says: 'A shade this wide is large (from memory).' },
  largeLength: { inch: 84, centimetre: 210, says: 'A shade this long is large (from memory).' },
  headRoom: { inch: 3, centimetre: 7.5, says: 'Flat cloth under the board, by the head-room rule (from memory).' },
  columnSpacing: { inch: 12, centimetre: 30, says: 'Greatest space between two columns, 8 to 12 in (from memory).' },
  edgeInset: { inch: 1, centimetre: 2.5, says: 'Outer columns from the finished edge (from memory).' },
  relaxedInset: { inch: 3, centimetre: 7.5, says: 'The two columns of a relaxed shade from its edges (from memory).' },
  unlinedStack: { inch: 0.25, centimetre: 0.6, says: 'Height of one gathered row when raised, unlined (from memory).' },
  linedStack: { inch: 0.375, centimetre: 1, says: 'The same lined (from memory).' },
  interlinedStack: { inch: 0.5, centimetre: 1.3, says: 'The same interlined (from memory).' },
  valanceAdded: { inch: 6, centimetre: 15, says: 'Added to the depth of its own valance: hem and top (from memory).' },
  valanceTop: { inch: 3, centimetre: 7.5, says: 'Of that, this lies above its top (from memory).' },
  returnWidth: { inch: 3, centimetre: 7.5, says: 'Added to the projection of a side return (from memory).' },
  returnLength: { inch: 4, centimetre: 10, says: 'Added to the drop of a side return (from memory).' },
  liningWidth: { inch: 0, centimetre: 0, says: 'Lining over the finished width: its turns lie inside (from memory).' },
  liningLength: { inch: 6, centimetre: 15, says: 'Lining over the finished length (from memory).' },
  interliningWidth: { inch: 0, centimetre: 0, says: 'Interlining over the finished width: edge to edge.' },
  interliningLength: { inch: 3, centimetre: 7.5, says: 'Interlining over the finished length (from memory).' },
  cordExtra: { inch: 12, centimetre: 30, says: 'Added to each cord for knots and fixing (from memory).' },
  boardDepth: { inch: 1.5, centimetre: 4, says: 'Depth of the board, and the return of an outside mount not given.' },
} as const satisfies LengthTable;

/**
 * The two conventions for rows. `board-line`: spacing = length / (rows - 1/2), where the board line is the last row;
 * `head-room`: spacing = (length - head room) / (ring rows + 1/2). The first row is half a space up in both.
 */
export const ROW_RULES = ['board-line', 'head-room'] as const;
export const INSIDE_LENGTHS = ['longest', 'shortest-less'] as const;
export const SOFT_FOLD_LININGS = ['with-face', 'flat'] as const;
export const RETURN_DROPS = ['stack', 'length'] as const;

export interface RomanShadePractice extends LengthsOf<typeof ROMAN_LENGTHS> {
  readonly rowRule: (typeof ROW_RULES)[number];
  /** Inside a frame: the longest reading, or the shortest less its deduction. */
  readonly insideLength: (typeof INSIDE_LENGTHS)[number];
  /** Cloth of soft folds over the finished length: 2 in print. */
  readonly softFoldFullness: Thousandths;
  /** Lining folds with the face, or hangs flat behind it. */
  readonly softFoldLining: (typeof SOFT_FOLD_LININGS)[number];
  /** Side returns hang over the whole length, or as deep as the raised stack: that follows the rows (from memory). */
  readonly returnDrop: (typeof RETURN_DROPS)[number];
}

/** Defaults that are not lengths: the same in both unit systems. */
export const ROMAN_CHOICES = {
  rowRule: 'board-line',
  insideLength: 'longest',
  softFoldFullness: 2000,
  softFoldLining: 'with-face',
  returnDrop: 'length',
} as const;

export function defaultRomanShadePractice(unit: LengthUnit): RomanShadePractice {
  return { ...defaultLengths(ROMAN_LENGTHS, unit), ...ROMAN_CHOICES };
}
