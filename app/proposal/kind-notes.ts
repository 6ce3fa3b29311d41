/** Cautions that rest on the kind of treatment and on the room: cords, weight over heads, ladders, motors. */
import { exhaustive } from '#shared/fault.ts';
import type { Room } from '#shared/job.ts';
import type { ShadeLift } from '#shared/treatments/roman-shade.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';

const LAW = 'Local product-safety law and the maker’s certified parts decide.';

export function isChildsRoom(room: Pick<Room, 'use'>): boolean {
  return room.use === 'nursery' || room.use === 'child';
}

/** What is said of cords of this treatment; null where nothing of it has any. */
export function cordNote(treatment: Treatment, room: Pick<Room, 'use'>): string | null {
  switch (treatment.kind) {
    case 'roman-shade':
      return shadeCords(treatment.lift, isChildsRoom(room));
    case 'panels':
      return (
        'No cord, loop or bead chain hangs where a child or a pet can reach it: hand-drawn or cordless operation is what we propose. ' +
        `A cot stands out of reach of cloth and pole. ${LAW}`
      );
    case 'valance':
      return treatment.style === 'balloon'
        ? `Its puffs are tied up for good behind the cloth: no cord hangs from it. ${LAW}`
        : null;
    case 'cornice':
    case 'swags':
    case 'bed-skirt':
    case 'shower-curtain':
      return null;
    default:
      return exhaustive(treatment);
  }
}

function shadeCords(lift: ShadeLift, child: boolean): string {
  switch (lift) {
    case 'cordless':
      return `It is to be raised by hand, without a cord that hangs free; those behind it have to be shrouded, or held so that none can be drawn into a loop. ${LAW}`;
    case 'inaccessible-cords':
      return `Its cords have to be covered over their whole run, so that none can be pulled into a loop. ${LAW}`;
    case 'motor':
      return `It is raised by a motor, without a cord that hangs free; the cords behind it have to be shrouded, or held so that none can be drawn into a loop. Its wiring is for those whom the local code lets do it. ${LAW}`;
    case 'cords':
      return child
        ? `This shade is raised by cords within reach, in a child’s room: cords can strangle small children. It is not to be made like this; choose a cordless lift or cords that are covered over their whole run. ${LAW}`
        : `This shade was asked for with cords within reach, because no cordless lift was chosen for it: cords can strangle small children and pets. They are wound on a cleat fixed high, out of reach. A cordless lift is what we propose. ${LAW}`;
    default:
      return exhaustive(lift);
  }
}

/** What hangs overhead has to be fixed into structure; null where nothing does. */
export function weightNote(treatment: Treatment): string | null {
  switch (treatment.kind) {
    case 'panels':
      return 'The rod maker’s rating and a competent installer decide brackets and fixing into structure.';
    case 'valance':
    case 'swags':
      return 'Board or rod is fixed into structure; a competent installer decides how.';
    case 'cornice':
      return 'Box, padding and cloth hang overhead: brackets into structure, and two people on ladders to hang it.';
    case 'roman-shade':
      return 'The board is fixed into structure, above the reach of a pull; a competent installer decides how.';
    case 'bed-skirt':
    case 'shower-curtain':
      return null;
    default:
      return exhaustive(treatment);
  }
}
