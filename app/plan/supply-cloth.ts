/** The cloth that the cuts of a plan are laid on: what is listed, else as many bolts as it takes. */
import type { BackCloth, Cloth } from '#shared/cloth.ts';
import { nameBolt } from '#shared/cutting.ts';
import type { Cutting } from '#shared/cutting.ts';
import { ticks } from '#shared/length.ts';
import type { Bolt, Remnant } from './plan-input.ts';

export interface ClothSupply {
  readonly bolts: readonly Bolt[];
  readonly remnants: readonly Remnant[];
}

/** One dye lot for everything: what nobody sees the colour of, or what was asked for so. */
const ANY_LOT = 'any';

/**
 * A lining or interlining of no colour of its own hangs unseen: its dye lot does not matter (common practice), and its
 * cuts may be shared out freely.
 */
export function isDyed(cloth: Cloth): boolean {
  return cloth.role === 'face' || hasColour(cloth);
}

function hasColour(cloth: BackCloth): boolean {
  return cloth.family === 'contrast' || (cloth.shade ?? '').startsWith('#');
}

/**
 * `pieces`: how many bolts there are where none is listed. Those are as long as a whole piece of the cloth when there has
 * to be more than one, else unlimited. `oneLot`: every piece is asked for from one dye lot.
 * `startsAsAsked`: those pieces are cut at our place in the repeat.
 */
export function supplyCloth(
  cloth: Cloth,
  cutting: Cutting,
  {
    pieces,
    oneLot,
    startsAsAsked,
  }: { readonly pieces: number; readonly oneLot: boolean; readonly startsAsAsked: boolean },
): ClothSupply {
  const any = oneLot || !isDyed(cloth);
  const lotOf = (dyeLot: string | null): string | null => (any ? ANY_LOT : dyeLot);
  const start = (startsAt: Bolt['startPhase']): Bolt['startPhase'] => (cloth.repeat === null ? null : startsAt);
  const listed = cutting.bolts.filter((bolt) => bolt.cloth === cloth.id);
  const length = pieces > 1 ? (cloth.supply?.bolt ?? null) : null;
  const assumed = Array.from({ length: pieces }, (_, index) => ({
    ...{ name: nameBolt(index), dyeLot: null, startsAt: null, length },
  }));
  return {
    bolts: (listed.length > 0 ? listed : assumed).map((bolt) => ({
      id: bolt.name,
      dyeLot: lotOf(bolt.dyeLot),
      startPhase: start(bolt.startsAt),
      length: bolt.length,
      step: ticks(0),
      ...(listed.length === 0 && startsAsAsked ? { startsAsAsked } : {}),
    })),
    remnants: cutting.remnants
      .filter((remnant) => remnant.cloth === cloth.id)
      .map((remnant) => ({
        id: remnant.name,
        dyeLot: lotOf(remnant.dyeLot),
        startPhase: start(remnant.startsAt),
        length: remnant.length,
        width: remnant.width,
      })),
  };
}
