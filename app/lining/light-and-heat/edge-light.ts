/**
 * Light that goes round the cloth: T_room = (1 - a) T_stack + a T_gap, a being the open share of the glass as the room
 * sees it. Gaps are small lengths that nobody measures; the figures here are typical and assumed, and the range says so.
 */
import { TICKS_PER_MM } from '#shared/length.ts';
import { piecesOf } from '#shared/treatments/panels.ts';
import type { Heading } from '#shared/words.ts';
import type { Closing } from './closing.ts';
import { assumedHoleShare, holeShare } from './count-stitches.ts';
import type { JudgedOpening, JudgedTreatment, Made } from '../judge-input.ts';
import { placeOf } from '../place-of-kind.ts';

export interface EdgeLight {
  /** Open share of the glass, 0..1. */
  readonly open: number;
  readonly range: readonly [number, number];
  readonly parts: readonly { readonly label: string; readonly share: number }[];
}

/** Clear width in mm through which daylight is seen past an edge. */
const SIDE_WITH_RETURN = 2;
const SIDE_WITHOUT_RETURN = 25;
const TOP_CLOSED = 2;
const TOP_OPEN = 30;
const BOTTOM_CLOSED = 2;
const BOTTOM_OPEN = 20;
const CENTRE_OVERLAP = 1;
const CENTRE_BUTTED = 6;
/** Cloth that reaches past the glass by this many mm halves what is seen past its edge. */
const HALVED_BY = 100;
/** Tabs leave gaps the height of a hand over a third of the width; grommets and waves stand off the rod. */
const HEADING_OPEN: Readonly<Partial<Record<Heading, number>>> = { tab: 25, grommet: 8, wave: 4 };
/** Where the sources of a gap are guesses, the share may be half or double. */
const RANGE = [0.5, 2] as const;
/** Panels that do not draw cover as much of the rod as their cloth would at this fullness. */
const STATIONARY_FULLNESS = 2.5;

/** Metres sewn through the lining for each square metre of it, by heading, where the take-off did not count them (assumed). */
const SEWN_METRES: Readonly<Record<Heading, number>> = {
  'pinch-pleat': 2,
  goblet: 2,
  'box-pleat': 2,
  'pencil-pleat': 3,
  'rod-pocket': 2,
  tab: 1.2,
  grommet: 0.8,
  wave: 1.5,
  flat: 0.8,
};

export function reckonEdgeLight(
  opening: JudgedOpening,
  treatment: JudgedTreatment,
  made: Made,
  closing: Closing,
  showsNeedleHoles: boolean,
): EdgeLight {
  const place = placeOf(treatment.kind);
  if (place !== 'window') return uncovered(place, coveredShare(opening, treatment, made));
  const width = opening.width / TICKS_PER_MM;
  const height = opening.height / TICKS_PER_MM;
  const past = (mm: number, reach: number): number => mm / (1 + Math.max(0, reach) / HALVED_BY);
  const overlapSide = (treatment.rodWidth - opening.width) / 2 / TICKS_PER_MM;
  // Inside a frame the clearance at each side is open; outside, cloth that reaches past the glass hides it.
  const sideGap = Math.max(past(closing.sides ? SIDE_WITH_RETURN : SIDE_WITHOUT_RETURN, overlapSide), -overlapSide);
  const above = treatment.mount.above / TICKS_PER_MM;
  const topGap = past(closing.top ? TOP_CLOSED : TOP_OPEN, above) + (HEADING_OPEN[treatment.heading] ?? 0);
  const below = (treatment.finishedLength - treatment.mount.above - opening.height) / TICKS_PER_MM;
  const bottomGap = past(closing.bottom ? BOTTOM_CLOSED : BOTTOM_OPEN, below) + Math.max(0, -below);
  const butted = treatment.overlap > 0 ? CENTRE_OVERLAP : CENTRE_BUTTED;
  const centreGap = piecesOf(treatment.arrangement) === 2 ? butted : 0;
  const parts = [
    { label: 'sides', share: (2 * sideGap) / width },
    { label: 'top', share: topGap / height },
    { label: 'bottom', share: bottomGap / height },
    { label: 'centre', share: centreGap / width },
    { label: 'needle holes', share: showsNeedleHoles ? openByNeedle(treatment, made) : 0 },
    { label: uncoveredLabel(treatment), share: 1 - coveredShare(opening, treatment, made) },
  ].filter((part) => part.share > 0);
  const open = Math.min(
    1,
    parts.reduce((sum, part) => sum + part.share, 0),
  );
  return { open, range: [RANGE[0] * open, Math.min(1, RANGE[1] * open)], parts };
}

function openByNeedle(treatment: JudgedTreatment, { sewn }: Made): number {
  return sewn ? holeShare(sewn) : assumedHoleShare(SEWN_METRES[treatment.heading]);
}

function uncoveredLabel(treatment: JudgedTreatment): string {
  return treatment.cafe === true ? 'above it, not covered' : 'does not draw';
}

/** What hangs before the head of a window leaves the rest of it open, and what is not at a window all of it. */
function uncovered(place: 'top' | 'board' | 'away', covered: number): EdgeLight {
  const open = 1 - covered;
  const label = place === 'away' ? 'not at the window' : 'below it, not covered';
  return { open, range: [open, open], parts: open > 0 ? [{ label, share: open }] : [] };
}

/** Share of the opening that the treatment covers when drawn; panels that do not draw cover what their cloth fills. */
export function coveredShare(opening: JudgedOpening, treatment: JudgedTreatment, made: Made): number {
  const held = (share: number): number => Math.min(1, Math.max(0, share));
  const place = placeOf(treatment.kind);
  if (place === 'away') return 0;
  if (place !== 'window') {
    const across = held(treatment.rodWidth / opening.width);
    return across * held((treatment.finishedLength - treatment.mount.above) / opening.height);
  }
  if (treatment.cafe === true) return held(treatment.finishedLength / opening.height);
  if (treatment.arrangement !== 'pair-stationary') return 1;
  // Panels that do not draw stand before the wall beside the window first, and before the glass with what is left.
  const spread = (treatment.rodWidth * made.fullnessMade) / STATIONARY_FULLNESS;
  const beside = Math.max(0, treatment.rodWidth - opening.width);
  return held((spread - beside) / opening.width);
}

/** Light that reaches the room through cloth and edges together. */
export function lightInRoom(throughStack: number, throughGap: number, open: number): number {
  return (1 - open) * throughStack + open * throughGap;
}
