/**
 * What hangs flat at either side of each panel on a rod, left to right as they are seen from the room: a return where the
 * rod goes back to the wall, half the overlap where two panels meet, nothing beside a neighbour.
 */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { coveredWidth } from './covered-width.ts';

export interface FlatSide {
  readonly is: 'return' | 'overlap' | 'edge';
  /** In ticks, perhaps a half. */
  readonly width: number;
}

export interface PanelSides {
  readonly name: 'left' | 'middle' | 'right' | 'only';
  readonly left: FlatSide;
  readonly right: FlatSide;
  /** Of this panel, in ticks, unrounded. */
  readonly finished: number;
}

/** One entry for each panel of one treatment. `made2` is twice the flat width of all of them as made. */
export function sidesOfPanels(panels: PanelsTreatment, made2: number): readonly PanelSides[] {
  const { pieces, returns, overlap } = panels;
  const hangsFlat = returns.left + returns.right + overlap;
  const alongRod = (coveredWidth(panels, made2) - hangsFlat) / pieces;
  return Array.from({ length: pieces }, (_, place): PanelSides => {
    const first = place === 0;
    const last = place === pieces - 1;
    const inner: FlatSide = pieces === 2 ? { is: 'overlap', width: overlap / 2 } : { is: 'edge', width: 0 };
    const left: FlatSide = first ? { is: 'return', width: returns.left } : inner;
    const right: FlatSide = last ? { is: 'return', width: returns.right } : inner;
    return { name: nameOf(first, last), left, right, finished: alongRod + left.width + right.width };
  });
}

function nameOf(first: boolean, last: boolean): PanelSides['name'] {
  if (first && last) return 'only';
  if (first) return 'left';
  return last ? 'right' : 'middle';
}

/** The panels that are made differently: a right one that mirrors the left one, and further middle ones, are left out. */
export function unlikePanels(all: readonly PanelSides[]): readonly PanelSides[] {
  const [first] = all;
  return all.filter((each, place) => {
    if (place === 0) return true;
    if (each.name === 'middle') return all.findIndex(({ name }) => name === 'middle') === place;
    return each.right.width !== first?.left.width;
  });
}
