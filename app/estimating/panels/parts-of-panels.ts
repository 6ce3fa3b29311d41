/** What is bought for panels besides cloth, by heading: common practice, each counted for all quantity. */
import type { FaceCloth } from '#shared/cloth.ts';
import { exhaustive } from '#shared/fault.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { Part } from '#shared/parts.ts';
import { flatAsked } from './count-widths.ts';
import { headingLength } from './finished-width.ts';
import type { HeadingPoints } from './heading-points.ts';
import type { LaidFace } from './laid-face.ts';
import { halvesUpToTick, upToWhole } from '../round.ts';

export function partsOf(panels: PanelsTreatment, face: FaceCloth, laid: LaidFace, points: HeadingPoints): Part[] {
  const { quantity, returns } = panels;
  const pieces = panels.pieces;
  // A wave tape has its pitch: as many spaces as the gliders leave, whatever cloth was taken.
  const taped = panels.heading === 'wave' ? flatAsked(panels) : halvesUpToTick(laid.made2);
  const tape: Part = { part: 'headingTape', length: taped * quantity };
  return [
    // Under an arch the rod is bent along the curve.
    { part: 'rod', length: (headingLength(panels) + returns.left + returns.right) * quantity },
    { part: 'bracket', count: countBrackets(panels) * quantity },
    ...(hasFinials(panels) ? [{ part: 'finial' as const, count: 2 * quantity }] : []),
    ...headingParts(panels, points, tape, pieces * quantity),
    ...weigh(panels, face, laid),
  ];
}

/**
 * Two weights at the corners of each piece and one at every join, in pouches; never lead. A sheer shows them: a weighted
 * cord runs along its hem instead, and a weighted edge needs neither.
 */
function weigh({ quantity, pieces, weightedEdge }: PanelsTreatment, face: FaceCloth, laid: LaidFace): Part[] {
  if (weightedEdge) return [];
  if (face.family === 'sheer') return [{ part: 'weightedCord', length: halvesUpToTick(laid.made2) * quantity }];
  return [{ part: 'weight', count: (2 * pieces + (laid.counted?.joins ?? 0)) * quantity }];
}

/** `all` is the number of pieces over all quantity. */
function headingParts(panels: PanelsTreatment, points: HeadingPoints, tape: Part, all: number): Part[] {
  switch (panels.heading) {
    case 'pinch-pleat':
    case 'goblet':
    case 'box-pleat': {
      // One for a pleat and one for each end.
      const count = points.count === 0 ? 0 : (points.count + 2) * all;
      return count === 0 ? [tape] : [{ part: carrierOf(panels), count }, tape, { part: 'hook', count }];
    }
    case 'pencil-pleat':
      return [tape, { part: 'hook', count: points.count * all }];
    case 'grommet':
      return [tape, { part: 'grommet', count: points.count * all }];
    case 'wave':
      return [{ part: 'glider', count: points.count * all }, tape];
    case 'flat':
      return [{ part: carrierOf(panels), count: points.count * all }];
    case 'tab':
    case 'rod-pocket':
      return [];
    default:
      return exhaustive(panels.heading);
  }
}

/** A pole has rings, a track has carriers that glide in it. */
function carrierOf({ rod, motor }: PanelsTreatment): 'ring' | 'glider' {
  return rod === 'track' || motor !== null ? 'glider' : 'ring';
}

/** A pole ends in two finials; a track, a rod inside the frame, one round a bay and one bent to an arch have none. */
function hasFinials(panels: PanelsTreatment): boolean {
  const track = panels.heading === 'wave' || carrierOf(panels) === 'glider';
  return !track && panels.mount.where !== 'inside' && panels.bay === null && panels.arch === null;
}

/** Two ends, and one more wherever a span would be too wide. */
export function countBrackets(panels: Pick<PanelsTreatment, 'rodWidth' | 'arch' | 'practice'>): number {
  const { bracketSpacing } = panels.practice;
  return 1 + (bracketSpacing === 0 ? 1 : Math.max(1, upToWhole(headingLength(panels), bracketSpacing)));
}
