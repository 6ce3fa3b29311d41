/** One treatment in one of its options, as the joint cut plan takes it: what it was taken off as, and its cuts. */
import type { Cloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import { ticks } from '#shared/length.ts';
import type { TakeoffLine } from '#shared/result.ts';
import type { CutGroup } from '#app/estimating/cut-group.ts';
import type { PlannedCut } from './plan-input.ts';
import { placeAfter } from './repeat-circle.ts';
import { halfDown } from './round-plan.ts';

export interface PlannedTreatment {
  /** Path in the job file, for faults: `rooms[0].openings[1].treatments[0]`. */
  readonly key: string;
  /** `Nursery/East window/Panels`: names the set. */
  readonly path: string;
  readonly room: string;
  readonly opening: string;
  readonly name: string;
  readonly takeoff: readonly TakeoffLine[];
  readonly cuts: readonly CutGroup[];
}

/** What the cuts of each are called on a drawing, by path: the window, and more where that says too little. */
export function labelTreatments(treatments: readonly PlannedTreatment[]): ReadonlyMap<string, string> {
  return new Map(
    treatments.map((treatment) => {
      const { room, opening, name, path } = treatment;
      const alike = treatments.filter((each) => each.opening === opening);
      const place = alike.some((each) => each.room !== room) ? `${room}, ${opening}` : opening;
      const beside = alike.some((each) => each.room === room && each.path !== path);
      return [path, beside ? `${place}, ${name}` : place];
    }),
  );
}

/** The cuts of a treatment from one cloth, numbered from 1 in the order of its groups. */
export function listTreatmentCuts(treatment: PlannedTreatment, cloth: Cloth, label: string): PlannedCut[] {
  const named = new Set(treatment.cuts.map(({ name }) => name)).size > 1;
  let count = 0;
  return treatment.cuts.flatMap((group) =>
    Array.from({ length: group.count }, () => {
      count += 1;
      const called = `${label}${named ? `, ${group.name}` : ''} ${count}`;
      return cutOf(group, cloth, { id: nameCut(treatment.path, count), set: treatment.path, label: called });
    }),
  );
}

/** Id of a cut: it stays while the treatment keeps its name and has so many cuts. */
export function nameCut(path: string, cut: number): string {
  return `${path}#${cut}`;
}

function cutOf(
  group: CutGroup,
  cloth: Cloth,
  named: { readonly id: string; readonly set: string; readonly label: string },
): PlannedCut {
  const across = acrossOf(group, cloth.usableWidth);
  const phase = placeOf(group, cloth);
  const side = across !== 'whole' && group.side !== undefined ? { side: group.side } : {};
  const mayTurn = group.turnable && phase === null && group.side === undefined && !runsOneWay(cloth);
  return {
    ...named,
    ...side,
    length: group.length,
    across,
    phase,
    direction: mayTurn ? 'either' : 'one-way',
    mayTurn,
  };
}

function acrossOf(group: CutGroup, width: Ticks): PlannedCut['across'] {
  if (group.half === true) return 'half';
  return group.width === null || group.width === width ? 'whole' : group.width;
}

/** Cuts that are only alike start level, so that every treatment of a house may share the same places in the repeat. */
function placeOf(group: CutGroup, cloth: Cloth): Ticks | null {
  if (cloth.repeat === null || group.phase === 'any') return null;
  const size = cloth.repeat.vertical;
  const phase = group.phase ?? 0;
  // Half of an odd repeat falls between two ticks: every half-drop takes the one below.
  const place = Math.abs(2 * phase - size) <= 1 ? halfDown(size) : phase;
  return ticks(placeAfter(place, 0, size));
}

/** A nap or a napped side shades one way; so does what its supplier says of it. */
export function runsOneWay(cloth: Cloth): boolean {
  const napped = ['velvet', 'combination', 'blackout-napped'];
  return cloth.supply?.oneWay === true || napped.includes(cloth.family);
}
