/** What is always said of cords: looped or reachable ones can strangle a small child or a pet. */
import { exhaustive } from '#shared/fault.ts';
import type { ShadeLift } from '#shared/treatments/roman-shade.ts';

export interface CordCaution {
  readonly lift: ShadeLift;
  /** A cord that a child can reach: a stop in a nursery or child's room. */
  readonly accessible: boolean;
  readonly says: string;
}

const LAW = "Local product-safety law and the maker's certified parts decide.";

export function cautionOf(lift: ShadeLift): CordCaution {
  switch (lift) {
    case 'cordless':
      return {
        lift,
        accessible: false,
        says: `Cordless: no cord is to hang free, and those behind are shrouded or held so that none can be drawn into a loop. ${LAW}`,
      };
    case 'inaccessible-cords':
      return {
        lift,
        accessible: false,
        says: `The cords are covered over their whole run and cannot be pulled into a loop. ${LAW}`,
      };
    case 'motor':
      return {
        lift,
        accessible: false,
        says: `Raised by a motor: each cord is wound above its own column, and those behind are shrouded or held so that none can be drawn into a loop. ${LAW}`,
      };
    case 'cords':
      return {
        lift,
        accessible: true,
        says: `Cords within reach can strangle small children and pets: choose cordless or inaccessible cords, never this in a child's room. ${LAW}`,
      };
    default:
      return exhaustive(lift);
  }
}
