/** What the engines return for a job: exact lengths and money with their working. The wire form stands in `job-file/`. */
import type { Fault, Warning } from './fault.ts';
import type { Ticks } from './length.ts';
import type { Minor } from './money.ts';
import type { ClothRole, LineKind, Tier } from './words.ts';
import type { PatternPlace } from './treatments/pattern-place.ts';
import type { StackIds } from './treatments/treatment-base.ts';
import type { TreatmentKind } from './treatments/treatment.ts';

/** One step of arithmetic as a person would write it. `rests` names the rule, setting or source. */
export interface WorkingStep {
  /** Stable key, so that a screen can point from a number to its step: `widths`, `cut-length`, `lining-0-widths`. */
  readonly id: string;
  readonly label: string;
  /** The formula in figures: `206¼ / 54 = 3.82, up`. */
  readonly formula: string;
  readonly value: string;
  readonly rests: string;
}

/** One piece of cloth of an order that comes in several. */
export interface SuppliedPiece {
  readonly cuts: number;
  /** What its cuts take, and what is ordered of it. */
  readonly base: Ticks;
  readonly order: Ticks;
}

export interface TakeoffLine {
  readonly cloth: string;
  readonly role: ClothRole;
  /** 0 is the face; then the layers behind it, room to street. */
  readonly layer: number;
  /** What the cloth is for when it is not the body of a layer: `band, leading`. */
  readonly use?: string;
  /** Widths of one treatment, in halves (8 is 4 widths); null when railroaded. */
  readonly halfWidths: number | null;
  readonly railroaded: boolean;
  /** Full-width cuts of all pieces made (`quantity`). */
  readonly cuts: number;
  /** Fullness that results, unrounded; of the face alone, null behind it. */
  readonly fullnessMade: number | null;
  readonly plainCut: Ticks;
  readonly cutLength: Ticks;
  readonly repeatsPerCut: number | null;
  /** By the handbook: all cuts end to end. */
  readonly handbook: Ticks;
  /** This treatment alone laid out with its waste between phases. */
  readonly plan: Ticks;
  readonly order: Ticks;
  /** The order piece by piece where it is more than a whole piece of the cloth; not given: it comes in one. */
  readonly pieces?: readonly SuppliedPiece[];
  /** Grams of this layer as it hangs, all quantity. */
  readonly grams: number;
  /** Of a face whose pattern is placed. */
  readonly pattern?: TakenPattern;
}

/** Where the motif stands on what is made of the cloth, and where its cuts begin for that. */
export interface TakenPattern {
  readonly place: PatternPlace['place'];
  /** Of the room, above the floor; null at other places. */
  readonly level: Ticks | null;
  /** Middle of the motif below the finished top; below zero above it. */
  readonly below: number;
  /** Where in the repeat the level cuts begin. */
  readonly starts: Ticks;
  /** The widest cut of one width with a motif in its middle; null where none is asked. */
  readonly about: Ticks | null;
}

export interface Readings {
  /** Visible transmittance of the cloth alone, 0..1. */
  readonly light: number;
  readonly lightWithGlass: number;
  /** With open edges and needle holes. */
  readonly lightInRoom: number;
  /** CIEDE2000 between the face lit from the room and with daylight behind. */
  readonly colourShift: number;
  /** Added thermal resistance, m2K/W, middle of its range. */
  readonly warmth: number;
  /** Share of CIE 89/3 damage kept from the back of the face, against unlined. */
  readonly fade: number;
  /** 1 limp to 5 firm. */
  readonly body: number;
}
export type ReadingName = keyof Readings;

/** Words first: what a client reads for one reading, with the figure behind it. */
export interface ReadingWords {
  /** `glows`, `a touch warmer`, `clearly more`. */
  readonly words: string;
  /** `about 9 %`; empty where a figure says nothing to a client. */
  readonly figure: string;
  /** What the reading rests on. */
  readonly rests: string;
}

export const ADVICE_LEVELS = ['stop', 'caution', 'note', 'praise'] as const;
export interface Advice {
  readonly rule: string;
  readonly level: (typeof ADVICE_LEVELS)[number];
  readonly says: string;
  readonly rests: string;
  /** A stop that the decorator insisted on: it is made all the same, and the proposal says so. */
  readonly insisted?: true;
}

export interface Judgement {
  readonly readings: Readings;
  readonly ranges: Readonly<Partial<Record<ReadingName, readonly [number, number]>>>;
  /** The five readings of the worksheet, in its order. */
  readonly words: Readonly<Record<'light' | 'colour' | 'warmth' | 'fade' | 'body', ReadingWords>>;
  /** Values that nobody measured: `std-white.transmittance`. */
  readonly assumed: readonly string[];
  readonly advice: readonly Advice[];
  readonly working: readonly WorkingStep[];
}

