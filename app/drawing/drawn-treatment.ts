/**
 * Every kind of treatment as a drawing takes it. Any measure or count may be null while somebody is still typing: what is
 * missing is assumed and never dimensioned. Lengths in ticks.
 */
import type { BedSkirtStyle } from '#shared/treatments/bed-skirt.ts';
import type { RomanStyle } from '#shared/treatments/roman-shade.ts';
import type { SwagStyle } from '#shared/treatments/swags.ts';
import type { ValanceStyle } from '#shared/treatments/valance.ts';
import type { Arrangement, Heading, MountPlace } from '#shared/words.ts';
import type { Given, Hex } from './drawn-room.ts';

interface DrawnBase {
  readonly key: string;
  readonly name: string;
  /** Face colour towards the room; null draws undyed linen. */
  readonly colour: Hex | null;
  /** Middle of its motif above the floor, where it follows the level of the room. */
  readonly motifLevel?: Given;
}

interface DrawnMount {
  readonly where: MountPlace;
  /** Rod or board over the top of the frame. */
  readonly above: Given;
}

interface DrawnReturns {
  readonly left: Given;
  readonly right: Given;
}

/** A strip of another cloth along an edge of every panel. */
export interface DrawnBand {
  readonly edge: 'leading' | 'hem' | 'both-sides';
  readonly width: Given;
  readonly colour: Hex | null;
}

export interface DrawnPanels extends DrawnBase {
  readonly kind: 'panels';
  readonly heading: Heading;
  readonly arrangement: Arrangement;
  readonly mount: DrawnMount;
  /** Rod face, bracket to bracket. */
  readonly rodWidth: Given;
  readonly finishedLength: Given;
  readonly returns: DrawnReturns;
  readonly overlap: Given;
  /** Fullness as made (2.47), or as asked while nothing is made yet; null draws 2.5. */
  readonly fullness: number | null;
  /** Widths of all pieces together, in halves; null reckons them from fullness and a 54 in cloth. */
  readonly halfWidths: number | null;
  /** Pleats of all pieces together; null counts them from the widths (`countPleats`). */
  readonly pleats: number | null;
  /** Rod covered at each end by the open panels; null reckons it from the widths. A one-way draw has one side above 0. */
  readonly stackback: { readonly left: Given; readonly right: Given } | null;
  readonly drawn: 'open' | 'closed';
  /** Panels side by side on the rod, where they are more than the arrangement says. */
  readonly pieces?: number | null;
  /** The window is seen through it. */
  readonly sheer?: boolean;
  /** Covers the lower part of the window: without a mount of its own its hem hangs at the sill. */
  readonly cafe?: boolean;
  /** Top of the heading from the floor, where the fixing was measured; wins over the mount. */
  readonly topFromFloor?: Given;
  /** Rise of an arched top above its springing, within the finished length. */
  readonly arch?: Given;
  /** Runs of a bay, left to right, shown unfolded into one wall. */
  readonly bay?: { readonly runs: readonly Given[]; readonly turns: readonly number[] } | null;
  readonly bands?: readonly DrawnBand[];
}

interface DrawnTop extends DrawnBase {
  readonly mount: DrawnMount;
  /** Face of board, box or rod, end to end. */
  readonly width: Given;
  /** From its top to its lowest point; of swags the depth of one at its middle. */
  readonly finishedLength: Given;
  readonly returns: DrawnReturns;
}

export interface DrawnValance extends DrawnTop {
  readonly kind: 'valance';
  readonly style: ValanceStyle;
  readonly hang: 'board' | 'rod';
  /** Header that stands above a rod pocket. */
  readonly header: Given;
  /** Of what is gathered; null draws 2. */
  readonly fullness: number | null;
  /** Box pleats. */
  readonly pleats: number | null;
  readonly pleatsAt: 'between' | 'corners';
  /** Cloth in one box pleat. */
  readonly pleatTakeUp: Given;
  readonly scallops: number | null;
  readonly scallopDepth: Given;
  readonly puffs: number | null;
  /** Colour of the welt along its hem; null: none. */
  readonly welt: Hex | null;
}

export interface DrawnCornice extends DrawnTop {
  readonly kind: 'cornice';
  readonly welts: { readonly top: Hex | null; readonly bottom: Hex | null };
  /** Length of a shaped lower edge along its template; null: straight. */
  readonly shapedEdge: Given;
}

export interface DrawnTail {
  readonly longest: Given;
  readonly shortest: Given;
  readonly width: Given;
  /** Knife pleats; null: one for about 2 1/2 in. */
  readonly pleats: number | null;
}

export interface DrawnSwags extends DrawnTop {
  readonly kind: 'swags';
  readonly style: SwagStyle;
  /** Null: as few as are 44 in wide at the most. */
  readonly swags: number | null;
  readonly cascades: DrawnTail | null;
  readonly jabots: (DrawnTail & { readonly count: number | null }) | null;
  /** Colour of the lining that shows on the tails; null: an off-white. */
  readonly lining: Hex | null;
  readonly welt: Hex | null;
}

export interface DrawnRomanShade extends DrawnTop {
  readonly kind: 'roman-shade';
  readonly style: RomanStyle;
  /** Rows of rings from the finished hem up; null: by their usual spacing. */
  readonly rows: readonly Given[] | null;
  /** Height from the board when it is fully raised; null: reckoned. */
  readonly raisedStack: Given;
  /** Depth of its own valance; null: none. */
  readonly valance: Given;
  /** Half raised shows its folds, and its hem in a fine dashed line. */
  readonly drawn: 'half-raised' | 'lowered';
}

export interface DrawnBedSkirt extends DrawnBase {
  readonly kind: 'bed-skirt';
  readonly style: BedSkirtStyle;
  readonly bed: { readonly width: Given; readonly length: Given };
  /** Top of the platform to the hem. */
  readonly drop: Given;
  readonly against: 'head' | 'long-side';
  readonly fullness: number | null;
  /** Box pleats along the long side; null: one for about 6 in. */
  readonly pleats: number | null;
  readonly middlePleats: number | null;
  readonly splitCorners: boolean;
}

export interface DrawnShowerCurtain extends DrawnBase {
  readonly kind: 'shower-curtain';
  readonly arrangement: 'one-piece' | 'pair';
  /** Of all pieces together. */
  readonly finishedWidth: Given;
  readonly finishedLength: Given;
  /** Eyelets of one piece; null: one for about 6 in. */
  readonly eyelets: number | null;
  readonly liner: boolean;
}

/** What hangs at a window. */
export type DrawnHung = DrawnPanels | DrawnValance | DrawnCornice | DrawnSwags | DrawnRomanShade;
/** What has a place of its own in the room and no window. */
export type DrawnFurniture = DrawnBedSkirt | DrawnShowerCurtain;
/** Every kind that can be drawn; a new kind is one more variant, and the compiler names who must draw it. */
export type DrawnTreatment = DrawnHung | DrawnFurniture;

export function isFurniture(treatment: DrawnTreatment): treatment is DrawnFurniture {
  return treatment.kind === 'bed-skirt' || treatment.kind === 'shower-curtain';
}
