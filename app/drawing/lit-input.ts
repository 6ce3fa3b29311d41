/** How a treatment is shown before the light: closed over the window, or leaving glass bare; nothing of what stands in no window. */
import type { DrawnPanels, DrawnTreatment } from './drawn-treatment.ts';
import { isFurniture } from './drawn-treatment.ts';
import type { Given } from './drawn-room.ts';
import type { LitHungInput, LitScene, LitWindowInput } from './drawn-window.ts';

export interface LitPlace {
  readonly opening: LitHungInput['opening'];
  /** Hem to floor; null when unknown. */
  readonly floorClearance: Given;
}

/** Null for a bed skirt and a shower curtain: no daylight is behind them. */
export function litInput(drawn: DrawnTreatment, place: LitPlace, scene: LitScene): LitWindowInput | null {
  if (isFurniture(drawn)) return null;
  if (drawn.kind !== 'panels') return { ...scene, hung: drawn, opening: place.opening };
  if (leavesGlassBare(drawn)) {
    const still = drawn.arrangement === 'pair-stationary';
    return { ...scene, hung: { ...drawn, drawn: still ? 'open' : 'closed' }, opening: place.opening };
  }
  return {
    ...scene,
    heading: drawn.heading,
    arrangement: drawn.arrangement,
    rodWidth: drawn.rodWidth,
    finishedLength: drawn.finishedLength,
    fullness: drawn.fullness,
    halfWidths: drawn.halfWidths,
    pleats: drawn.pleats,
    floorClearance: place.floorClearance,
  };
}

function leavesGlassBare(panels: DrawnPanels): boolean {
  return panels.arrangement === 'pair-stationary' || panels.cafe === true;
}
