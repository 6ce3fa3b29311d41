/** Board, lift, ribs, rings and cord of Roman shades, and their labour; each counted for all quantity. */
import { isBlackout } from '#shared/cloth.ts';
import type { BackCloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import type { Part } from '#shared/parts.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import type { Labour } from '../estimate.ts';
import { upToWhole } from '../round.ts';
import type { RomanShadeSheet } from './roman-shade-sheet.ts';

export function partsOfShade(shade: RomanShadeTreatment, sheet: Omit<RomanShadeSheet, 'warnings'>): Part[] {
  const { quantity } = shade;
  const { width } = sheet.finished;
  const tape = sheet.valance ? width + sheet.valance.width : width;
  const rods = sheet.ribs.length + (sheet.bottomBar ? 1 : 0);
  return [
    { part: 'board', length: sheet.board.length * quantity },
    { part: 'shadeLift', count: quantity },
    ...(rods > 0 ? [{ part: 'shadeRod' as const, length: rods * width * quantity }] : []),
    { part: 'shadeRing', count: sheet.rings.count * quantity },
    ...(sheet.ribs.length > 0 ? [{ part: 'ringTape' as const, length: sheet.ribs.length * width * quantity }] : []),
    { part: 'shadeCord', length: sheet.cords.total * quantity },
    { part: 'hookTape', length: tape * quantity },
  ];
}

export function labourOfShade(
  shade: RomanShadeTreatment,
  cutWidth: Ticks,
  behind: readonly BackCloth[],
  billableWidth: Ticks,
): Labour[] {
  const { quantity } = shade;
  const widths = Math.max(1, upToWhole(cutWidth, billableWidth)) * quantity;
  const interlinings = behind.filter((layer) => layer.role === 'interlining').length;
  return [
    { work: 'romanShade', count: quantity },
    ...(interlinings > 0 ? [{ work: 'interlining' as const, widths: widths * interlinings }] : []),
    ...(behind.some(isBlackout) ? [{ work: 'blackout' as const, widths }] : []),
    { work: 'installPerShade', count: quantity },
  ];
}
