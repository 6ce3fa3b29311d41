/** What a judgement looks at: the stack, and just as much of its window and make as the readings need. */
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import type { Opening, PanelsTreatment, Room } from '#shared/job.ts';
import type { Ticks } from '#shared/length.ts';

export type JudgedRoom = Pick<Room, 'use' | 'facing' | 'climate'>;
export type JudgedOpening = Pick<Opening, 'width' | 'height' | 'sill' | 'glazing' | 'heatSourceBelow'>;
export type JudgedTreatment = Pick<
  PanelsTreatment,
  'kind' | 'heading' | 'arrangement' | 'mount' | 'rodWidth' | 'finishedLength' | 'returns' | 'overlap'
>;

export interface Made {
  /** Fullness that results from whole widths, unrounded. */
  readonly fullnessMade: number;
  /** Widths of the whole treatment in halves (8 is 4 widths); null when railroaded. */
  readonly halfWidths: number | null;
  /** Rod face, overlap and returns of all pieces together. */
  readonly finishedWidth: Ticks;
  /** The lining is cut in the same widths as the face, so that its seams fall behind the face's. */
  readonly liningMatchesFace: boolean;
}

export interface JudgeInput {
  readonly face: FaceCloth;
  /** The layers behind the face, room to street; empty is unlined. */
  readonly behind: readonly BackCloth[];
  readonly room: JudgedRoom;
  readonly opening: JudgedOpening;
  readonly treatment: JudgedTreatment;
  readonly made: Made;
}
