/** What has to be told to whoever orders and cuts the cloth: more than one piece of it, and a nap that lies across. */
import type { Cloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import type { Estimate } from './estimate.ts';
import { upToWhole } from './round.ts';
import type { Say } from './say.ts';

export function warnSupply(
  treatment: Treatment,
  estimate: Pick<Estimate, 'takeoff'>,
  clothOf: (id: string) => Cloth | null,
  say: Say,
): Warning[] {
  return estimate.takeoff.flatMap((line) => {
    const cloth = clothOf(line.cloth);
    if (cloth === null) return [];
    const path = at(treatment.key, cloth.role === 'face' ? 'face' : 'stacks');
    const bolt = cloth.supply?.bolt ?? null;
    const warnings: Warning[] = [];
    if (bolt !== null && line.order > bolt)
      warnings.push({
        path,
        says: `The order of ${cloth.name}, ${say.cloth(line.order)}, is more than a whole piece (${say.cloth(bolt)}): at least ${upToWhole(line.order, bolt)} pieces. Ask for one dye lot, and for the length of each piece before it is cut.`,
      });
    if (line.railroaded && liesOneWay(cloth))
      warnings.push({
        path,
        says: `${cloth.name} runs sideways: its nap or pattern lies across instead of down. Show the client, or do not let it run sideways.`,
      });
    return warnings;
  });
}

function liesOneWay(cloth: Cloth): boolean {
  return cloth.supply?.oneWay === true || cloth.family === 'velvet';
}
