/** Who draws which kind of what hangs at a window; a new kind is one more line. */
import { exhaustive } from '#shared/fault.ts';
import { drawCornice } from './draw-cornice.ts';
import { drawPanels } from './draw-panels.ts';
import { drawRomanShade } from './draw-roman-shade.ts';
import { drawSwags } from './draw-swags.ts';
import { drawValance } from './draw-valance.ts';
import type { HungPlace } from './hung-cloth.ts';
import type { ReckonedTreatment } from './reckoned.ts';
import type { Shape } from './shape.ts';
import type { SheetStyle } from './sheet-style.ts';

export function drawHung(hung: ReckonedTreatment, place: HungPlace, style: SheetStyle): readonly Shape[] {
  switch (hung.kind) {
    case 'panels':
      return drawPanels(hung, place, style);
    case 'valance':
      return drawValance(hung, place, style);
    case 'cornice':
      return drawCornice(hung, place, style);
    case 'swags':
      return drawSwags(hung, place, style);
    case 'roman-shade':
      return drawRomanShade(hung, place, style);
    default:
      return exhaustive(hung);
  }
}
