import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';

/**
 * Added above the finished length. A rod pocket over a rod of known diameter takes that diameter, its turn, its ease and
 * the header once more, which stands double; every other heading takes its setting, by whether it is lined.
 */
export function headingTurn(panels: PanelsTreatment, lined: boolean): Ticks {
  const { pocket, headingAllowance } = panels.practice;
  if (panels.heading === 'rod-pocket' && panels.rodDiameter !== null)
    return ticks(panels.header + panels.rodDiameter + pocket.turn + pocket.ease);
  const turns = headingAllowance[panels.heading];
  return ticks((lined ? turns.lined : turns.unlined) + panels.header);
}
