/**
 * Usual measurements for what is still empty (all common practice): the rod 6 in past the opening on each side and 4 in
 * above it, returns and overlap of 3 1/2 in (over another
 * treatment as far as clears it), the hem half an inch off the floor. Metric households get round figures.
 */
import { lengthFrom, ticks } from '#shared/length.ts';
import type { LengthUnit, Ticks } from '#shared/length.ts';
import { returnSides } from '#shared/treatments/panels.ts';
import type { Practice } from '#shared/practice.ts';
import type { OpeningDocument, OpeningRecord, RoomRecord, TreatmentRecord } from '#shared/records/records.ts';
import type { PanelsMake } from '#shared/records/treatment-make.ts';
import { returnOver } from './layered.ts';

interface Usual {
  readonly past: Ticks;
  readonly above: Ticks;
  readonly side: Ticks;
  readonly overlap: Ticks;
  readonly clear: Ticks;
}

function usualOf(unit: LengthUnit): Usual {
  const inches = unit === 'in';
  const length = (inch: number, centimetres: number): Ticks =>
    lengthFrom(inches ? inch : centimetres, inches ? 'in' : 'cm');
  return {
    past: length(6, 15),
    above: length(4, 10),
    side: length(3.5, 9),
    overlap: length(3.5, 9),
    clear: length(0.5, 1.5),
  };
}

/** Only fields that are empty now; a length that cannot be reckoned yet stays empty. Of panels; nothing of other kinds. */
export function suggestMake(
  room: RoomRecord,
  opening: OpeningDocument,
  treatment: TreatmentRecord,
  unit: LengthUnit,
  practice: Practice | null = null,
): Partial<PanelsMake> {
  const { make } = treatment;
  if (make.kind !== 'panels') return {};
  const usual = usualOf(unit);
  const inside = make.mountWhere === 'inside';
  const above = make.mountAbove ?? (make.mountWhere === 'wall' ? usual.above : ticks(0));
  const rod = opening.width === null ? null : ticks(opening.width + (inside ? 0 : 2 * usual.past));
  const over = practice === null ? null : returnOver(opening, treatment, practice);
  const out = over === null ? usual.side : ticks(Math.max(over, usual.side));
  const side = inside || make.arrangement === 'single' ? ticks(0) : out;
  const sides = returnSides(make.arrangement);
  return {
    mountAbove: make.mountAbove ?? above,
    // A bay and a measured fixing give rod face and length themselves.
    ...(make.extras['bay'] ? {} : { rodWidth: make.rodWidth ?? rod }),
    ...(make.extras['hang']
      ? {}
      : { finishedLength: make.finishedLength ?? usualLength(room, opening, make, above, usual) }),
    returnLeft: make.returnLeft ?? (inside ? ticks(0) : out),
    returnRight: make.returnRight ?? (sides === 1 ? ticks(0) : side),
    ...(make.arrangement === 'pair' ? { overlap: make.overlap ?? usual.overlap } : {}),
  };
}

function usualLength(
  room: RoomRecord,
  opening: OpeningRecord,
  make: PanelsMake,
  above: Ticks,
  usual: Usual,
): Ticks | null {
  const { sill, height } = opening;
  if (make.mountWhere === 'ceiling') return room.ceiling === null ? null : ticks(room.ceiling - usual.clear);
  if (height === null) return null;
  if (make.mountWhere === 'inside') return height;
  return sill === null ? null : ticks(sill + height + above - usual.clear);
}
