/** Panels on the table: one cut, one panel spread flat with its seams and pleats, and the panel as it is made. */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { headingTurn } from '#app/estimating/panels/heading-turn.ts';
import type { WorkGiven } from './work-given.ts';
import type { TakeoffLine } from '#shared/result.ts';
import { chainOf, whole } from './chain-of.ts';
import type { Link } from './chain-of.ts';
import { layOutPanels } from './lay-out-panel.ts';
import type { PanelLayout } from './lay-out-panel.ts';
import { faceLine, nameOf, sayCuts, sayQuantity } from './cloth-words.ts';
import { piecesOfLayers } from './pieces-of-layers.ts';
import { pointChain, pointDots, trimOf } from './points-of-panel.ts';
import type { Chain, ChainPart, PieceLine, PieceZone, WorkPiece, WorkRow } from './work-piece.ts';

type Given = WorkGiven<PanelsTreatment>;

export function piecesOfPanels(given: Given): readonly WorkRow[] {
  const face = faceLine(given);
  if (face === null) return [];
  const layouts = layOutPanels(given, face);
  const [only] = layouts;
  const layers = piecesOfLayers(given);
  // Panels that are made differently stand side by side, so that nobody cuts one for the other.
  if (only === undefined || layouts.length > 1) {
    return [
      { pieces: [oneCut(given, face), ...layers], high: 0.85 },
      { pieces: layouts.map((layout) => flatPanel(given, face, layout)), high: 1.1 },
      { pieces: layouts.map((layout) => madePanel(given, layout)), high: 0.85 },
    ];
  }
  return [
    { pieces: [oneCut(given, face), flatPanel(given, face, only)], shares: [0.35, 0.65], high: 1.1 },
    {
      pieces: [madePanel(given, only), ...layers],
      shares: layers.length === 0 ? [1] : [0.5, ...layers.map(() => 0.5 / layers.length)],
      high: 0.85,
    },
  ];
}

const PANEL_NAMES: Readonly<Record<PanelLayout['sides']['name'], string>> = {
  left: 'Left panel',
  middle: 'Middle panel',
  right: 'Right panel',
  only: 'One panel',
};

/** Both panels of a pair with equal sides are one drawing, the left one. */
function titleOf({ sides, mirrored }: PanelLayout, how: string): string {
  return `${mirrored ? 'One panel' : PANEL_NAMES[sides.name]}, ${how}`;
}

/** How the drawing lies, as seen from the face. */
function saySides({ sides, mirrored }: PanelLayout, halves: number): string {
  if (sides.name === 'middle') return 'between two others';
  if (sides.name === 'only') return 'left end at the left';
  const side = sides.name === 'right' ? 'right' : 'left';
  const half = halves % 2 === 1 && halves > 1 ? 'half width to the wall side' : 'wall side';
  return `${half}, at the ${side} here${mirrored ? ': the left panel, and the right one mirrors it' : ''}`;
}

/** Down the cut, from its top edge. */
function cutLinks(given: Given, face: TakeoffLine, turn: number): readonly Link[] {
  const panels = given.treatment;
  const { bottomHem, squaring } = panels.practice;
  const asked = turn + panels.finishedLength + bottomHem + squaring;
  return [
    { length: turn, says: 'heading' },
    { length: panels.finishedLength, says: 'finished' },
    { length: bottomHem, says: 'hem' },
    { length: squaring, says: 'squaring' },
    { length: Math.max(0, face.plainCut - asked), says: 'for washing' },
    ...(face.railroaded ? [] : [{ length: Math.max(0, face.cutLength - face.plainCut), says: 'to the repeat' }]),
  ];
}

