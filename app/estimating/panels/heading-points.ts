/**
 * Where the heading meets the rod: pleats, grommets, gliders, tabs, clips or hooks of one piece, with the space between
 * two. Common practice; every distance is a setting.
 */
import { exhaustive } from '#shared/fault.ts';
import type { Ticks } from '#shared/length.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { finishedWidth } from './finished-width.ts';
import { countPleats } from './pleats.ts';
import type { CountedPleats } from './pleats.ts';
import { placeGrommets, seamsFromWall } from './grommets.ts';
import type { Grommets } from './grommets.ts';
import { toNearestTick, upToWhole } from '../round.ts';
import { coveredWidth } from './covered-width.ts';
import { wavePiece } from './wave.ts';

/** What stands in a row along the heading of one piece. */
export interface HeadingPoints {
  readonly what: 'pleat' | 'grommet' | 'glider' | 'tab' | 'clip' | 'hook' | 'none';
  readonly count: number;
  /** Between two, in ticks of flat cloth (pleats: of finished width), unrounded. */
  readonly space: number;
  readonly pleats: CountedPleats | null;
  /** Of grommets alone. */
  readonly grommets?: Grommets;
}

const NONE: HeadingPoints = { what: 'none', count: 0, space: 0, pleats: null };

/**
 * `made2` is twice the flat width as made, all pieces; `halves` the widths in halves, null for cloth used sideways; `across`
 * the repeat across of the face, which pleats may follow.
 */
export function countPoints(
  panels: PanelsTreatment,
  made2: number,
  halves: number | null,
  across: Ticks | null = null,
): HeadingPoints {
  const pieces = panels.pieces;
  const flat2 = Math.max(0, made2 / pieces);
  const { spacing } = panels.practice;
  switch (panels.heading) {
    case 'pinch-pleat':
    case 'goblet':
    case 'box-pleat': {
      const pleats = countPleats(panels, made2, halves, across);
      return pleats ? { what: 'pleat', count: pleats.count, space: pleats.space, pleats } : NONE;
    }
    case 'grommet': {
      const seams = halves === null ? [] : seamsFromWall(panels, made2, halves);
      const grommets = placeGrommets(panels, flat2 / 2, seams);
      return { what: 'grommet', count: grommets.count, space: grommets.space, pleats: null, grommets };
    }
    case 'wave': {
      const { gliders } = wavePiece(panels);
      return { what: 'glider', count: gliders, space: finishedWidth(panels) / pieces / (gliders - 1), pleats: null };
    }
    case 'tab':
      return evenly('tab', flat2, spacing.tab);
    case 'flat':
      return evenly('clip', flat2, spacing.clip);
    case 'pencil-pleat': {
      // Hooks sit on the gathered heading, not on the flat cloth.
      return evenly('hook', (2 * coveredWidth(panels, made2)) / pieces, spacing.hook);
    }
    case 'rod-pocket':
      return NONE;
    default:
      return exhaustive(panels.heading);
  }
}

/** `length2` is doubled; a spacing of zero asks for the two ends alone. */
function spaces(length2: number, spacing: number): number {
  return spacing === 0 ? 1 : Math.max(1, upToWhole(toNearestTick(length2), 2 * spacing));
}

function evenly(what: HeadingPoints['what'], length2: number, spacing: number): HeadingPoints {
  const between = spaces(length2, spacing);
  return { what, count: between + 1, space: length2 / 2 / between, pleats: null };
}
