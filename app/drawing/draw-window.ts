/** An opening without its treatment: casing, sash, glass, glazing bars, sill; a tall one is a door. */
import { CLOSE, curveTo, line, lineTo, move, outline, path, rect, strokes } from './make-shapes.ts';
import { CASING, INCH, SILL_HORN } from './measure-given.ts';
import type { ReckonedOpening } from './reckon-opening.ts';
import type { Bounds, PathStep, Shape, Style } from './shape.ts';
import type { SheetStyle } from './sheet-style.ts';
import { nearestCount } from './round-shapes.ts';

export interface WindowPlace {
  /** Left edge of the opening. */
  readonly x: number;
  readonly floor: number;
  readonly scale: number;
}

/** Below this the opening reaches the floor for all that a drawing can tell. */
const DOOR_SILL = 5 * INCH;
/** Panes are about this wide and high. */
const PANE = 27 * INCH;

export function drawWindow(opening: ReckonedOpening, place: WindowPlace, style: SheetStyle): readonly Shape[] {
  const { scale, floor, x } = place;
  const width = opening.width.ticks * scale;
  const rise = archOf(opening) * scale;
  const height = opening.height.ticks * scale - rise;
  const bottom = floor - opening.sill.ticks * scale;
  const top = bottom - height;
  const isDoor = opening.sill.ticks <= DOOR_SILL;
  const casing = CASING * scale;
  const known = opening.width.sure && opening.height.sure && opening.sill.sure;
  const pen: Style = { fill: 'frame', stroke: 'pencil', strokeWidth: style.hair };
  const outer: Style = known ? pen : { ...pen, dash: [style.hair * 4, style.hair * 3] };
  const inset = Math.min(1.8 * INCH * scale, width * 0.14, height * 0.14);
  const glass = { x: x + inset, y: top + inset, width: width - 2 * inset, height: height - inset * (isDoor ? 2.4 : 2) };
  if (rise > 0) {
    return [
      ...drawArchedHead(x, top, width, rise, casing, outer, style),
      rect(x - casing, top, width + 2 * casing, height, outer),
      rect(x, top, width, height, pen),
      ...drawGlass(glass, opening, isDoor, scale, style),
      ...(isDoor ? [] : drawSill(opening, place, bottom, style)),
    ];
  }
  return [
    rect(x - casing, top - casing, width + 2 * casing, height + casing, outer),
    strokes(
      [
        [x - casing * 0.45, bottom, x - casing * 0.45, top - casing * 0.45],
        [x - casing * 0.45, top - casing * 0.45, x + width + casing * 0.45, top - casing * 0.45],
        [x + width + casing * 0.45, top - casing * 0.45, x + width + casing * 0.45, bottom],
      ],
      {
        stroke: 'faint',
        strokeWidth: style.hair * 0.8,
      },
    ),
    rect(x, top, width, height, pen),
    ...drawGlass(glass, opening, isDoor, scale, style),
    ...(isDoor ? [] : drawSill(opening, place, bottom, style)),
    ...(opening.source.heatSourceBelow === true && !isDoor ? drawRadiator(opening, place, bottom, style) : []),
  ];
}

/** An arched treatment hangs at an arched window: how far its head rises above the springing. */
function archOf(opening: ReckonedOpening): number {
  const rises = opening.treatments.map((treatment) =>
    treatment.kind === 'panels' && treatment.arch > 0
      ? (treatment.arch * opening.width.ticks) / treatment.rod.ticks
      : 0,
  );
  return Math.min(opening.height.ticks * 0.7, Math.max(0, ...rises));
}

function drawArchedHead(
  x: number,
  springing: number,
  width: number,
  rise: number,
  casing: number,
  outer: Style,
  style: SheetStyle,
): readonly Shape[] {
  const half = (out: number): readonly PathStep[] => {
    const [rx, ry] = [width / 2 + out, rise + out];
    const middle = x + width / 2;
    const k = 0.5523;
    return [
      move(middle - rx, springing + 1),
      lineTo(middle - rx, springing),
      curveTo(middle - rx, springing - ry * k, middle - rx * k, springing - ry, middle, springing - ry),
      curveTo(middle + rx * k, springing - ry, middle + rx, springing - ry * k, middle + rx, springing),
      lineTo(middle + rx, springing + 1),
      CLOSE,
    ];
  };
  const middle = x + width / 2;
  const bars = [-0.5, 0, 0.5].map((turn) => {
    const angle = turn * (Math.PI / 2.6);
    return [
      middle,
      springing,
      middle + (width / 2) * Math.sin(angle) * 0.99,
      springing - rise * Math.cos(angle),
    ] as const;
  });
  return [
    path(half(casing), outer),
    path(half(0), {
      fill: {
        from: { x: 0, y: springing - rise, paint: 'glass-top' },
        to: { x: 0, y: springing + rise * 2, paint: 'glass-bottom' },
      },
      stroke: 'pencil',
      strokeWidth: style.hair,
    }),
    strokes(bars, { stroke: 'frame', strokeWidth: style.hair * 3.4 }),
    strokes(bars, { stroke: 'pencil', strokeWidth: style.hair * 0.6 }),
  ];
}

