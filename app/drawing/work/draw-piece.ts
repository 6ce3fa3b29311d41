/** One piece of a work drawing in its place on the sheet: title, what is said of it, the piece to scale, its measures. */
import { circle, line, outline, path, rect, text } from '../make-shapes.ts';
import type { Shape, Style } from '../shape.ts';
import type { SheetStyle } from '../sheet-style.ts';
import { textWidth } from '../text-widths.ts';
import { breadthOfUpright, drawAcrossChain, drawUprightChain } from './draw-chain.ts';
import type { PicturePlace, PieceLine, WorkPiece } from './work-piece.ts';

export interface Cell {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** Greatest height of the piece itself. */
  readonly most: number;
}

export interface DrawnPiece {
  readonly shapes: readonly Shape[];
  readonly height: number;
}

/** Between a piece and its measures, and from one line of measures to the next. */
function airOf(style: SheetStyle): number {
  return Math.max(7, style.figure * 0.9);
}

export function drawPiece(piece: WorkPiece, cell: Cell, style: SheetStyle): DrawnPiece {
  const air = airOf(style);
  const head = drawHead(piece, cell, style);
  const sideChains = (side: 'left' | 'right') =>
    piece.chains.filter((chain) => chain.side === side && chain.parts.length > 0);
  const breadth = (side: 'left' | 'right') =>
    sideChains(side).reduce((sum, chain) => sum + breadthOfUpright(chain, style) + air, 0);
  const [left, right] = [breadth('left'), breadth('right')];
  const slack = 4;
  const scale = Math.min(
    Math.max(10, cell.width - left - right - 2 * slack) / Math.max(1, piece.width),
    cell.most / Math.max(1, piece.height),
  );
  const x = cell.x + left + slack;
  const limits = { left: cell.x, right: cell.x + cell.width };
  const toX = (value: number) => x + value * scale;
  const over = piece.chains.filter((chain) => chain.side === 'top' && chain.parts.length > 0);
  const shapes: Shape[] = [...head.shapes];
  // Measures over the piece take as much room as their rows need: they are laid out once to know it.
  const depths = over.map((chain) => drawAcrossChain(chain, 0, -1, toX, limits, style).depth + air);
  const y = cell.y + head.height + depths.reduce((sum, depth) => sum + depth, 0) + 3;
  const toY = (value: number) => y + value * scale;
  let at = y - air;
  over.forEach((chain, place) => {
    shapes.push(...drawAcrossChain(chain, at, -1, toX, limits, style).shapes);
    at -= depths[place] ?? 0;
  });
  shapes.push(...drawBody(piece, { x, y, scale }, style));
  let bottom = toY(piece.height);
  for (const side of ['left', 'right'] as const) {
    const outward = side === 'left' ? -1 : 1;
    let place = side === 'left' ? x - air : toX(piece.width) + air;
    for (const chain of sideChains(side)) {
      const drawn = drawUprightChain(chain, place, outward, toY, y, style);
      shapes.push(...drawn.shapes);
      place += outward * (drawn.depth + air);
      bottom = Math.max(bottom, drawn.lowest ?? bottom);
    }
  }
  let below = bottom + air;
  for (const chain of piece.chains.filter((each) => each.side === 'bottom' && each.parts.length > 0)) {
    const drawn = drawAcrossChain(chain, below, 1, toX, limits, style);
    shapes.push(...drawn.shapes);
    below += drawn.depth + air;
  }
  return { shapes, height: Math.max(bottom, below) - cell.y + 2 };
}

/** What a piece needs across so that its measures stand beside it: below this a row is broken up. */
export function leastWidth(piece: WorkPiece, style: SheetStyle): number {
  const sides = piece.chains.filter(
    (chain) => (chain.side === 'left' || chain.side === 'right') && chain.parts.length > 0,
  );
  return sides.reduce((sum, chain) => sum + breadthOfUpright(chain, style) + airOf(style), 0) + style.figure * 6;
}

