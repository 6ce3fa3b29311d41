/**
 * A job, parsed: a whole project ready for the engines, lengths in ticks and rates exact. A job file is read into it
 * (`job-file/`), and so is a project of the portfolio; the engines know no other form.
 */
import type { Cloth } from './cloth.ts';
import type { Cutting } from './cutting.ts';
import type { LengthUnit, Ticks } from './length.ts';
import type { Locale } from './locale.ts';
import type { Currency } from './money.ts';
import type { Practice } from './practice.ts';
import type { PriceBook } from './price-book.ts';
import type { Treatment } from './treatments/treatment.ts';
import type { Budget, Climate, Facing, Glazing, Privacy, RoomUse, Tier } from './words.ts';

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

export interface Opening {
  readonly name: string;
  readonly key: string;
  /** Null, as the height, only where a bed or a bath stands and no window is: `shared/treatments/away.ts`. */
  readonly width: Ticks | null;
  readonly height: Ticks | null;
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
  /** Null: nobody asked for it. */
  readonly privacy: Privacy | null;
  readonly budget: Budget | null;
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
  readonly cutting: Cutting;
  readonly rooms: readonly Room[];
}