function drawGlass(
  glass: Bounds,
  opening: ReckonedOpening,
  isDoor: boolean,
  scale: number,
  style: SheetStyle,
): readonly Shape[] {
  const fill = {
    from: { x: 0, y: glass.y, paint: 'glass-top' },
    to: { x: 0, y: glass.y + glass.height, paint: 'glass-bottom' },
  } as const;
  const columns = nearestCount(opening.width.ticks / PANE, 1, 12);
  const rows = nearestCount(opening.height.ticks / PANE, 1, 6);
  const bar = Math.max(style.hair * 1.6, 1.1 * INCH * scale);
  const rail = bar * 1.5;
  const barStyle: Style = { fill: 'frame', stroke: 'pencil', strokeWidth: style.hair * 0.7 };
  const across = (row: number) => glass.y + (glass.height * row) / rows;
  const upright = (column: number) => glass.x + (glass.width * column) / columns;
  const between = (count: number) => Array.from({ length: count - 1 }, (_, place) => place + 1);
  const isRail = (row: number) => !isDoor && row === nearestCount(rows / 2, 1, rows);
  const isStile = (column: number) => isDoor && columns > 1 && column === nearestCount(columns / 2, 1, columns);
  return [
    rect(glass.x, glass.y, glass.width, glass.height, { fill, stroke: 'pencil', strokeWidth: style.hair * 0.7 }),
    ...gleam(glass),
    ...between(rows).map((row) => {
      const depth = isRail(row) ? rail : bar;
      return rect(glass.x, across(row) - depth / 2, glass.width, depth, barStyle);
    }),
    ...between(columns).map((column) => {
      const breadth = isStile(column) ? rail * 1.4 : bar;
      return rect(upright(column) - breadth / 2, glass.y, breadth, glass.height, barStyle);
    }),
    ...between(columns)
      .filter(isStile)
      .map((column) => {
        const x = upright(column);
        return line(x, glass.y, x, glass.y + glass.height, { stroke: 'pencil', strokeWidth: style.hair * 0.7 });
      }),
  ];
}

/** Two slanting bands of sky in the glass, cut to it. */
function gleam(glass: Bounds): readonly Shape[] {
  const slant = Math.min(glass.width * 0.45, glass.height * 0.6);
  const band = (from: number, breadth: number): Shape => {
    const reach = glass.width - slant;
    const x = glass.x + reach * from;
    return path(
      outline([
        { x: x + slant, y: glass.y },
        { x: x + slant + reach * breadth, y: glass.y },
        { x: x + reach * breadth, y: glass.y + glass.height },
        { x, y: glass.y + glass.height },
      ]),
      { fill: '#ffffff', opacity: 0.32 },
    );
  };
  return [band(0.12, 0.24), band(0.46, 0.09)];
}

function drawSill(opening: ReckonedOpening, place: WindowPlace, bottom: number, style: SheetStyle): readonly Shape[] {
  const { scale, x } = place;
  const width = opening.width.ticks * scale;
  const reach = (CASING + SILL_HORN) * scale;
  const stool = Math.max(style.hair * 2, 1.3 * INCH * scale);
  const apron = Math.min(2.6 * INCH, opening.sill.ticks * 0.2) * scale;
  const pen: Style = { fill: 'frame', stroke: 'pencil', strokeWidth: style.hair };
  return [
    rect(x - CASING * scale, bottom + stool, width + 2 * CASING * scale, apron, { ...pen, stroke: 'faint' }),
    rect(x - reach, bottom, width + 2 * reach, stool, pen, stool / 4),
  ];
}

/** A heat source under the opening is always seen: cloth has to keep clear of it. */
function drawRadiator(
  opening: ReckonedOpening,
  place: WindowPlace,
  bottom: number,
  style: SheetStyle,
): readonly Shape[] {
  const { scale, floor, x } = place;
  const width = opening.width.ticks * scale * 0.7;
  const top = Math.max(bottom + 7 * INCH * scale, floor - 26 * INCH * scale);
  const height = floor - 3 * INCH * scale - top;
  if (height < 6) return [];
  const start = x + (opening.width.ticks * scale - width) / 2;
  const columns = nearestCount(width / Math.max(4, 3 * INCH * scale), 3, 24);
  const pen: Style = { fill: 'frame', stroke: 'pencil', strokeWidth: style.hair * 0.8 };
  const each = width / columns;
  return Array.from({ length: columns }, (_, column) =>
    rect(start + each * column + each * 0.1, top, each * 0.8, height, pen, each * 0.35),
  );
}
