/** What every estimator returns, whatever the treatment: quantities, parts and labour with their working. */
import type { Cloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import type { WorkName } from '#shared/labour.ts';
import type { Part } from '#shared/parts.ts';
import type { Offer, TakeoffLine, WorkingStep } from '#shared/result.ts';
import type { Heading, RoomUse } from '#shared/words.ts';
import type { Pleats } from './panels/pleats.ts';
import type { Say } from './say.ts';
import type { ClearingRod } from './panels/rod-to-clear.ts';
import type { Stackback } from './panels/stackback.ts';

/** Work that the price book has a rate for; of all quantity. */
export type Labour =
  | { readonly work: 'making'; readonly heading: Heading; readonly widths: number }
  | { readonly work: 'interlining' | 'blackout'; readonly widths: number }
  /** `count` of pieces, or of feet or parts of them where the work is priced by the foot. */
  | { readonly work: WorkName; readonly count: number };

/** What a take-off may know of the place where the treatment hangs. */
export interface HangingPlace {
  /** Width of the opening; null where nobody measured one. */
  readonly opening: Ticks | null;
  readonly use: RoomUse;
  readonly heatSourceBelow: boolean;
}

/** What an estimator is given besides the treatment and its stack. */
export interface EstimateGiven {
  /** Grams a square metre of a cloth, known or typical. */
  readonly massOf: (cloth: Cloth) => number;
  /** Cloth by its id: bands and other cloth that is neither face nor layer. */
  readonly clothOf: (id: string) => Cloth | null;
  readonly say: Say;
  /** What labour counts a width by. */
  readonly billableWidth: Ticks;
  /** Not given where only the cloth is asked about. */
  readonly place?: HangingPlace;
}

export interface Estimate {
  readonly finished: { readonly width: Ticks; readonly length: Ticks };
  /** Widths of one treatment in halves; null when the face runs sideways or is cut in pieces of other shapes. */
  readonly halfWidths: number | null;
  /** Null where nothing is gathered or pleated. */
  readonly fullnessMade: number | null;
  /** Flat width as made, hems and joins off. */
  readonly madeWidth: Ticks;
  /** The face first, then other cloth that shows, then the layers behind it, room to street. */
  readonly takeoff: readonly TakeoffLine[];
  readonly grams: number;
  readonly pleats: Pleats | null;
  /** Null for what does not draw open to a side. */
  readonly stackback: Stackback | null;
  /** The rod that would clear the opening; not given where nothing draws back beside it. */
  readonly clearing?: ClearingRod | null;
  /** True when every layer behind is as wide as the face. */
  readonly seamsLineUp: boolean;
  readonly parts: readonly Part[];
  readonly labour: readonly Labour[];
  readonly offer: Offer | null;
  readonly working: readonly WorkingStep[];
}
