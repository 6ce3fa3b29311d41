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

/** What the cuts of a treatment are called on a drawing: the window, and more where that says too little. */
export interface TreatmentLabel {
  readonly place: string;
  /** True where another treatment of the same opening lies on the cloth too. */
  readonly isShared: boolean;
}

/** By path. */
export function labelTreatments(treatments: readonly PlannedTreatment[]): ReadonlyMap<string, TreatmentLabel> {
  return new Map(
    treatments.map(({ room, opening, path }) => {
      const alike = treatments.filter((each) => each.opening === opening);
      const place = alike.some((each) => each.room !== room) ? `${room}, ${opening}` : opening;
      return [path, { place, isShared: alike.some((each) => each.room === room && each.path !== path) }];
    }),
  );
}

/** The cuts of a treatment from one cloth, numbered from 1 in the order of its groups. */
export function listTreatmentCuts(treatment: PlannedTreatment, cloth: Cloth, label: TreatmentLabel): PlannedCut[] {
  const isNamed = new Set(treatment.cuts.map(({ name }) => name)).size > 1;
  let count = 0;
  return treatment.cuts.flatMap((group) => {
    // "Swags, swags on the bias" says it twice.
    const isSaid = isNamed && group.name.toLowerCase().startsWith(treatment.name.toLowerCase());
    const own = label.isShared && !isSaid ? [treatment.name] : [];
    const called = [label.place, ...own, ...(isNamed ? [group.name] : [])].join(', ');
    return Array.from({ length: group.count }, () => {
      count += 1;
      const id = nameCut(treatment.path, count);
      return cutOf(group, cloth, { id, set: treatment.path, label: `${called} ${count}` });
    });
  });
}

/** Id of a cut, in whose order alike cuts are laid: it stays while the treatment keeps its name and has so many cuts. */
export function nameCut(path: string, cut: number): string {
  return `${path}#${String(cut).padStart(4, '0')}`;
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
