/** What stands along the flat heading of a panel without pleats, and what is trimmed so that no grommet meets a seam. */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { WorkGiven } from './work-given.ts';
import { chainOf } from './chain-of.ts';
import type { Link } from './chain-of.ts';
import type { PanelLayout } from './lay-out-panel.ts';
import type { Chain } from './work-piece.ts';

type Given = WorkGiven<PanelsTreatment>;

/** Grommets, tabs and clips along the flat heading. */
function pointPlaces(given: Given, layout: PanelLayout): readonly number[] {
  const { points } = layout;
  const { sideHem, spacing } = given.treatment.practice;
  if (points.what !== 'grommet' && points.what !== 'tab' && points.what !== 'clip') return [];
  const start = sideHem + trimOf(layout, 'left') + (points.what === 'grommet' ? spacing.grommetEdge : 0);
  return Array.from({ length: points.count }, (_, point) => start + point * points.space);
}

/** What grommets have trimmed off at the wall side, which is the left one but of a right panel. */
export function trimOf({ points, sides }: PanelLayout, side: 'left' | 'right'): number {
  const wall = sides.name === 'right' ? 'right' : 'left';
  return side === wall ? (points.grommets?.trimmed ?? 0) : 0;
}

export function pointDots(given: Given, layout: PanelLayout): readonly { readonly x: number; readonly y: number }[] {
  return pointPlaces(given, layout).map((x) => ({ x, y: layout.turn + layout.turn * 0.5 }));
}

function linksOfTrim(layout: PanelLayout, side: 'left' | 'right'): readonly Link[] {
  const length = trimOf(layout, side);
  return length === 0 ? [] : [{ length, says: 'trim' }];
}

export function pointChain(given: Given, layout: PanelLayout): Chain {
  const places = pointPlaces(given, layout);
  const { sideHem } = given.treatment.practice;
  const first = places[0];
  const last = places.at(-1);
  if (first === undefined || last === undefined) {
    return chainOf(
      'top',
      [
        { length: sideHem, says: 'side hem' },
        { length: layout.flat - 2 * sideHem },
        { length: sideHem, says: 'side hem' },
      ],
      given.say,
    );
  }
  return chainOf(
    'top',
    [
      ...linksOfTrim(layout, 'left'),
      { length: sideHem, says: 'side hem' },
      { length: first - sideHem - trimOf(layout, 'left'), says: 'edge' },
      ...places.slice(1).map((place, index) => ({ length: place - (places[index] ?? 0) })),
      { length: layout.flat - sideHem - last - trimOf(layout, 'right'), says: 'edge' },
      { length: sideHem, says: 'side hem' },
      ...linksOfTrim(layout, 'right'),
    ],
    given.say,
  );
}
