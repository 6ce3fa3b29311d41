/** What has to be told to whoever orders and cuts the cloth: more than one piece of it, and a nap that lies across. */
import type { Cloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import type { SuppliedPiece } from '#shared/result.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import type { Estimate } from './estimate.ts';
import { lostAtStart } from './order-cloth.ts';
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
    if (bolt !== null && line.pieces)
      warnings.push({
        path,
        says: `The order of ${cloth.name}, ${say.cloth(line.order)}, is more than a whole piece (${say.cloth(bolt)}): by itself it comes in ${line.pieces.length} pieces, ${sayLengths(line.pieces, say)}. Ask for one dye lot, and for the length of each piece before it is cut.`,
      });
    if (bolt !== null && !line.railroaded && line.plainCut <= bolt && line.plainCut + lostAtStart(cloth) > bolt)
      warnings.push({
        path,
        says: `A whole piece of ${cloth.name} (${say.length(bolt)} ${say.unit}) holds a cut of ${say.length(line.plainCut)} ${say.unit} only where it starts at the right place in the repeat: ask the supplier to cut it so.`,
      });
    if (line.railroaded && liesOneWay(cloth))
      warnings.push({
        path,
        says: `${cloth.name} runs sideways: its nap or pattern lies across instead of down. Show the client, or do not let it run sideways.`,
      });
    return warnings;
  });
}

/** `2 of 6¾ yd`, `6¾ yd and 3½ yd`. */
function sayLengths(pieces: readonly SuppliedPiece[], say: Say): string {
  const orders = [...new Set(pieces.map(({ order }) => order))];
  return orders
    .map((order) => {
      const count = pieces.filter((piece) => piece.order === order).length;
      return count === 1 ? `one of ${say.cloth(order)}` : `${count} of ${say.cloth(order)}`;
    })
    .join(' and ');
}

function liesOneWay(cloth: Cloth): boolean {
  return cloth.supply?.oneWay === true || cloth.family === 'velvet';
}
