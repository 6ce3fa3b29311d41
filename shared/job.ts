/**
 * A job, parsed: a whole project ready for the engines, lengths in ticks and rates exact. A job file is read into it
 * (`job-file/`), and so is a project of the portfolio; the engines know no other form.
 */
import type { Cloth } from './cloth.ts';
import type { LengthUnit, Ticks } from './length.ts';
import type { Locale } from './locale.ts';
import type { Currency } from './money.ts';
import type { Practice, Thousandths } from './practice.ts';
import type { PriceBook } from './price-book.ts';
import type { Arrangement, Climate, Facing, Glazing, Heading, MountPlace, RoomUse, Tier } from './words.ts';

export interface ClientName {
  readonly name: string;
  readonly email: string | null;
  readonly address: string | null;
}

export interface Letterhead {
  readonly name: string;
  readonly lines: readonly string[];
}

/** What the proposal prints besides the job itself. Dates are ISO (`2026-11-25`): `app/` has no clock. */
export interface ProposalHead {
  readonly number: string | null;
  readonly date: string | null;
  readonly validUntil: string | null;
  readonly terms: string | null;
  /** The cancellation notice that local law may ask for, in the decorator's own words; null prints the default that defers. */
  readonly cancellation: string | null;
  /** What the client reads over the three options. */
  readonly tierNames: Readonly<Record<Tier, string>>;
}

/** One stack: the face and the layers behind it, room to street. `behind` empty is unlined. */
export interface StackIds {
  readonly face: string;
  readonly behind: readonly string[];
}

export interface Mount {
  readonly where: MountPlace;
  /** Rod above the top of the frame; 0 for inside mounts. */
  readonly above: Ticks;
}

export interface TreatmentBase {
  readonly name: string;
  /** Stable key of the treatment: the portfolio's id, or the path in a job file. */
  readonly key: string;
  readonly quantity: number;
  /** Resolved for this treatment alone: defaults, the decorator's, the job's, the treatment's. */
  readonly practice: Practice;
  /** Tiers that were given; absent ones are chosen by the lining engine. */
  readonly stacks: Readonly<Partial<Record<Tier, StackIds>>>;
  /** Cloth id of the face unless a stack names another. */
  readonly face: string;
}

export interface PanelsTreatment extends TreatmentBase {
  readonly kind: 'panels';
  readonly heading: Heading;
  readonly arrangement: Arrangement;
  readonly mount: Mount;
  /** Rod face, bracket to bracket, before returns and overlap. */
  readonly rodWidth: Ticks;
  /** Top of the heading to the hem. */
  readonly finishedLength: Ticks;
  readonly fullness: Thousandths;
  /** False when the fullness is the practice's, not the treatment's own. */
  readonly fullnessGiven: boolean;
  readonly returns: { readonly left: Ticks; readonly right: Ticks };
  /** The whole overlap at the centre, of a pair alone. */
  readonly overlap: Ticks;
  /** Widths of each piece, in halves (3 is 1.5 widths), given instead of fullness; else null. */
  readonly halfWidths: number | null;
  /** Panels that hang side by side on the rod: 1 or 2 by the arrangement, or more still panels. */
  readonly pieces: number;
  /** Fingers of a pinch pleat. */
  readonly fingers: 2 | 3;
  /** How the finished length was found; null when it was given. */
  readonly hang: Hang | null;
  /** The runs of a bay whose rod face was reckoned; null when it was given. */
  readonly bay: Bay | null;
  /** Rise of an arched top above its springing, within the finished length; null for a straight rod. */
  readonly arch: Ticks | null;
  readonly bands: readonly Band[];
  readonly rodDiameter: Ticks | null;
  /** Stands above a rod pocket, within the finished length. */
  readonly header: Ticks;
  /** Covers the lower part of the window alone. */
  readonly cafe: boolean;
}

/** Where the length starts and ends: the commonest remake, so the working says it. */
export interface Hang {
  /** Height of the fixing (ring eye, track, pole) above the floor: the shortest of the readings. */
  readonly fixing: Ticks;
  /** Readings of that height at left, centre and right; one where it was read once. */
  readonly readings: readonly Ticks[];
  /** From the fixing down to the top of the heading; below zero where the heading stands above it. */
  readonly headingBelow: number;
  readonly to: 'sill' | 'apron' | 'floor' | 'puddle';
  /** Clear of floor or sill, below the sill, or lying on the floor. */
  readonly by: Ticks;
  readonly sill: Ticks;
}

export interface Bay {
  readonly runs: readonly Ticks[];
  /** Degrees that the rod turns between two runs. */
  readonly turns: readonly number[];
  /** From the wall to the rod. */
  readonly projection: Ticks;
}

/** A strip of another cloth along an edge. */
export interface Band {
  readonly edge: 'leading' | 'hem' | 'both-sides';
  readonly cloth: string;
  /** Finished width of the strip. */
  readonly width: Ticks;
}

/** Every kind of treatment. A new kind is one more variant here, and the compiler names who must answer for it. */
export type Treatment = PanelsTreatment;
export type TreatmentKind = Treatment['kind'];

export interface Opening {
  readonly name: string;
  readonly key: string;
  readonly width: Ticks;
  readonly height: Ticks;
  /** Sill from the floor; null when unknown. */
  readonly sill: Ticks | null;
  /** Left edge from the left end of the wall; null: drawn after its neighbour. */
  readonly at: Ticks | null;
  readonly glazing: Glazing;
  readonly heatSourceBelow: boolean;
  readonly treatments: readonly Treatment[];
}

export interface Room {
  readonly name: string;
  readonly key: string;
  readonly use: RoomUse;
  readonly facing: Facing | null;
  readonly climate: Climate;
  readonly ceiling: Ticks | null;
  readonly openings: readonly Opening[];
}

export interface Job {
  readonly units: LengthUnit;
  readonly currency: Currency;
  readonly locale: Locale;
  readonly client: ClientName;
  readonly letterhead: Letterhead;
  readonly proposal: ProposalHead;
  readonly practice: Practice;
  readonly priceBook: PriceBook;
  /** The job's own cloth; generic cloth is known without listing. */
  readonly cloth: readonly Cloth[];
  readonly rooms: readonly Room[];
}

/** Sides that have a return: a pair has its two outer edges, a one-way draw both ends, a single panel one. */
export function returnSides(arrangement: Arrangement): 1 | 2 {
  return arrangement === 'single' ? 1 : 2;
}

/** Pieces that hang side by side: a pair, stationary or not, is two. */
export function piecesOf(arrangement: Arrangement): 1 | 2 {
  return arrangement === 'pair' || arrangement === 'pair-stationary' ? 2 : 1;
}
