/** Panels of the wire form as the engines take them: finished length and rod face found where they were not given. */
import { HANG_SETTINGS, piecesOf } from '../treatments/panels.ts';
import type { Bay, Hang, PanelsTreatment } from '../treatments/panels.ts';
import type { TreatmentBase } from '../treatments/treatment-base.ts';
import { lengthFrom, ticks, ticksPer } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import type { Practice } from '../practice.ts';
import type { FaceFamily } from '../words.ts';
import { readLength, readThousandths } from './read-length.ts';
import { readPattern, topOfMount } from './read-pattern.ts';
import type { ReadPlace } from './read-place.ts';
import { settlePractice } from './settle-practice.ts';
import type { WirePanels } from './wire-panels.ts';

export function readPanels(
  wire: WirePanels,
  given: TreatmentBase,
  unit: LengthUnit,
  place: ReadPlace,
  family: FaceFamily | null,
): PanelsTreatment {
  const base = { ...given, practice: settlePractice(wire, given.practice, family) };
  const length = (value: number | string | undefined): Ticks =>
    value === undefined ? ticks(0) : readLength(value, unit);
  const hang = wire.hang ? readHang(wire.hang, base.practice, unit, place.sill) : null;
  const bay = wire.bay ? readBay(wire.bay, unit) : null;
  return {
    ...base,
    kind: 'panels',
    heading: wire.heading,
    arrangement: wire.arrangement,
    mount: { where: wire.mount?.where ?? 'wall', above: length(wire.mount?.above) },
    rodWidth: bay ? rodOfBay(bay) : length(wire.rodWidth),
    finishedLength: hang ? lengthOfHang(hang) : length(wire.finishedLength),
    fullness: typeof wire.fullness === 'number' ? readThousandths(wire.fullness) : base.practice.fullness[wire.heading],
    fullnessGiven: typeof wire.fullness === 'number',
    returns: readReturns(wire, unit),
    overlap: length(wire.overlap),
    halfWidths: typeof wire.widths === 'number' ? Math.round(wire.widths * 2) : null,
    pieces: wire.panelsOnRod ?? piecesOf(wire.arrangement),
    fingers: wire.fingers ?? 3,
    hang,
    bay,
    arch: wire.arch ? length(wire.arch.rise) : null,
    bands: (wire.bands ?? []).map((band) => ({ edge: band.edge, cloth: band.cloth, width: length(band.width) })),
    rodDiameter: wire.rodDiameter === undefined ? null : length(wire.rodDiameter),
    header: length(wire.header),
    cafe: wire.cafe ?? false,
    pattern: wire.pattern ? readPattern(wire.pattern, unit, topOf(wire, hang, unit, place), place) : null,
    pleatToPattern: wire.pleatToPattern ?? false,
    rod: wire.rod ?? null,
    motor: wire.motor?.at ?? null,
    weightedEdge: wire.weightedEdge ?? false,
  };
}

/** Top of the heading above the floor: from the fixing, from the ceiling, or from the rod over the frame. */
function topOf(wire: WirePanels, hang: Hang | null, unit: LengthUnit, place: ReadPlace): Ticks | null {
  return hang === null ? topOfMount(wire.mount, unit, place) : ticks(hang.fixing - hang.headingBelow);
}

/** One number stands for each side that has a return; a single panel has its one on the left. */
function readReturns(wire: WirePanels, unit: LengthUnit): PanelsTreatment['returns'] {
  if (wire.return === undefined) return { left: ticks(0), right: ticks(0) };
  if (typeof wire.return === 'object')
    return { left: readLength(wire.return.left, unit), right: readLength(wire.return.right, unit) };
  const each = readLength(wire.return, unit);
  return { left: each, right: wire.arrangement === 'single' ? ticks(0) : each };
}

function readHang(
  wire: NonNullable<WirePanels['hang']>,
  practice: Practice,
  unit: LengthUnit,
  sill: Ticks | null,
): Hang {
  const readings = (Array.isArray(wire.fixing) ? wire.fixing : [wire.fixing]).map((each) => readLength(each, unit));
  const below = wire.headingBelow === undefined ? 0 : readLength(wire.headingBelow, unit);
  const above = wire.headingAbove === undefined ? 0 : readLength(wire.headingAbove, unit);
  return {
    fixing: ticks(Math.min(...readings)),
    readings,
    headingBelow: below - above,
    to: wire.to,
    by: wire.by === undefined ? practice.hang[HANG_SETTINGS[wire.to]] : readLength(wire.by, unit),
    sill: sill ?? ticks(0),
  };
}

/** Fixing height, less the drop to the top of the heading, less where the hem ends. Never below a tick. */
export function lengthOfHang({ fixing, headingBelow, to, by, sill }: Hang): Ticks {
  const top = fixing - headingBelow;
  const lying = 0 - by;
  const end = {
    floor: by,
    break: lying,
    puddle: lying,
    'full-puddle': lying,
    sill: sill + by,
    apron: sill - by,
  }[to];
  return ticks(Math.max(1, top - end));
}

function readBay(wire: NonNullable<WirePanels['bay']>, unit: LengthUnit): Bay {
  return {
    runs: wire.runs.map((run) => readLength(run, unit)),
    turns: wire.turns,
    projection: readLength(wire.projection, unit),
  };
}

/** What a run loses at one corner: projection × tan(half the turn), to the nearest tick. */
export function lostAtCorner(projection: Ticks, turn: number): Ticks {
  return lengthFrom((projection * Math.tan((turn * Math.PI) / 360)) / ticksPer('mm'), 'mm');
}

/** Rod face along the bay: every run less what it loses at the corners that it touches. */
export function rodOfBay({ runs, turns, projection }: Bay): Ticks {
  const along = runs.reduce((sum, run) => sum + run, 0);
  const lost = turns.reduce((sum, turn) => sum + 2 * lostAtCorner(projection, turn), 0);
  return ticks(Math.max(1, along - lost));
}
