/**
 * What a proposal prints, as finished text and drawings: nothing is computed behind it. It is plain JSON, so that what was
 * sent to a client can be kept as it was and printed again letter for letter when prices and programs have moved on.
 */
import type { Drawing } from '#app/drawing/shape.ts';
import type { Tier } from '#shared/words.ts';

/** The client reads words and prices; the decorator's copy adds take-off, working and price lines. */
export type Audience = 'client' | 'decorator';

/** One text for each option, in the order in which they are printed: good, better, best. */
export type ByTier = readonly [string, string, string];

export interface PaperOption {
  readonly tier: Tier;
  /** `good`, or what the decorator calls it. */
  readonly tierName: string;
  /** `our advice for this room`; null on the others. */
  readonly advice: string | null;
  /** `Interlined`. */
  readonly title: string;
  /** `in Fern plain`, where the options of a window are not all of one cloth; else null. */
  readonly cloth: string | null;
  readonly says: string;
  /** Both null for what hangs at no window (a bed skirt, a shower curtain), and where it is the same as an option before it. */
  readonly litWindow: Drawing | null;
  readonly strip: Drawing | null;
  /** Two to five: `light`, `glows`, `about 9 %`; none where it is the same as an option before it. */
  readonly readings: readonly PaperReading[];
  /** `$1,284.00`. */
  readonly price: string;
  /** `before tax`. */
  readonly priceNote: string;
}

export interface PaperReading {
  readonly label: string;
  readonly words: string;
  /** Empty where a figure says nothing to a client. */
  readonly figure: string;
}

/** Something to heed. `about` names the windows and options it is about; empty when it is about all of them. */
export interface PaperNote {
  readonly about: string;
  readonly says: string;
  /** `stop`: it should not be made so, said before the options. `caution`: said under them, before the others. */
  readonly level?: 'stop' | 'caution';
  /** What it says piece by piece, where it says several things. */
  readonly parts?: readonly string[];
}

/** One treatment of one opening: its place in the room, three options, what to heed about it alone. */
export interface PaperWindow {
  readonly key: string;
  readonly room: string;
  /** `East window`, with the treatment's name where an opening has several. */
  readonly opening: string;
  /** `window 1 of 3`. */
  readonly count: string;
  /** `Pinch-pleated pair in Larch stripe, 72 in wide, 84 in long, 2.47 times full.` */
  readonly words: string;
  /** Why the advised option: `Soft blackout answers this nursery best: nearly dark by day.` */
  readonly advice: string;
  readonly elevation: Drawing;
  readonly options: readonly [PaperOption, PaperOption, PaperOption];
  readonly notes: readonly PaperNote[];
}

export interface SummaryRow {
  readonly room: string;
  readonly opening: string;
  readonly words: string;
  readonly prices: ByTier;
  /** Which of the three is advised. */
  readonly advised: 0 | 1 | 2;
}

export interface SummaryTotal {
  readonly kind: 'net' | 'tax' | 'total' | 'deposit';
  readonly label: string;
  readonly amounts: ByTier;
}

export interface PaperSummary {
  readonly tierNames: ByTier;
  readonly rows: readonly SummaryRow[];
  /** Empty when a price is still missing. */
  readonly totals: readonly SummaryTotal[];
  /** Small print under the table: what tax is on, what the totals stand for. */
  readonly notes: readonly string[];
}

export interface PaperClosing {
  readonly terms: readonly string[];
  readonly cancellation: {
    readonly says: readonly string[];
    /** Lines to write on, each behind its label; none where the decorator's own words are printed. */
    readonly blanks: readonly string[];
  };
  readonly acceptance: {
    readonly says: readonly string[];
    readonly tierNames: ByTier;
    readonly lines: readonly { readonly room: string; readonly opening: string; readonly prices: ByTier }[];
    readonly deposit: string;
    /** Lines to write on: `Signature`, `Name`, `Date`. */
    readonly blanks: readonly string[];
  };
}

export interface WorkingTable {
  readonly title: string;
  readonly columns: readonly { readonly label: string; readonly align: 'start' | 'end' }[];
  readonly rows: readonly (readonly string[])[];
  /** Set apart under a line: the total. */
  readonly total: readonly string[] | null;
}

export interface WorkingStepText {
  readonly label: string;
  readonly formula: string;
  readonly value: string;
  readonly rests: string;
}

/** The decorator's page about one treatment: each option's take-off, price lines and working. */
export interface PaperWorking {
  readonly title: string;
  readonly says: readonly string[];
  readonly options: readonly {
    readonly title: string;
    readonly tables: readonly WorkingTable[];
    readonly steps: readonly WorkingStepText[];
    readonly says: readonly string[];
  }[];
}

export interface ProposalPaper {
  /** Grows when the shape of this document changes. */
  readonly form: 1;
  readonly audience: Audience;
  /** BCP 47 tag of the paper's language. */
  readonly language: string;
  /** Title of the document: `Proposal 2026-014, revision 2, for Ada Fenn`. */
  readonly title: string;
  /** ISO date, of the paper and of the file. */
  readonly date: string;
  readonly letterhead: { readonly name: string; readonly lines: readonly string[] };
  /** `Proposal 2026-014, revision 2`. */
  readonly reference: string;
  /** `25 November 2026`. */
  readonly dated: string;
  /** `holds until 25 December 2026`; null when it does not say. */
  readonly holds: string | null;
  readonly client: { readonly name: string; readonly lines: readonly string[] };
  /** Printed on every page: `Draft: prices from example rates`. Null when there is nothing to mark. */
  readonly mark: string | null;
  /** One or two sentences under the client's name. */
  readonly opening: string;
  /** The whole house on one floor line, where it is few enough windows to be seen; else null. */
  readonly overview: Drawing | null;
  readonly summary: PaperSummary;
  readonly windows: readonly PaperWindow[];
  /** What is to be heeded at several windows or at all of them, each said once. */
  readonly notes: readonly PaperNote[];
  readonly closing: PaperClosing;
  /** Empty on the client's copy. */
  readonly working: readonly PaperWorking[];
}
