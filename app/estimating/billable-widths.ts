/** Widths that labour is charged for. */
import type { Cloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import type { TakeoffLine } from '#shared/result.ts';
import { upToWhole } from './round.ts';

/**
 * Billable widths of one treatment. Cloth of about the usual width bills by the widths made, up to whole ones; wider
 * cloth, or cloth that runs sideways, by its flat width over the billable width, up (a workroom's printed rule: 2
 * widths of 118 in bill as 5). "About" is a tenth over the billable width, so that 55 in and 137 cm bill by widths
 * (common practice).
 */
export function billableWidths(
  face: Cloth,
  line: Pick<TakeoffLine, 'halfWidths' | 'cutLength'>,
  billableWidth: Ticks,
): number {
  if (line.halfWidths === null) return upToWhole(line.cutLength, billableWidth);
  if (billsByWidths(face, line, billableWidth)) return upToWhole(line.halfWidths, 2);
  return upToWhole(line.halfWidths * face.usableWidth, 2 * billableWidth);
}

/** Upright cloth of about the billable width bills by the widths made. */
export function billsByWidths(
  face: Cloth,
  { halfWidths }: Pick<TakeoffLine, 'halfWidths'>,
  billableWidth: Ticks,
): boolean {
  return halfWidths !== null && 10 * face.usableWidth <= 11 * billableWidth;
}
