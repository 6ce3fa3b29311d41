/** Tabs cut from the face: doubled strips, as many across the cloth as fit, in whole rows (common practice). */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { downToWhole, upToWhole } from '../round.ts';

export interface TabCloth {
  readonly count: number;
  readonly across: number;
  readonly rows: number;
  readonly cutWidth: Ticks;
  readonly cutLength: Ticks;
  /** Of all quantity. */
  readonly length: Ticks;
}

/** `tabs` of one piece; null for other headings. */
export function cutTabs(panels: PanelsTreatment, tabs: number, usable: Ticks): TabCloth | null {
  if (panels.heading !== 'tab') return null;
  const { width, drop, seam } = panels.practice.tab;
  const cutWidth = ticks(Math.max(1, 2 * (width + seam)));
  const cutLength = ticks(2 * (drop + seam));
  const count = tabs * panels.pieces * panels.quantity;
  const across = Math.max(1, downToWhole(usable, cutWidth));
  const rows = upToWhole(count, across);
  return { count, across, rows, cutWidth, cutLength, length: ticks(rows * cutLength) };
}
