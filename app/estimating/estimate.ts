/** What every estimator returns, whatever the treatment: quantities, parts and labour with their working. */
import type { Ticks } from '#shared/length.ts';
import type { Offer, TakeoffLine, WorkingStep } from '#shared/result.ts';
import type { Heading } from '#shared/words.ts';
import type { Pleats } from './pleats.ts';
import type { Stackback } from './stackback.ts';

/** Something bought by the piece or by length that is neither cloth nor labour; of all quantity. */
export type Part =
  | { readonly part: 'rod' | 'heading-tape'; readonly length: Ticks }
  | { readonly part: 'bracket' | 'ring' | 'hook' | 'weight'; readonly count: number };
export type PartName = Part['part'];

/** Work that the price book has a rate for; of all quantity. */
export type Labour =
  | { readonly work: 'making'; readonly heading: Heading; readonly widths: number }
  | { readonly work: 'interlining' | 'blackout'; readonly widths: number }
  | { readonly work: 'putting-up'; readonly rods: number };

export interface Estimate {
  readonly finished: { readonly width: Ticks; readonly length: Ticks };
  /** Widths of one treatment in halves; null when the face runs sideways. */
  readonly halfWidths: number | null;
  readonly fullnessMade: number;
  /** Flat width as made, hems and joins off. */
  readonly madeWidth: Ticks;
  /** The face first, then the layers behind it, room to street. */
  readonly takeoff: readonly TakeoffLine[];
  readonly grams: number;
  readonly pleats: Pleats | null;
  readonly stackback: Stackback;
  /** True when every layer behind is as wide as the face. */
  readonly seamsLineUp: boolean;
  readonly parts: readonly Part[];
  readonly labour: readonly Labour[];
  readonly offer: Offer | null;
  readonly working: readonly WorkingStep[];
}
