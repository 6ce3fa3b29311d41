/** The decorator's price book, parsed. Rates are null until she enters them: a needed one that is null is named. */
import type { Decimal, Rounding } from './decimal.ts';
import type { WorkName } from './labour.ts';
import type { Ticks } from './length.ts';
import type { CountedPart, MeasuredPart } from './parts.ts';
import type { LengthRate } from './rate.ts';
import type { Heading, LineKind } from './words.ts';

export interface Tax {
  readonly name: string;
  readonly rate: Decimal;
  readonly on: readonly LineKind[];
}

/** Hours that one unit of work takes; empty until she enters them. With `hour` they stand in for a rate that is not set. */
export interface WorkHours {
  readonly perWidth: Readonly<Partial<Record<Heading, Decimal>>>;
  readonly interlining: Decimal | null;
  readonly blackout: Decimal | null;
  readonly works: Readonly<Partial<Record<WorkName, Decimal>>>;
}

export interface PriceBook {
  /** True when the program's example rates stand in for hers: said on every result. */
  readonly example: boolean;
  readonly labour: {
    /** For each billable width of the face, by heading. */
    readonly perWidth: Readonly<Partial<Record<Heading, Decimal>>>;
    /** Added for each width and each interlining layer. */
    readonly interlining: Decimal | null;
    /** Added for each width when a blackout layer hangs behind. */
    readonly blackout: Decimal | null;
    readonly works: Readonly<Partial<Record<WorkName, Decimal>>>;
    readonly hour: Decimal | null;
    readonly hours: WorkHours;
    /** Billable widths are the flat cloth over this width, up to whole ones (common practice: 54 in). */
    readonly billableWidth: Ticks;
  };
  /** Cost of generic cloth, or of cloth whose own price is not given, by cloth id. */
  readonly cloth: Readonly<Record<string, LengthRate>>;
  /** Hardware and notions; a part without a rate is not charged, and that is said. */
  readonly parts: {
    readonly each: Readonly<Partial<Record<CountedPart, Decimal>>>;
    readonly byLength: Readonly<Partial<Record<MeasuredPart, LengthRate>>>;
  };
  readonly markup: { readonly cloth: Decimal; readonly hardware: Decimal; readonly notions: Decimal };
  readonly tax: readonly Tax[];
  readonly deposit: { readonly share: Decimal };
  readonly rounding: Rounding;
}
