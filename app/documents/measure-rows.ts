/** What the measure sheet asks of every window, in the order in which one measures. */
import { MEASURES } from './sketch-window.ts';

export interface MeasureRow {
  /** The number in the sketch; null for what is not a length. */
  readonly number: number | null;
  readonly label: string;
  /** Names of the places where it is measured, each with a cell of its own; empty for one cell. */
  readonly places: readonly string[];
  /** Words to ring instead of something to write. */
  readonly choices: readonly string[];
}

function length(number: number, label: string, places: readonly string[] = []): MeasureRow {
  return { number, label, places, choices: [] };
}

function ring(label: string, choices: readonly string[]): MeasureRow {
  return { number: null, label, places: [], choices };
}

export const MEASURE_ROWS: readonly MeasureRow[] = [
  length(MEASURES.width, 'Opening, width', ['top', 'middle', 'bottom']),
  length(MEASURES.height, 'Opening, height', ['left', 'middle', 'right']),
  length(MEASURES.sill, 'Sill to floor'),
  length(MEASURES.floor, 'Top of frame to floor', ['left', 'middle', 'right']),
  length(MEASURES.above, 'Top of frame to ceiling'),
  length(MEASURES.left, 'Wall to the left'),
  length(MEASURES.right, 'Wall to the right'),
  length(MEASURES.projection, 'Stands out from the wall'),
  length(MEASURES.depth, 'Depth of the recess'),
  { number: null, label: 'In the way', places: [], choices: [] },
  ring('Heat below', ['none', 'radiator', 'heater', 'vent']),
  ring('Glass', ['single', 'double', 'low-e', 'triple']),
  ring('Faces', ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW']),
  ring('Mount', ['wall', 'ceiling', 'inside']),
  { number: null, label: 'Photographs, numbers', places: [], choices: [] },
];

/** How to measure, beside the sketch. */
export const MEASURE_ADVICE: readonly string[] = [
  'Steel tape. Write what you read, to 1/16 in or 1 mm; round nothing.',
  'Three readings differ: for an inside mount the smallest width counts, for cloth to the floor the shortest drop.',
  'Number 8 takes in sills, handles, trims and heaters: whatever the cloth has to clear.',
  'Measure again once floors are laid; cut from final measurements alone.',
];
