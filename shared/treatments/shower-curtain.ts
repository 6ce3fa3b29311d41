/** A shower curtain on rings through eyelets, in one piece or a pair, perhaps with a liner of its own. */
import type { LengthUnit, Ticks } from '../length.ts';
import type { Practice } from '../practice.ts';
import { defaultLengths } from './length-settings.ts';
import type { LengthsOf, LengthTable } from './length-settings.ts';
import type { TreatmentBase } from './treatment-base.ts';

/** Nothing, one that is bought ready, or one made of the cloth with this id; either hangs on the curtain's rings. */
export type ShowerLiner =
  { readonly from: 'none' } | { readonly from: 'bought' } | { readonly from: 'cloth'; readonly cloth: string };

export interface ShowerCurtainTreatment extends TreatmentBase {
  readonly kind: 'shower-curtain';
  /** Resolved for this treatment alone, its own section with it. */
  readonly practice: Practice & { readonly showerCurtain: ShowerCurtainPractice };
  readonly arrangement: 'one-piece' | 'pair';
  /** Of all pieces together. */
  readonly finishedWidth: Ticks;
  readonly finishedLength: Ticks;
  /** Of one piece; null: one for each spacing of the practice. */
  readonly eyelets: number | null;
  readonly liner: ShowerLiner;
}

export const SHOWER_LENGTHS = {
  topHem: { inch: 3, centimetre: 8, says: 'Turned at the top in total.' },
  bottomHem: { inch: 6, centimetre: 15, says: 'Bottom hem in total.' },
  sideHem: { inch: 1.5, centimetre: 4, says: 'Side hem of one edge in total.' },
  eyeletSpacing: { inch: 6, centimetre: 15, says: 'One eyelet for this much finished width, up: 12 for 72 in.' },
  eyeletInset: { inch: 1.5, centimetre: 4, says: 'Outer eyelets from the edge (from memory).' },
  eyeletWidth: { inch: 1, centimetre: 2.5, says: 'An eyelet this wide keeps clear of a seam (from memory).' },
  linerShorter: { inch: 1, centimetre: 2.5, says: 'How much shorter the liner hangs (from memory).' },
  liningHem: { inch: 3, centimetre: 7.5, says: 'Bottom hem of a lining sewn in, in total (from memory).' },
  liningShorter: { inch: 1, centimetre: 2.5, says: 'How much shorter a lining sewn in hangs.' },
} as const satisfies LengthTable;

export type ShowerCurtainPractice = LengthsOf<typeof SHOWER_LENGTHS>;

export function defaultShowerCurtainPractice(unit: LengthUnit): ShowerCurtainPractice {
  return defaultLengths(SHOWER_LENGTHS, unit);
}