function turnZones(given: Given, turn: number, width: number): { zones: PieceZone[]; lines: PieceLine[] } {
  const { finishedLength, practice } = given.treatment;
  const hemAt = turn + finishedLength;
  const across = (y: number): PieceLine => ({ is: 'fold', from: { x: 0, y }, to: { x: width, y } });
  return {
    zones: [
      { x: 0, y: 0, width, height: turn, is: 'turn' },
      { x: 0, y: hemAt, width, height: practice.bottomHem, is: 'turn' },
    ],
    lines: [across(turn), across(hemAt)],
  };
}

function oneCut(given: Given, face: TakeoffLine): WorkPiece {
  const panels = given.treatment;
  const turn = headingTurn(panels, given.made.stack.behind.length > 0);
  const name = nameOf(given, face.cloth);
  const usable = given.clothOf(face.cloth)?.usableWidth ?? 0;
  const height = face.railroaded ? face.plainCut : face.cutLength;
  const width = face.railroaded ? face.cutLength / panels.pieces : usable;
  const { zones, lines } = turnZones(given, turn, width);
  return {
    title: face.railroaded ? 'Face, one run sideways' : 'Face, one cut',
    says: [
      sayCuts(face.cuts, name),
      ...saySplit(panels, face),
      ...(panels.weightedEdge ? ['its weighted edge is the hem'] : []),
      ...sayQuantity(panels.quantity),
    ],
    width,
    height,
    face: {},
    zones,
    lines,
    chains: [
      chainOf('left', cutLinks(given, face, turn), given.say),
      whole('right', height, given.say),
      whole('bottom', width, given.say, face.railroaded ? undefined : 'usable'),
    ],
  };
}

/** Both half widths of a pair come from one cut, so that the pattern reads on over both (common practice). */
function saySplit({ pieces, halfWidths }: PanelsTreatment, face: TakeoffLine): string[] {
  const each = halfWidths ?? (face.halfWidths ?? 0) / pieces;
  if (pieces !== 2 || each % 2 !== 1) return [];
  return ['one is split: its right half to the left panel, its left half to the right one'];
}

function flatPanel(given: Given, face: TakeoffLine, layout: PanelLayout): WorkPiece {
  const panels = given.treatment;
  const { sideHem } = panels.practice;
  const height = layout.turn + panels.finishedLength + panels.practice.bottomHem;
  const { zones, lines } = turnZones(given, layout.turn, layout.flat);
  const seams = layout.seams.map((x): PieceLine => ({ is: 'seam', from: { x, y: 0 }, to: { x, y: height } }));
  const widths = face.halfWidths === null ? 'sideways, no seam' : sayWidths(face.halfWidths / panels.pieces);
  return {
    title: titleOf(layout, 'spread flat'),
    says: [
      `${widths}, ${saySides(layout, (face.halfWidths ?? 0) / panels.pieces)}${layout.seams.length > 0 ? '; seams red' : ''}`,
    ],
    width: layout.flat,
    height,
    zones: [
      ...zones,
      { x: trimOf(layout, 'left'), y: 0, width: sideHem, height, is: 'turn' },
      { x: layout.flat - sideHem - trimOf(layout, 'right'), y: 0, width: sideHem, height, is: 'turn' },
      ...pleatZones(given, layout),
    ],
    lines: [...lines, ...seams],
    dots: pointDots(given, layout),
    chains: [
      flatChain(given, layout),
      ...(layout.seams.length === 0 ? [] : [chainOf('bottom', seamLinks(layout), given.say)]),
      whole('bottom', layout.flat, given.say, 'flat'),
      chainOf(
        'right',
        [
          { length: layout.turn, says: 'heading' },
          { length: panels.finishedLength },
          { length: panels.practice.bottomHem, says: 'hem' },
        ],
        given.say,
      ),
    ],
  };
}

function sayWidths(halves: number): string {
  return `${sayHalves(halves)} ${halves === 2 ? 'width' : 'widths'}`;
}

function sayHalves(halves: number): string {
  const full = (halves - (halves % 2)) / 2;
  if (halves % 2 === 0) return String(full);
  return full === 0 ? '½' : `${full}½`;
}

