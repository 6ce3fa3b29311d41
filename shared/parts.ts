/**
 * Everything that is bought for a treatment besides cloth: what it is called, whether it is hardware or a notion, and
 * whether it is priced by the piece or by length. The price book's keys are the names of this table.
 */
import type { LineKind } from './words.ts';

interface PartWords {
  readonly kind: Extract<LineKind, 'hardware' | 'notions'>;
  readonly per: 'each' | 'length';
  /** As on a price line: `Brackets, 3`, `Rod, 79 in`. */
  readonly label: string;
  /** What the rate is for, in the price book. */
  readonly says: string;
}

export const PARTS = {
  rod: { kind: 'hardware', per: 'length', label: 'Rod', says: 'By length of rod, returns included.' },
  bracket: { kind: 'hardware', per: 'each', label: 'Brackets', says: 'Each.' },
  ring: { kind: 'hardware', per: 'each', label: 'Rings', says: 'Each, one for a pleat and one for an end.' },
  finial: { kind: 'hardware', per: 'each', label: 'Finials', says: 'Each.' },
  glider: { kind: 'hardware', per: 'each', label: 'Gliders', says: 'Each, of a track for wave headings.' },
  board: { kind: 'hardware', per: 'length', label: 'Board', says: 'By length, cut, covered side up.' },
  shadeLift: {
    kind: 'hardware',
    per: 'each',
    label: 'Shade lifts',
    says: 'Each, cordless or with inaccessible cords.',
  },
  shadeRod: { kind: 'hardware', per: 'length', label: 'Ribs and bottom bar', says: 'By length.' },
  showerLiner: { kind: 'hardware', per: 'each', label: 'Shower liners', says: 'Each, bought ready.' },
  cordLock: { kind: 'hardware', per: 'each', label: 'Cord locks and cleats', says: 'Each, for cords within reach.' },
  curtainRing: { kind: 'hardware', per: 'each', label: 'Shower rings', says: 'Each.' },
  headingTape: {
    kind: 'notions',
    per: 'length',
    label: 'Heading tape',
    says: 'Or buckram, by length of the flat heading.',
  },
  hook: { kind: 'notions', per: 'each', label: 'Hooks', says: 'Each, one for a pleat and one for an end.' },
  weight: {
    kind: 'notions',
    per: 'each',
    label: 'Weights',
    says: 'Each, at corners and seams, in pouches; never lead.',
  },
  weightedCord: { kind: 'notions', per: 'length', label: 'Weighted cord', says: 'By length of the hem of sheers.' },
  grommet: { kind: 'notions', per: 'each', label: 'Grommets', says: 'Each.' },
  shadeRing: { kind: 'notions', per: 'each', label: 'Shade rings', says: 'Each, sewn in rows and columns.' },
  ringTape: { kind: 'notions', per: 'length', label: 'Rib tape', says: 'By length, one for a row.' },
  shadeCord: { kind: 'notions', per: 'length', label: 'Shade cord', says: 'By length, inside the shade.' },
  welt: { kind: 'notions', per: 'length', label: 'Welt cord', says: 'By length.' },
  padding: { kind: 'notions', per: 'length', label: 'Padding', says: 'By length of the board.' },
  hookTape: { kind: 'notions', per: 'length', label: 'Hook and loop tape', says: 'By length of the board or rail.' },
  eyelet: { kind: 'notions', per: 'each', label: 'Eyelets', says: 'Each, along the top of a shower curtain.' },
} as const satisfies Readonly<Record<string, PartWords>>;

export type PartName = keyof typeof PARTS;
export const PART_NAMES = Object.keys(PARTS) as readonly PartName[];

type NamesOf<Kind, Per> = {
  [Name in PartName]: (typeof PARTS)[Name] extends { readonly kind: Kind; readonly per: Per } ? Name : never;
}[PartName];
export type CountedPart = NamesOf<unknown, 'each'>;
export type MeasuredPart = NamesOf<unknown, 'length'>;
export type HardwareName = NamesOf<'hardware', unknown>;
export type NotionName = NamesOf<'notions', unknown>;

export const COUNTED_PARTS = PART_NAMES.filter((name): name is CountedPart => PARTS[name].per === 'each');
export const MEASURED_PARTS = PART_NAMES.filter((name): name is MeasuredPart => PARTS[name].per === 'length');

/** A part needed, of all quantity. */
export type Part =
  { readonly part: CountedPart; readonly count: number } | { readonly part: MeasuredPart; readonly length: number };
