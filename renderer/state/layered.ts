/**
 * Several treatments at one opening know of each other: what hangs over another stands clear of it. Common practice: a
 * drapery over another returns 6 to 6 1/2 in, a valance, cornice or swags the return underneath and 2 in more.
 */
import { formatLength } from '#shared/format-length.ts';
import { ticks } from '#shared/length.ts';
import type { LengthUnit, Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { OpeningDocument, TreatmentRecord } from '#shared/records/records.ts';
import type { TreatmentMake } from '#shared/records/treatment-make.ts';
import { readAt, writeAt } from './form-path.ts';
import { countedSides } from './write-sides.ts';

const TOPS = ['valance', 'cornice', 'swags'] as const;
type TopKind = (typeof TOPS)[number];

function isTop(kind: TreatmentMake['kind']): kind is TopKind {
  return TOPS.some((each) => each === kind);
}

function isInside(make: TreatmentMake): boolean {
  return make.kind === 'panels' ? make.mountWhere === 'inside' : readAt(make.form, 'mount.where') === 'inside';
}

/** How far it stands from the wall; null where it stands in the frame or nothing is written. */
export function standsOut(make: TreatmentMake, practice: Practice): Ticks | null {
  if (isInside(make)) return null;
  if (make.kind === 'panels') {
    const sides = [make.returnLeft, make.returnRight].filter((side) => side !== null);
    return sides.length === 0 ? null : ticks(Math.max(...sides));
  }
  const sides = countedSides(make.form['return']);
  if (sides) return ticks(Math.max(sides.left, sides.right));
  if (make.kind === 'roman-shade') return practice.romanShade.boardDepth;
  const over = make.form['over'];
  if (isTop(make.kind) && typeof over === 'number') return ticks(over + practice[make.kind].overClearance);
  return make.kind === 'cornice' ? practice.cornice.boardDepth : null;
}

/** What hangs between it and the glass: panels and shades under a top treatment; of panels, what stands after them. */
export function underneath(opening: OpeningDocument, treatment: TreatmentRecord): readonly TreatmentRecord[] {
  const { kind } = treatment.make;
  const at = opening.treatments.findIndex((each) => each.id === treatment.id);
  const others = opening.treatments.filter((each) => each.id !== treatment.id && !isInside(each.make));
  const hangs = others.filter(({ make }) => make.kind === 'panels' || make.kind === 'roman-shade');
  if (isTop(kind)) return hangs;
  if (kind !== 'panels') return [];
  return hangs.filter(
    (each) => each.make.kind === 'roman-shade' || opening.treatments.findIndex(({ id }) => id === each.id) > at,
  );
}

export interface LargerReturn {
  readonly says: string;
  readonly button: string;
  readonly make: TreatmentMake;
}

/** The least return over something that stands `by` from the wall. */
function neededOver(make: TreatmentMake, under: TreatmentMake, by: Ticks, practice: Practice): Ticks {
  if (isTop(make.kind)) return ticks(by + practice[make.kind].overClearance);
  const clear = by + practice.layers.clear;
  return ticks(under.kind === 'panels' ? Math.max(practice.layers.drapery, clear) : clear);
}

/** The return that clears what hangs underneath; null where nothing does, or nothing is written of it yet. */
export function returnOver(opening: OpeningDocument, treatment: TreatmentRecord, practice: Practice): Ticks | null {
  const needed = underneath(opening, treatment).flatMap(({ make }) => {
    const by = standsOut(make, practice);
    return by === null || by === 0 ? [] : [neededOver(treatment.make, make, by, practice)];
  });
  return needed.length === 0 ? null : ticks(Math.max(...needed));
}

/** Null where nothing hangs underneath, or the return is large enough. */
export function largerReturn(
  opening: OpeningDocument,
  treatment: TreatmentRecord,
  practice: Practice,
  unit: LengthUnit,
): LargerReturn | null {
  const { make } = treatment;
  if (isInside(make)) return null;
  const out = underneath(opening, treatment)
    .map((under) => ({ under, by: standsOut(under.make, practice) }))
    .filter((each): each is { under: TreatmentRecord; by: Ticks } => each.by !== null && each.by > 0)
    .sort((a, b) => b.by - a.by)[0];
  if (!out) return null;
  const needed = neededOver(make, out.under.make, out.by, practice);
  const own = standsOut(make, practice);
  if (own !== null && own >= needed) return null;
  const say = (length: Ticks): string => `${formatLength(length, unit, { fractions: 'set', decimal: '.' })} ${unit}`;
  const less = own === null || own === 0 ? 'It has no return yet' : `Its return is ${say(own)}`;
  return {
    says: `${out.under.name}, underneath, reaches ${say(out.by)} from the wall. ${less}: to hang clear it needs ${say(needed)}.`,
    button: `Take a return of ${say(needed)}`,
    make: withReturn(make, needed, out.by),
  };
}

function withReturn(make: TreatmentMake, needed: Ticks, over: Ticks): TreatmentMake {
  if (make.kind === 'panels')
    return {
      ...make,
      returnLeft: needed,
      returnRight: make.arrangement === 'single' ? make.returnRight : needed,
    };
  // A top treatment reckons its return from what it hangs over, unless one is written.
  const form = isTop(make.kind) ? writeAt(make.form, 'over', over) : make.form;
  return { ...make, form: form['return'] === undefined ? form : writeAt(form, 'return', needed) };
}
