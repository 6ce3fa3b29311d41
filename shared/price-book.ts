/** The decorator's price book, parsed. Rates are null until she enters them: a needed one that is null is named. */
import type { Decimal, Rounding } from './decimal.ts';
import type { Ticks } from './length.ts';
import type { LengthRate } from './rate.ts';
import type { Heading, LineKind } from './words.ts';

export interface Tax {
  readonly name: string;
  readonly rate: Decimal;
  readonly on: readonly LineKind[];
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
    readonly installPerRod: Decimal | null;
    readonly hour: Decimal | null;
    /** Billable widths are the flat cloth over this width, up to whole ones (common practice: 54 in). */
    readonly billableWidth: Ticks;
  };
  /** Cost of generic cloth, or of cloth whose own price is not given, by cloth id. */
  readonly cloth: Readonly<Record<string, LengthRate>>;
  readonly hardware: {
    readonly rod: LengthRate | null;
    readonly bracket: Decimal | null;
    readonly ring: Decimal | null;
  };
  readonly notions: {
    /** Heading tape or buckram, by length of the flat heading. */
    readonly headingTape: LengthRate | null;
    readonly hook: Decimal | null;
    readonly weight: Decimal | null;
  };
  readonly markup: { readonly cloth: Decimal; readonly hardware: Decimal; readonly notions: Decimal };
  readonly tax: readonly Tax[];
  readonly deposit: { readonly share: Decimal };
  readonly rounding: Rounding;
}
