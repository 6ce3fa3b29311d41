/** What a judgement looks at: the stack, and just as much of its window and make as the readings need. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Opening, Room } from '#shared/job.ts';
import type { LengthUnit, Ticks } from '#shared/length.ts';
import type { Locale } from '#shared/locale.ts';
import type { RomanStyle, ShadeLift } from '#shared/treatments/roman-shade.ts';
import type { Mount } from '#shared/treatments/treatment-base.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import type { Arrangement, Heading } from '#shared/words.ts';
import type { MakeKind } from './body.ts';
import type { Sewing } from './light-and-heat/count-stitches.ts';

/** Wishes that are not told are not asked for. */
export type JudgedRoom = Pick<Room, 'use' | 'facing' | 'climate'> & Partial<Pick<Room, 'privacy' | 'budget'>>;
export interface JudgedOpening extends Pick<Opening, 'sill' | 'glazing' | 'heatSourceBelow'> {
  readonly width: Ticks;
  readonly height: Ticks;
}

export interface JudgedShade {
  readonly style: RomanStyle;
  readonly lift: ShadeLift;
  /** Sewn through the body, of one shade; null before the take-off. */
  readonly rings: number | null;
  readonly ribs: number | null;
}

/** A treatment as the readings see it; lengths in ticks. What is optional belongs to some kinds alone. */
export interface JudgedTreatment {
  readonly kind: TreatmentKind;
  /** The heading that it has or hangs like. */
  readonly heading: Heading;
  readonly arrangement: Arrangement;
  readonly mount: Mount;
  /** Width between its ends, before returns and overlap. */
  readonly rodWidth: Ticks;
  /** From the top to the lowest hem. */
  readonly finishedLength: Ticks;
  readonly returns: { readonly left: Ticks; readonly right: Ticks };
  readonly overlap: Ticks;
  /** What it asks of its cloth; by the heading where it is not told. */
  readonly make?: MakeKind;
  /** Hangs from a board or box, which closes its top. */
  readonly onBoard?: boolean;
  /** Covers the lower part of the window alone. */
  readonly cafe?: boolean;
  /** Of a Roman shade. */
  readonly shade?: JudgedShade;
  /** Cascades and jabots, and the cloth of their own that lines them; null where the layers behind do. */
  readonly tails?: { readonly lining: Cloth | null };
  /** A liner hangs with the shower curtain. */
  readonly liner?: boolean;
}

export interface Made {
  /** Fullness that results from whole widths, unrounded. */
  readonly fullnessMade: number;
  /** Widths of the whole treatment in halves (8 is 4 widths); null when railroaded. */
  readonly halfWidths: number | null;
  /** Rod face, overlap and returns of all pieces together. */
  readonly finishedWidth: Ticks;
  /** The lining is cut in the same widths as the face, so that its seams fall behind the face's. */
  readonly liningMatchesFace: boolean;
  /** Stitches through the layers behind, counted from the take-off; not told, they are assumed by the heading. */
  readonly sewn?: Sewing | null;
  /** Grams of cloth of one treatment as the take-off weighs it, hems included; not told, it is reckoned flat. */
  readonly grams?: number;
  /** Brackets that hold one treatment; not told, no weight is given for each. */
  readonly brackets?: number;
}

export interface JudgeInput {
  readonly face: FaceCloth;
  /** The layers behind the face, room to street; empty is unlined. */
  readonly behind: readonly BackCloth[];
  readonly room: JudgedRoom;
  readonly opening: JudgedOpening;
  readonly treatment: JudgedTreatment;
  readonly made: Made;
  /** A board or box closes the top over it: another treatment of the same opening. */
  readonly pelmet?: boolean;
  /** What texts give weights and lengths in; not told, inches and pounds. */
  readonly units?: LengthUnit;
  /** Whose cord law is named beside the caution; not told, none. */
  readonly locale?: Locale;
}
