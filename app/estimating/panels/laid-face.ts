import type { Ticks } from '#shared/length.ts';
import type { TakeoffLine } from '#shared/result.ts';
import type { CountedWidths } from './count-widths.ts';
import type { Cut } from '../cut-cloth.ts';
import type { TabCloth } from './tabs.ts';

/** The face once its widths are settled: what the layers behind it are reckoned from. */
export interface LaidFace {
  readonly usable: Ticks;
  readonly counted: CountedWidths | null;
  readonly made2: number;
  readonly fullnessMade: number;
  readonly line: TakeoffLine;
  readonly cut: Cut;
  /** Tabs cut from the same cloth; null for other headings, and for cloth used sideways, whose offcut holds them. */
  readonly tabs: TabCloth | null;
}
