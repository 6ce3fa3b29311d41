/**
 * Stitches that go through the layers behind the face, counted from the take-off: each is a hole in a coated cloth.
 * Lengths in metres. How many lines a heading takes is common practice; how large a hole stays is assumed.
 */
import { TICKS_PER_METRE } from '#shared/length.ts';
import type { Estimate } from '#app/estimating/estimate.ts';
import type { RomanShadeSheet } from '#app/estimating/roman-shade/roman-shade-sheet.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import type { Heading } from '#shared/words.ts';
import { upToEntry } from './round-figures.ts';

export interface Sewing {
  /** Machine-sewn, in metres, by what is sewn. */
  readonly lines: readonly { readonly label: string; readonly metres: number }[];
  /** Sewn on by hand: rings, each with a few stitches. */
  readonly points: number;
  /** Square metres of flat lining that the holes are spread over. */
  readonly area: number;
}

/** Rows of stitches along the top of a heading, and the length sewn down for one pleat, in metres. */
const TOP_ROWS: Readonly<Record<Heading, number>> = {
  'pinch-pleat': 2,
  goblet: 2,
  'box-pleat': 2,
  'pencil-pleat': 3,
  'rod-pocket': 2,
  tab: 2,
  grommet: 2,
  wave: 2,
  flat: 2,
};
const PLEAT_SEAM = 0.1;

/** Clear area in m2 of one needle hole, holes in a metre of machine stitching, and of one ring (assumed). */
const HOLE_AREA = 0.05e-6;
const HOLES_PER_METRE = 330;
const HOLES_PER_RING = 4;

/** Open share of the lining by its holes. */
export function holeShare(sewing: Sewing): number {
  const metres = sewing.lines.reduce((sum, line) => sum + line.metres, 0);
  return (HOLE_AREA * (HOLES_PER_METRE * metres + HOLES_PER_RING * sewing.points)) / sewing.area;
}

/** The same for so many metres sewn in each square metre, where nothing was counted. */
export function assumedHoleShare(metresPerArea: number): number {
  return HOLE_AREA * HOLES_PER_METRE * metresPerArea;
}

/** Null for kinds whose needle holes no daylight reaches, or reaches only through the top of the window. */
export function countStitches(treatment: Treatment, estimate: Estimate, sheet: object | null): Sewing | null {
  switch (treatment.kind) {
    case 'panels':
      return stitchesOfPanels(treatment, estimate);
    case 'roman-shade':
      return isShadeSheet(sheet) ? stitchesOfShade(sheet) : null;
    default:
      return null;
  }
}

function stitchesOfPanels(panels: PanelsTreatment, estimate: Estimate): Sewing {
  const flat = estimate.madeWidth / TICKS_PER_METRE;
  const length = panels.finishedLength / TICKS_PER_METRE;
  const { pieces } = panels;
  const halves = estimate.halfWidths ?? 0;
  const joins = pieces * Math.max(0, upToEntry(halves / 2 / pieces) - 1);
  const pleats = (estimate.pleats?.count ?? 0) * pieces;
  return {
    lines: [
      { label: 'side hems', metres: 2 * pieces * length },
      { label: 'hem', metres: flat },
      { label: 'heading', metres: TOP_ROWS[panels.heading] * flat + pleats * PLEAT_SEAM },
      { label: 'seams', metres: joins * length },
    ],
    points: 0,
    area: flat * length,
  };
}

/** Ribs lie in tapes or pockets, each sewn along both edges; rings are sewn on by hand. */
function stitchesOfShade(sheet: RomanShadeSheet): Sewing {
  const width = sheet.finished.width / TICKS_PER_METRE;
  const length = sheet.finished.length / TICKS_PER_METRE;
  const seams = sheet.layers[1]?.shade.seams.length ?? sheet.layers[0]?.shade.seams.length ?? 0;
  return {
    lines: [
      { label: 'side hems', metres: 2 * length },
      { label: 'hem and top', metres: 2 * width },
      { label: 'rib tapes', metres: 2 * sheet.ribs.length * width },
      { label: 'seams', metres: seams * length },
    ],
    points: sheet.rings.count,
    area: width * length,
  };
}

export function isShadeSheet(sheet: object | null): sheet is RomanShadeSheet {
  return sheet !== null && 'kind' in sheet && sheet.kind === 'roman-shade';
}
