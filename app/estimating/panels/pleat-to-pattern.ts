/**
 * Pleating to the pattern: one pleat and one space take the repeat across divided by a whole number, so that every pleat
 * shows the same part of it (common practice). The cloth that is over is trimmed at the return.
 */
import type { Ticks } from '#shared/length.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';

export interface PatternPleats {
  /** In one piece. */
  readonly count: number;
  /** The repeat is divided by this. */
  readonly parts: number;
  /** A pleat and its space, in ticks, unrounded. */
  readonly unit: number;
  /** Flat cloth that one piece keeps after hems, and what is trimmed off it. */
  readonly flat: number;
  readonly trimmed: number;
}

const MOST_PARTS = 24;
const MOST_PLEATS = 400;

/**
 * `flat` is the flat cloth of one piece after hems, `between` what its pleats are spread over (finished without what hangs
 * flat), `hangsFlat` the returns and overlap of it. The division that comes nearest to `usual` pleats; null where none
 * leaves cloth for a pleat, or where less than the least fullness would be left.
 */
export function pleatToPattern(
  panels: PanelsTreatment,
  across: Ticks,
  { flat, between, hangsFlat }: { readonly flat: number; readonly between: number; readonly hangsFlat: number },
  usual: number,
): PatternPleats | null {
  const least = panels.halfWidths === null ? panels.practice.leastFullness[panels.heading] / 1000 : 1;
  const found: PatternPleats[] = [];
  for (let parts = 1; parts <= MOST_PARTS; parts += 1) {
    const unit = across / parts;
    const pleats = mostPleats(unit, flat - hangsFlat, between);
    if (pleats === null) continue;
    const kept = hangsFlat + pleats * unit - between / (pleats - 1);
    if (kept < least * (between + hangsFlat)) continue;
    found.push({ count: pleats, parts, unit, flat: kept, trimmed: flat - kept });
  }
  const off = (each: PatternPleats): number => Math.abs(each.count - usual);
  return found.reduce<PatternPleats | null>((best, each) => (best && off(best) <= off(each) ? best : each), null);
}

/** The most pleats whose cloth and spaces go into `room`, each with cloth left for the pleat itself. */
function mostPleats(unit: number, room: number, between: number): number | null {
  let most: number | null = null;
  for (let count = 2; count <= MOST_PLEATS && count * unit - between / (count - 1) <= room; count += 1)
    if (unit > between / (count - 1)) most = count;
  return most;
}