export interface PriceLine {
  readonly label: string;
  readonly kind: LineKind;
  readonly amount: Minor;
  /** The arithmetic in figures. */
  readonly formula: string;
}

export interface Price {
  /** Net of tax: the sum of the lines. */
  readonly total: Minor;
  readonly lines: readonly PriceLine[];
}

export interface Offer {
  /** One width fewer that still makes the least fullness: offered, never taken silently. */
  readonly halfWidths: number;
  readonly fullnessMade: number;
  readonly says: string;
}

export interface TierResult {
  readonly stack: StackIds;
  /** Not null when nobody chose it but the lining engine; then why, and which option it repeats where no step above that one is worth offering. */
  readonly chosen: { readonly why: string; readonly sameAs?: Tier } | null;
  /** What a client reads: `Standard lining`, `Interlined`. */
  readonly title: string;
  /** One or two plain sentences from readings and advice. */
  readonly says: string;
  readonly takeoff: readonly TakeoffLine[];
  readonly grams: number;
  readonly judgement: Judgement;
  /** Null when a rate is missing; `missingRates` of the job result names it. */
  readonly price: Price | null;
  /** Pleats of one piece with the cloth in each and the space between, in ticks; null where none are counted. */
  readonly pleats: { readonly count: number; readonly pleat: number; readonly space: number } | null;
  /** Wall that one open piece takes, in ticks; null for what does not draw open to a side. */
  readonly stackback: { readonly least: Ticks; readonly usual: Ticks; readonly most: Ticks } | null;
  /** The rod that would clear the opening when its panels are drawn back; not given where nothing draws back beside it. */
  readonly clearing?: { readonly rod: Ticks; readonly halfWidths: number; readonly stack: Ticks } | null;
  readonly offer: Offer | null;
  /** Named measures for the work drawing, by kind (lengths in ticks); null where the working says it all. */
  readonly sheet: object | null;
  readonly working: readonly WorkingStep[];
}

export interface TreatmentResult {
  readonly key: string;
  readonly kind: TreatmentKind;
  /** `Nursery/East window/Panels`. */
  readonly path: string;
  readonly finished: { readonly width: Ticks; readonly length: Ticks };
  readonly tiers: Readonly<Record<Tier, TierResult>>;
  /** The tier the engine advises for this room, and why. */
  readonly advised: { readonly tier: Tier; readonly why: string };
  /** The nearest stack that was left out, and why; null when none came near. */
  readonly notChosen: { readonly behind: readonly string[]; readonly why: string } | null;
}

/** One cloth over everything that was accepted. */
export interface AcceptedLine {
  readonly cloth: string;
  /** All cuts laid together. */
  readonly plan: Ticks;
  readonly order: Ticks;
  readonly handbook: Ticks;
  /** No layout takes less. */
  readonly bound: Ticks;
  /** Each treatment laid out alone, and ordered alone: added up. */
  readonly alone: Ticks;
  readonly orderAlone: Ticks;
  /** Pieces of cloth to buy. */
  readonly bolts: number;
  /** Cuts that found no place on what there is. */
  readonly unlaid: number;
}

/** One cloth over all work but what was declined, in one option. */
export interface PlanLine extends AcceptedLine {
  readonly tier: Tier;
}

export interface TierTotals {
  readonly net: Minor;
  readonly taxes: readonly { readonly name: string; readonly amount: Minor }[];
  readonly tax: Minor;
  readonly total: Minor;
  readonly deposit: Minor;
}

/** A rate that is needed and that nobody has set: where it goes, and what for. */
export interface MissingRate {
  /** Path in the price book: `labour.perWidth.pinch-pleat`. */
  readonly rate: string;
  readonly says: string;
}

export interface JobResult {
  readonly treatments: readonly TreatmentResult[];
  readonly plan: readonly PlanLine[];
  /** The joint plan over accepted work, on which orders rest; null until the client has said anything. */
  readonly accepted: readonly AcceptedLine[] | null;
  /** What is wrong with bolts, flaws and fixed cuts: that cloth has no plan. */
  readonly planFaults: readonly Fault[];
  /** Null when a rate is missing. */
  readonly totals: Readonly<Record<Tier, TierTotals>> | null;
  readonly missingRates: readonly MissingRate[];
  /** What no cloth could make; such a treatment is left out of `treatments` and `totals` is null. */
  readonly faults: readonly Fault[];
  readonly exampleRates: boolean;
  readonly warnings: readonly Warning[];
}
