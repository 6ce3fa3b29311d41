/** The level of a room's pattern, from what was typed so far: the first treatment that gives one decides for the others. */
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { RoomDocument } from '#shared/records/records.ts';
import type { TreatmentMake } from '#shared/records/treatment-make.ts';
import { readAt } from './form-path.ts';
import { formOf } from './kind-form.ts';

export function levelOfRoom({ openings, ceiling }: Pick<RoomDocument, 'openings' | 'ceiling'>): Ticks | null {
  const levels = openings.flatMap(({ treatments }) => treatments.map(({ make }) => levelOf(make, ceiling)));
  return levels.find((level) => level !== null) ?? null;
}

function levelOf(make: TreatmentMake, ceiling: Ticks | null): Ticks | null {
  const form = formOf(make);
  if (readAt(form, 'pattern.place') !== 'level') return null;
  const level = readAt(form, 'pattern.level');
  if (typeof level === 'number') return ticks(level);
  const below = readAt(form, 'pattern.belowCeiling');
  return typeof below === 'number' && ceiling !== null ? ticks(ceiling - below) : null;
}