function drawHead(piece: WorkPiece, cell: Cell, style: SheetStyle): DrawnPiece {
  const leading = style.figure * 1.3;
  const title = wrap(piece.title, cell.width, 'semibold', style.name);
  const lines = piece.says.flatMap((words) => wrap(words, cell.width, 'regular', style.figure));
  const first = cell.y + style.name;
  const after = first + (title.length - 1) * style.name * 1.2;
  return {
    shapes: [
      ...title.map((words, i) =>
        text(cell.x, first + i * style.name * 1.2, words, { size: style.name, paint: 'ink', weight: 'semibold' }),
      ),
      ...lines.map((words, i) =>
        text(cell.x, after + leading * (i + 1), words, { size: style.figure, paint: 'pencil' }),
      ),
    ],
    height: after - cell.y + leading * lines.length + style.figure * 0.7,
  };
}

export function wrap(words: string, width: number, weight: 'regular' | 'semibold', size: number): readonly string[] {
  const lines: string[] = [];
  let own = '';
  for (const word of words.split(' ')) {
    const longer = own === '' ? word : `${own} ${word}`;
    if (own !== '' && textWidth(longer, 'sans', weight, size) > width) {
      lines.push(own);
      own = word;
    } else own = longer;
  }
  return own === '' ? lines : [...lines, own];
}

function drawBody(
  piece: WorkPiece,
  place: { readonly x: number; readonly y: number; readonly scale: number },
  style: SheetStyle,
): readonly Shape[] {
  const { x, y, scale } = place;
  const at = (point: { readonly x: number; readonly y: number }) => ({
    x: x + point.x * scale,
    y: y + point.y * scale,
  });
  const body = drawOutline(piece, place, style);
  const zones = (piece.zones ?? []).map((zone) =>
    rect(x + zone.x * scale, y + zone.y * scale, zone.width * scale, zone.height * scale, {
      fill: zone.is === 'turn' ? 'rule' : 'wall',
      opacity: zone.is === 'turn' ? 0.55 : 1,
    }),
  );
  const r = Math.max(1.1, style.figure * 0.17);
  return [
    ...body,
    ...zones,
    ...(piece.lines ?? []).map((each) => {
      const [a, b] = [at(each.from), at(each.to)];
      return line(a.x, a.y, b.x, b.y, penOf(each, style));
    }),
    ...(piece.dots ?? []).map((dot) => {
      const { x: cx, y: cy } = at(dot);
      return circle(cx, cy, r, { fill: 'paper', stroke: 'ink', strokeWidth: style.hair });
    }),
    ...(piece.labels ?? []).map((label) => {
      const { x: lx, y: ly } = at(label);
      return text(lx, ly + style.figure * 0.33, label.words, { size: style.figure, paint: 'pencil', anchor: 'middle' });
    }),
    ...(piece.picture === undefined && piece.outline === undefined
      ? [rect(x, y, piece.width * scale, piece.height * scale, { stroke: 'ink', strokeWidth: style.strong })]
      : []),
  ];
}

/** The made piece as it hangs, its own outline, or the rectangle that it is cut as. */
function drawOutline(piece: WorkPiece, place: PicturePlace, style: SheetStyle): readonly Shape[] {
  if (piece.picture !== undefined) return piece.picture(place);
  const { x, y, scale } = place;
  const cut: Style = { fill: 'card', stroke: 'ink', strokeWidth: style.strong };
  if (piece.outline === undefined) return [rect(x, y, piece.width * scale, piece.height * scale, cut)];
  return [path(outline(piece.outline.map((point) => ({ x: x + point.x * scale, y: y + point.y * scale }))), cut)];
}

function penOf(each: PieceLine, style: SheetStyle): Style {
  const { hair } = style;
  switch (each.is) {
    case 'seam':
      return { stroke: 'thread', strokeWidth: hair * 1.3, dash: [hair * 9, hair * 3, hair * 2, hair * 3] };
    case 'fold':
      return { stroke: 'ink', strokeWidth: hair, dash: [hair * 5, hair * 3.5] };
    case 'stitch':
      return { stroke: 'pencil', strokeWidth: hair, dash: [hair * 2, hair * 2] };
    case 'rib':
      return { stroke: 'pencil', strokeWidth: hair * 1.6 };
    case 'motif':
      return { stroke: 'ink', strokeWidth: hair, dash: [hair * 8, hair * 2.5, hair * 0.1, hair * 2.5], cap: 'round' };
    case 'edge':
      return { stroke: 'ink', strokeWidth: hair * 1.2 };
  }
}
