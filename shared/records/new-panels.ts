import type { PanelsMake } from './treatment-make.ts';

/** Panels before anybody has said anything of them: what a job file leaves out is left to the practice. */
export const NEW_PANELS: PanelsMake = {
  kind: 'panels',
  heading: 'pinch-pleat',
  arrangement: 'pair',
  mountWhere: 'wall',
  mountAbove: null,
  rodWidth: null,
  finishedLength: null,
  fullness: null,
  returnLeft: null,
  returnRight: null,
  overlap: null,
  halfWidths: null,
  extras: {},
};