function seamLinks(layout: PanelLayout): readonly Link[] {
  const stops = [0, ...layout.seams, layout.flat];
  return stops.slice(1).map((stop, place) => ({ length: stop - (stops[place] ?? 0) }));
}

function pleatZones(given: Given, layout: PanelLayout): readonly PieceZone[] {
  const { pleats } = layout.points;
  if (pleats === null) return [];
  const start = given.treatment.practice.sideHem + layout.sides.left.width;
  return Array.from({ length: pleats.count }, (_, pleat) => ({
    x: start + pleat * (layout.pleat + pleats.space),
    y: 0,
    width: layout.pleat,
    height: layout.turn,
    is: 'pleat' as const,
  }));
}

/** Along the heading: hem, what hangs flat, the first pleat and space, the others told together. */
function flatChain(given: Given, layout: PanelLayout): Chain {
  const { sideHem } = given.treatment.practice;
  const { points } = layout;
  const { pleats } = points;
  if (pleats === null) return pointChain(given, layout);
  const pair = layout.pleat + pleats.space;
  const links: Link[] = [
    { length: sideHem, says: 'side hem' },
    linkOf(layout.sides.left),
    { length: layout.pleat, says: 'pleat' },
    { length: pleats.space, says: 'space' },
  ];
  const before = links.reduce((sum, link) => sum + link.length, 0);
  const rest = pair * (pleats.count - 1) - pleats.space;
  const first = chainOf('top', links, given.say).parts;
  const others: ChainPart = {
    from: before,
    to: before + rest,
    words: `${pleats.count - 1} more pleats, ${Math.max(0, pleats.count - 2)} spaces`,
    inner: Array.from({ length: 2 * (pleats.count - 1) - 2 }, (_, mark) => {
      const pairs = (mark + 1 - ((mark + 1) % 2)) / 2;
      return before + pairs * pair + ((mark + 1) % 2) * layout.pleat;
    }),
  };
  const last = chainOf(
    'top',
    [linkOf(layout.sides.right), { length: sideHem, says: 'side hem' }],
    given.say,
    before + rest,
  ).parts;
  return { side: 'top', parts: [...first, others, ...last] };
}

function linkOf({ is, width }: PanelLayout['sides']['left']): Link {
  return is === 'edge' ? { length: width } : { length: width, says: is };
}

/** Of all quantity: a drawing that stands for both panels of a pair, or for all middle ones. */
function countOf({ pieces, quantity }: PanelsTreatment, { sides, mirrored }: PanelLayout): number {
  if (sides.name === 'middle') return (pieces - 2) * quantity;
  return (mirrored ? 2 : 1) * quantity;
}

function madePanel(given: Given, layout: PanelLayout): WorkPiece {
  const panels = given.treatment;
  const { pleats } = layout.points;
  const { left, right, finished } = layout.sides;
  const between = finished - left.width - right.width;
  const places =
    pleats === null ? [] : Array.from({ length: pleats.count }, (_, pleat) => left.width + pleat * pleats.space);
  const spaces: readonly Link[] =
    pleats === null
      ? [{ length: between, says: 'along the rod' }]
      : Array.from({ length: pleats.count - 1 }, () => ({ length: pleats.space }));
  return {
    title: titleOf(layout, 'made'),
    says: [`${countOf(panels, layout)} in all${pleats === null ? '' : `, ${pleats.count} pleats each`}`],
    width: finished,
    height: panels.finishedLength,
    lines: places.map((x): PieceLine => ({
      is: 'edge',
      from: { x, y: 0 },
      to: { x, y: Math.min(layout.turn, panels.finishedLength / 8) },
    })),
    chains: [
      chainOf('top', [linkOf(left), ...spaces, linkOf(right)], given.say),
      whole('bottom', finished, given.say, 'finished'),
      whole('left', panels.finishedLength, given.say, 'finished'),
    ],
  };
}
