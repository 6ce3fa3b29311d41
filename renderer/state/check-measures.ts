/**
 * What is impossible or merely unlikely in what was measured, told beside the field it stands in. It never changes a
 * number. The job file's own checks are told too (`price-document.ts`); here stands what needs the window round it.
 */
import { formatLength } from '#shared/format-length.ts';
import { TICKS_PER_INCH } from '#shared/length.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { OpeningRecord, RoomRecord, TreatmentRecord } from '#shared/records/records.ts';
import type { PanelsMake } from '#shared/records/treatment-make.ts';

export interface FieldNote {
  readonly field: string;
  readonly level: 'fault' | 'warning';
  readonly says: string;
}

/**
 * Hem to floor, or to the sill of an inside mount, in ticks; null while something that it needs is missing. Of panels
 * whose length is written: where it is found from the fixing, the hem is where it was asked to be.
 */
export function clearanceOf(room: RoomRecord, opening: OpeningRecord, treatment: TreatmentRecord): number | null {
  const { make } = treatment;
  const { sill, height } = opening;
  if (make.kind !== 'panels' || make.finishedLength === null || make.extras['hang']) return null;
  if (make.mountWhere === 'ceiling') return room.ceiling === null ? null : room.ceiling - make.finishedLength;
  if (sill === null || height === null) return null;
  const above = make.mountWhere === 'inside' ? 0 : (make.mountAbove ?? 0);
  return sill + height + above - make.finishedLength;
}

/** Cloth that trails further than this was hardly meant to (common practice: puddles of up to 6 in or so). */
const MOST_TRAIL = 8 * TICKS_PER_INCH;
/** A hem between sill and floor looks like a mistake when it is further than this from both. */
const NEITHER = 9 * TICKS_PER_INCH;
/** Openings beyond these are rather a slip of the keyboard. */
const LEAST_OPENING = 8 * TICKS_PER_INCH;
const MOST_OPENING = 320 * TICKS_PER_INCH;
const LEAST_CEILING = 72 * TICKS_PER_INCH;
const MOST_CEILING = 320 * TICKS_PER_INCH;

export function checkRoom(room: RoomRecord, unit: LengthUnit): FieldNote[] {
  const { ceiling } = room;
  if (ceiling === null) return [];
  if (ceiling < LEAST_CEILING || ceiling > MOST_CEILING)
    return [
      { field: 'ceiling', level: 'warning', says: `A ceiling at ${say(ceiling, unit)} is unlikely. Kept as written.` },
    ];
  return [];
}

export function checkOpening(room: RoomRecord, opening: OpeningRecord, unit: LengthUnit): FieldNote[] {
  const notes: FieldNote[] = [];
  const { width, height, sill } = opening;
  for (const [field, value] of [
    ['width', width],
    ['height', height],
  ] as const) {
    if (value === 0)
      notes.push({ field, level: 'fault', says: 'Zero cannot be measured. Give its size, for example 60.' });
    else if (value !== null && (value < LEAST_OPENING || value > MOST_OPENING))
      notes.push({ field, level: 'warning', says: `${say(value, unit)} is unlikely for an opening. Kept as written.` });
  }
  if (room.ceiling !== null && sill !== null && height !== null && sill + height > room.ceiling)
    notes.push({
      field: 'height',
      level: 'fault',
      says: `Sill and height reach ${say(sill + height, unit)}, above the ceiling at ${say(room.ceiling, unit)}. Measure again.`,
    });
  return notes;
}

export function checkTreatment(
  room: RoomRecord,
  opening: OpeningRecord,
  treatment: TreatmentRecord,
  unit: LengthUnit,
): FieldNote[] {
  const { make } = treatment;
  if (make.kind !== 'panels') return [];
  const notes: FieldNote[] = [];
  const warn = (field: string, says: string): void => {
    notes.push({ field, level: 'warning', says });
  };
  const { width, sill, height } = opening;
  if (
    make.rodWidth !== null &&
    make.rodWidth > 0 &&
    width !== null &&
    make.mountWhere !== 'inside' &&
    make.rodWidth < width
  )
    warn('rodWidth', `Narrower than the opening by ${say(width - make.rodWidth, unit)}: glass shows at the sides.`);
  if (make.rodWidth !== null && width !== null && width > 0 && make.mountWhere === 'inside' && make.rodWidth > width)
    warn(
      'rodWidth',
      `Wider than the opening by ${say(make.rodWidth - width, unit)}: it does not fit inside the frame.`,
    );
  if (
    make.mountWhere === 'wall' &&
    room.ceiling !== null &&
    sill !== null &&
    height !== null &&
    sill + height + (make.mountAbove ?? 0) > room.ceiling
  )
    warn('mountAbove', `The rod would stand above the ceiling at ${say(room.ceiling, unit)}.`);
  if (make.extras['cafe'] !== true) notes.push(...checkHem(room, opening, treatment, make, unit));
  return notes;
}

function checkHem(
  room: RoomRecord,
  opening: OpeningRecord,
  treatment: TreatmentRecord,
  make: PanelsMake,
  unit: LengthUnit,
): FieldNote[] {
  const clearance = clearanceOf(room, opening, treatment);
  const length = make.finishedLength;
  if (clearance === null || length === null || length === 0) return [];
  const warn = (says: string): FieldNote[] => [{ field: 'finishedLength', level: 'warning', says }];
  const { sill, height } = opening;
  const word = `Is ${say(length, unit)} right?`;
  if (clearance < -MOST_TRAIL) return warn(`It would trail ${say(-clearance, unit)} on the floor. ${word}`);
  if (sill === null || height === null) return [];
  if (clearance > sill + height) return warn(`The hem would end above the window. ${word}`);
  if (clearance > sill + TICKS_PER_INCH)
    return warn(`The hem ends ${say(clearance - sill, unit)} above the sill: the window shows below it. ${word}`);
  const belowSill = sill - clearance;
  if (make.mountWhere !== 'inside' && clearance > NEITHER && belowSill > NEITHER)
    return warn(`The hem ends ${say(clearance, unit)} above the floor, at neither sill nor floor. ${word}`);
  return [];
}

function say(length: number, unit: LengthUnit): string {
  return `${formatLength(length, unit, { fractions: 'set', decimal: '.' })} ${unit}`;
}
