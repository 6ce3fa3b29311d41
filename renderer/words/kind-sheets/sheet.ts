/**
 * What a worksheet asks of one kind, as a table: groups of lines in measuring order. Each line names a path in the kept
 * form of the treatment (`shared/records/treatment-make.ts`), which is the shape of the job file in ticks.
 */
import type { LengthUnit } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { OpeningDocument } from '#shared/records/records.ts';
import type { TicksForm, TreatmentMake } from '#shared/records/treatment-make.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';

/** What a line may look at to know whether it applies and what is usual. */
export interface Asked {
  readonly form: TicksForm;
  readonly make: TreatmentMake;
  readonly practice: Practice;
  /** Code of the face cloth. */
  readonly face: string | null;
  readonly opening: OpeningDocument;
  readonly unit: LengthUnit;
}

interface LineBase {
  /** Steps joined by points; a step that is a number counts in a list: `size.widths.0`. */
  readonly path: string;
  readonly label: string;
  readonly applies?: (asked: Asked) => boolean;
}

export interface LengthLine extends LineBase {
  readonly type: 'length';
  /** Ticks that count while the line is empty. */
  readonly usual?: (asked: Asked) => number | null;
}
/** Fullness, written as people write it; kept as a ratio. */
export interface RatioLine extends LineBase {
  readonly type: 'ratio';
  /** Thousandths. */
  readonly usual?: (asked: Asked) => number | null;
}
export interface CountLine extends LineBase {
  readonly type: 'count';
  readonly least: number;
  readonly most: number;
  /** In words: `by spacing`. */
  readonly usual?: (asked: Asked) => string;
}
export interface FlagLine extends LineBase {
  readonly type: 'flag';
}
export interface ChoiceLine extends LineBase {
  readonly type: 'choice';
  readonly choices: readonly { readonly value: string; readonly name: string }[];
  /** What counts while nothing is chosen; without it the first is shown as chosen. */
  readonly usual?: (asked: Asked) => string;
  /** Where the choice is not simply the value at the path: what is chosen, and the form that follows from choosing. */
  readonly read?: (form: TicksForm) => string;
  readonly write?: (form: TicksForm, value: string, asked: Asked) => TicksForm;
}
export interface ClothLine extends LineBase {
  readonly type: 'cloth';
  /** The answer that leaves it out. */
  readonly none: string;
}
/** A return for each side: one length stands for both until the right one differs. */
export interface SidesLine extends LineBase {
  readonly type: 'sides';
  readonly usual?: (asked: Asked) => number | null;
}
/** Several readings of one thing. */
export interface ReadingsLine extends LineBase {
  readonly type: 'readings';
  readonly of: 'length' | 'degrees';
  /** One for each reading; the label of its line. */
  readonly names: readonly string[];
  /** Lines shown: one more than is written, unless told. */
  readonly shown?: (form: TicksForm) => number;
}

export type SheetLine =
  LengthLine | RatioLine | CountLine | FlagLine | ChoiceLine | ClothLine | SidesLine | ReadingsLine;

export interface SheetGroup {
  readonly id: string;
  readonly title?: string;
  readonly applies?: (asked: Asked) => boolean;
  readonly lines: readonly SheetLine[];
  /** Can be left out altogether: what stands at the path is there or not. */
  readonly optional?: {
    readonly path: string;
    readonly add: string;
    readonly takeOff: string;
    readonly start: (asked: Asked) => unknown;
  };
  /** As many as wanted: the lines are those of each, their paths below the list's. */
  readonly list?: {
    readonly path: string;
    readonly add: string;
    readonly takeOff: string;
    readonly most: number;
    readonly start: (asked: Asked) => unknown;
  };
  /** A drawing of what is asked stands over its lines. */
  readonly drawing?: 'hang';
}

export interface KindSheet {
  readonly kind: TreatmentKind;
  /** A form to begin with. */
  readonly start: (unit: LengthUnit) => TicksForm;
  /** Measured at each window anew: not taken along when the next one is made alike. */
  readonly measured: readonly string[];
  readonly groups: readonly SheetGroup[];
}

/** Choices in the order of a closed list. */
export function choicesOf<T extends string>(values: readonly T[], words: Readonly<Record<T, string>>) {
  return values.map((value) => ({ value, name: words[value] }));
}
