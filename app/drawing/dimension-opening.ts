/** Which measurements of an opening are written on the sheet, and in which lane beside or above it they lie. */
import { formatLength } from '#shared/format-length.ts';
import type { LengthUnit } from '#shared/length.ts';
import { widthOfFigures } from './draw-dimension.ts';
import type { Figures } from './draw-dimension.ts';
import { placeRuns } from './draw-bay.ts';
import { INCH } from './measure-given.ts';
import type { Measure } from './measure-given.ts';
import type { ReckonedTreatment } from './reckoned.ts';
import type { ReckonedOpening } from './reckon-opening.ts';
import type { SheetStyle } from './sheet-style.ts';

export interface Wording {
  readonly units: LengthUnit;
  readonly decimal: '.' | ',';
}

/** One measured stretch, in ticks: from the floor for upright lanes, from the opening's left edge for lanes across. */
export interface Stretch extends Figures {
  readonly from: number;
  readonly to: number;
}
export type Lane = readonly Stretch[];

/** A hem nearer the floor than this is seen but not measured: its figure would stand on the floor line. */
const LEAST_CLEARANCE = 2 * INCH;

export function sayLength(length: number, wording: Wording): string {
  return formatLength(length, wording.units, { fractions: 'set', decimal: wording.decimal });
}

function stretch(measure: Measure, from: number, to: number, wording: Wording): Stretch[] {
  if (measure.given === null || from === to) return [];
  return [{ from, to, words: sayLength(measure.given, wording), sure: measure.sure }];
}

/** Lanes from the opening outwards: the finished length (a lane for each treatment), then the opening's own chain from the floor. */
export function planUprightLanes(opening: ReckonedOpening, wording: Wording): readonly Lane[] {
  const standing = opening.furniture.map((piece): Lane =>
    piece.kind === 'bed-skirt'
      ? stretch(piece.drop, piece.hem, piece.hem + piece.drop.ticks, wording)
      : stretch(piece.length, piece.hem, piece.top, wording),
  );
  if (!opening.window) return standing.filter((lane) => lane.length > 0);
  const head = opening.sill.ticks + opening.height.ticks;
  const lengths = opening.treatments.map((treatment): Lane => {
    const clearance: Stretch[] =
      isMeasured(opening, treatment) && treatment.hem >= LEAST_CLEARANCE
        ? [{ from: 0, to: treatment.hem, words: sayLength(treatment.hem, wording), sure: true }]
        : [];
    return [...stretch(treatment.length, treatment.hem, treatment.top, wording), ...clearance];
  });
  const tails = opening.treatments.map((treatment): Lane => {
    if (treatment.kind !== 'swags' || treatment.cascades === null) return [];
    const { longest } = treatment.cascades;
    return stretch(longest, treatment.top - longest.ticks, treatment.top, wording);
  });
  const above = opening.treatments.flatMap((treatment) =>
    treatment.source.mount.where === 'wall' && treatment.top > head && isAtMount(treatment)
      ? stretch(treatment.above, head, treatment.top, wording)
      : [],
  );
  const chain: Lane = [
    ...stretch(opening.sill, 0, opening.sill.ticks, wording),
    ...stretch(opening.height, opening.sill.ticks, head, wording),
    ...above.slice(0, 1),
  ];
  return [...lengths, ...tails, chain].filter((lane) => lane.length > 0);
}

/** Lanes from the opening upwards: the opening's width, then each rod's face. */
export function planAcrossLanes(opening: ReckonedOpening, wording: Wording): readonly Lane[] {
  const standing = opening.furniture.map((piece): Lane => {
    if (piece.kind === 'bed-skirt') {
      return [piece.sideView, piece.footView].flatMap((view) =>
        stretch(view.wide, piece.at + view.at, piece.at + view.at + view.wide.ticks, wording),
      );
    }
    const from = piece.at + (piece.span - piece.rod.ticks) / 2;
    return stretch(piece.rod, from, from + piece.rod.ticks, wording);
  });
  if (!opening.window) return standing.filter((lane) => lane.length > 0);
  const middle = opening.width.ticks / 2;
  const rods = opening.treatments.map((treatment) =>
    stretch(treatment.rod, middle - treatment.rod.ticks / 2, middle + treatment.rod.ticks / 2, wording),
  );
  const runs = opening.treatments.map((treatment): Lane => {
    if (treatment.kind !== 'panels') return [];
    const start = middle - treatment.rod.ticks / 2;
    const given = treatment.source.bay?.runs ?? [];
    return placeRuns(treatment).flatMap((run, place) => {
      const length = given[place] ?? null;
      if (length === null) return [];
      return [{ from: start + run.from, to: start + run.to, words: sayLength(length, wording), sure: run.toScale }];
    });
  });
  return [stretch(opening.width, 0, opening.width.ticks, wording), ...runs, ...rods, ...standing].filter(
    (lane) => lane.length > 0,
  );
}

/** True when the hem's height over the floor follows from what was given alone. */
function isMeasured(opening: ReckonedOpening, treatment: ReckonedTreatment): boolean {
  const fromFloor = opening.sill.sure && opening.height.sure && treatment.above.sure && isAtMount(treatment);
  return treatment.kind === 'panels' && treatment.length.sure && treatment.source.mount.where === 'wall' && fromFloor;
}

/** False where its height over the floor was measured, or follows from the sill, and not from the frame. */
function isAtMount(treatment: ReckonedTreatment): boolean {
  if (treatment.kind !== 'panels') return true;
  const { topFromFloor, cafe } = treatment.source;
  return (topFromFloor === undefined || topFromFloor === null) && cafe !== true;
}

/** Air between an opening and its first lane, and between lanes. */
export const LANE_AIR = 8;

/** Where the upright lanes lie, as distances from the opening's edge, and the breadth that all of them need. */
export function spaceUprightLanes(
  lanes: readonly Lane[],
  style: SheetStyle,
): { at: readonly number[]; breadth: number } {
  const at: number[] = [];
  let reach = LANE_AIR;
  for (const lane of lanes) {
    const breadth = Math.max(10, ...lane.map((part) => widthOfFigures(part.words, style)));
    at.push(reach + breadth / 2);
    reach += breadth + LANE_AIR;
  }
  // Beside the outermost lane stand figures that are too long for their stretch.
  const beside = Math.max(0, ...(lanes.at(-1) ?? []).map((part) => widthOfFigures(part.words, style)));
  return { at, breadth: lanes.length === 0 ? 0 : reach + beside / 2 + 2 };
}
