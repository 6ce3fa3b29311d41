/** One treatment of the wire form as the engines take it. Its faults have been told before. */
import type { Treatment } from '../job.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import type { Practice } from '../practice.ts';
import { readPanels } from './read-panels.ts';
import { readPractice } from './read-practice.ts';
import { readStacks } from './read-stacks.ts';
import type { WireTreatment } from './wire-job.ts';

/** `practice` is the job's; the treatment's own stands over it. `sill` is the opening's, from the floor. */
export function readTreatment(
  wire: WireTreatment,
  path: string,
  practice: Practice,
  unit: LengthUnit,
  sill: Ticks | null,
): Treatment {
  const own = readPractice(wire.practice, practice, unit);
  const base = {
    name: wire.name,
    key: path,
    quantity: wire.quantity ?? 1,
    practice: own,
    stacks: readStacks(wire.stacks, wire.face),
    face: wire.face,
  };
  return readPanels(wire, base, unit, sill);
}
