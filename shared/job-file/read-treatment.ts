/** One treatment of the wire form as the engines take it. Its faults have been told before. */
import { exhaustive } from '../fault.ts';
import type { Treatment } from '../treatments/treatment.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import type { Practice } from '../practice.ts';
import type { FaceFamily } from '../words.ts';
import { readPanels } from './read-panels.ts';
import { readPattern, topOfMount } from './read-pattern.ts';
import type { ReadPlace } from './read-place.ts';
import { readPractice } from './read-practice.ts';
import { seamCornice, seamValance } from './seam-flat.ts';
import { readStacks } from './read-stacks.ts';
import { readBedSkirt } from './wire-bed-skirt.ts';
import { readCornice } from './wire-cornice.ts';
import type { WireTreatment } from './wire-job.ts';
import { readRomanShade } from './wire-roman-shade.ts';
import { readShowerCurtain } from './wire-shower-curtain.ts';
import { readSwags } from './wire-swags.ts';
import { readValance } from './wire-valance.ts';

/** `practice` is the job's; the treatment's own stands over it. `family` is that of the face, null where it is not listed. */
export function readTreatment(
  wire: WireTreatment,
  path: string,
  practice: Practice,
  unit: LengthUnit,
  place: ReadPlace,
  family: FaceFamily | null,
): Treatment {
  const own = readPractice(wire.practice, practice, unit);
  const base = {
    name: wire.name,
    key: path,
    quantity: wire.quantity ?? 1,
    practice: own,
    stacks: readStacks(wire.stacks, wire.face),
    face: wire.face,
    pattern: wire.pattern ? readPattern(wire.pattern, unit, topOf(wire, unit, place), place) : null,
    decision: wire.decision ?? null,
  };
  switch (wire.kind) {
    case 'panels':
      return readPanels(wire, base, unit, place, family);
    case 'valance':
      return seamValance(readValance(wire, base, own.valance, unit));
    case 'cornice':
      return seamCornice(readCornice(wire, base, own.cornice, unit));
    case 'swags':
      return readSwags(wire, base, own.swags, unit);
    case 'roman-shade':
      return readRomanShade(wire, base, own.romanShade, unit);
    case 'bed-skirt':
      return readBedSkirt(wire, base, own.bedSkirt, unit);
    case 'shower-curtain':
      return readShowerCurtain(wire, base, own.showerCurtain, unit);
    default:
      return exhaustive(wire);
  }
}

/** The finished top above the floor, where the mount tells it; panels may know better from their fixing. */
function topOf(wire: WireTreatment, unit: LengthUnit, place: ReadPlace): Ticks | null {
  switch (wire.kind) {
    case 'bed-skirt':
    case 'shower-curtain':
      return null;
    default:
      return topOfMount(wire.mount, unit, place);
  }
}
