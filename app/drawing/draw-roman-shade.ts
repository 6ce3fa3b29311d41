/**
 * Roman shades: flat with its rows, in soft folds from top to hem, or relaxed into a dip. Half raised, the lower rows are
 * gathered into folds and a fine dashed outline shows where the hem hangs when it is let down.
 */
import type { ClothTones } from './draw-folds.ts';
import { boxOf, castBelow, drawEnds } from './hung-cloth.ts';
import type { HungBox, HungPlace } from './hung-cloth.ts';
import { curveTo, CLOSE, line, lineTo, move, path, rect, strokes } from './make-shapes.ts';
import { INCH } from './measure-given.ts';
import { mixColours } from './mix-colours.ts';
import type { ReckonedRomanShade } from './reckoned.ts';
import { nearestCount, onesToCover } from './round-shapes.ts';
import type { Gradient, Shape } from './shape.ts';
import type { SheetStyle } from './sheet-style.ts';

export function drawRomanShade(shade: ReckonedRomanShade, place: HungPlace, style: SheetStyle): readonly Shape[] {
  const full = boxOf(shade, place, style);
  const box: HungBox = { ...full, bottom: Math.min(full.bottom, full.top + shade.shown * full.scale) };
  const raised = full.bottom - box.bottom > 2;
  const ends = { left: box.bottom, right: box.bottom };
  return [
    ...(raised ? letDown(full, box) : []),
    ...(shade.source.style === 'relaxed'
      ? []
      : castBelow(box.left, box.right, box.bottom, Math.min(5, 2 * INCH * box.scale))),
    ...drawEnds(box, shade.returns, ends),
    ...drawCloth(shade, box, full, raised),
    ...drawOwnValance(shade, box),
    line(box.left, box.top, box.right, box.top, { stroke: box.tones.edge, strokeWidth: box.hair * 1.8 }),
  ];
}

/** The outline of the shade when it is let down. */
function letDown(full: HungBox, shown: HungBox): readonly Shape[] {
  return [
    path(
      [
        move(full.left, shown.bottom),
        lineTo(full.left, full.bottom),
        lineTo(full.right, full.bottom),
        lineTo(full.right, shown.bottom),
      ],
      { stroke: 'pencil', strokeWidth: full.hair, dash: [full.hair * 5, full.hair * 4] },
    ),
  ];
}

function drawCloth(shade: ReckonedRomanShade, box: HungBox, full: HungBox, raised: boolean): readonly Shape[] {
  switch (shade.source.style) {
    case 'flat':
      return raised ? drawRaised(shade, box) : drawFlat(shade, box, full);
    case 'soft-fold':
      return drawSoft(shade, box, full);
    case 'relaxed':
      return drawRelaxed(shade, box, raised);
  }
}

/** Down the shade: the cloth turns a little from the light from left to right. */
function across(box: HungBox): Gradient {
  const { base, light, shade } = box.tones;
  return {
    from: { x: box.left, y: 0, paint: mixColours(base, light, 0.5) },
    to: { x: box.right, y: 0, paint: mixColours(base, shade, 0.14) },
  };
}

function rowLines(
  shade: ReckonedRomanShade,
  box: HungBox,
  hem: number,
): readonly (readonly [number, number, number, number])[] {
  return shade.rows
    .map((row) => hem - row * box.scale)
    .filter((y) => y > box.top + 1 && y < box.bottom - 1)
    .map((y) => [box.left, y, box.right, y] as const);
}

function drawFlat(shade: ReckonedRomanShade, box: HungBox, full: HungBox): readonly Shape[] {
  const { tones, hair } = box;
  const rows = rowLines(shade, box, full.bottom);
  return [
    rect(box.left, box.top, box.right - box.left, box.bottom - box.top, {
      fill: across(box),
      stroke: tones.edge,
      strokeWidth: hair,
    }),
    // Each rib stands out a little: light above it, shade below.
    strokes(rows, { stroke: tones.edge, strokeWidth: hair * 0.8, opacity: 0.6 }),
    strokes(
      rows.map(([x1, y1, x2, y2]) => [x1, y1 + hair * 1.6, x2, y2 + hair * 1.6] as const),
      { stroke: tones.shade, strokeWidth: hair * 1.8, opacity: 0.35 },
    ),
  ];
}

/** The gathered rows lie one over another, each a little lower; the lowest is a whole half fold. */
function drawRaised(shade: ReckonedRomanShade, box: HungBox): readonly Shape[] {
  const { tones, hair } = box;
  const deep = box.bottom - box.top;
  const length = shade.length.ticks * box.scale;
  const spacing = length / (shade.rows.length + 0.5);
  const loop = Math.min(spacing / 2, deep * 0.5);
  const taken = length - deep;
  const gathered = Math.max(1, Math.min(shade.rows.length, onesToCover(taken / spacing)));
  const step = Math.min(loop * 0.62, (deep * 0.62 - loop) / gathered);
  const lip = Math.max(2, step);
  const flatEnd = box.bottom - loop - lip * (gathered - 1);
  const flat: Shape = rect(box.left, box.top, box.right - box.left, Math.max(1, flatEnd - box.top + loop * 0.4), {
    fill: across(box),
    stroke: tones.edge,
    strokeWidth: hair,
  });
  // Rows that are still flat, from the board down.
  const lines = Array.from({ length: Math.max(0, shade.rows.length - gathered) }, (_, row) => {
    const y = box.top + spacing * (row + 1);
    return [box.left, y, box.right, y] as const;
  }).filter(([, y]) => y < flatEnd - 2);
  const folds = Array.from({ length: gathered }, (_, fold) => {
    const bottom = box.bottom - fold * lip;
    return drawFold(box, bottom - (fold === gathered - 1 ? loop : lip), bottom, tones);
  });
  return [flat, strokes(lines, { stroke: tones.edge, strokeWidth: hair * 0.8, opacity: 0.5 }), ...folds.flat()];
}

/** One fold seen from in front: lit where it comes forward, dark under its lip. */
function drawFold(box: HungBox, top: number, bottom: number, tones: ClothTones): readonly Shape[] {
  const width = box.right - box.left;
  const high = bottom - top;
  return [
    rect(box.left, top, width, high, {
      fill: {
        from: { x: 0, y: top, paint: mixColours(tones.base, tones.light, 0.75) },
        to: { x: 0, y: bottom, paint: mixColours(tones.base, tones.shade, 0.9) },
      },
      stroke: tones.edge,
      strokeWidth: box.hair * 0.9,
    }),
    line(box.left, bottom, box.right, bottom, { stroke: tones.edge, strokeWidth: box.hair * 1.4 }),
  ];
}

/** Twice the cloth between two rows: each hangs over the one below, its lower edge a soft roll. */
function drawSoft(shade: ReckonedRomanShade, box: HungBox, full: HungBox): readonly Shape[] {
  const { tones, hair } = box;
  const raisedBy = full.bottom - box.bottom;
  const edges = [0, ...shade.rows.map((row) => row * box.scale), full.bottom - full.top];
  // Half raised, the rows draw together evenly at the foot.
  const squeeze = 1 - raisedBy / Math.max(1, full.bottom - full.top);
  const places = edges.map((edge) => box.bottom - edge * squeeze);
  const roll = Math.min(3 * INCH * box.scale, ((box.bottom - box.top) / Math.max(1, edges.length)) * 0.3);
  const shapes: Shape[] = [
    rect(box.left, box.top, box.right - box.left, box.bottom - box.top, {
      fill: tones.shade,
      stroke: tones.edge,
      strokeWidth: hair,
    }),
  ];
  for (let place = 0; place < places.length - 1; place += 1) {
    const [low, high] = [places[place] ?? box.bottom, places[place + 1] ?? box.top];
    const belly = place === 0 ? low : low + roll;
    shapes.push(
      path(
        [
          move(box.left, high),
          lineTo(box.right, high),
          lineTo(box.right, low),
          curveTo(
            box.right - (box.right - box.left) * 0.04,
            belly,
            box.right - (box.right - box.left) * 0.1,
            belly,
            (box.left + box.right) / 2,
            belly,
          ),
          curveTo(
            box.left + (box.right - box.left) * 0.1,
            belly,
            box.left + (box.right - box.left) * 0.04,
            belly,
            box.left,
            low,
          ),
          CLOSE,
        ],
        {
          fill: {
            from: { x: 0, y: high + (belly - high) * 0.35, paint: mixColours(tones.base, tones.light, 0.8) },
            to: { x: 0, y: belly, paint: mixColours(tones.base, tones.shade, 0.95) },
          },
          stroke: tones.edge,
          strokeWidth: hair * 0.85,
        },
      ),
    );
  }
  return shapes;
}

/** Cords near the edges alone: the cloth between them falls in a dip, with folds that swing from one to the other. */
function drawRelaxed(shade: ReckonedRomanShade, box: HungBox, raised: boolean): readonly Shape[] {
  const { tones, hair } = box;
  const width = box.right - box.left;
  const deep = box.bottom - box.top;
  const dip = Math.min(deep * 0.3, (raised ? 7 : 5.5) * INCH * box.scale);
  const side = box.bottom - dip;
  const inset = width * 0.07;
  const swing = (y: number, sag: number) => [
    move(box.left + inset * 0.5, y),
    curveTo(
      box.left + width * 0.3,
      y + sag / 0.75,
      box.right - width * 0.3,
      y + sag / 0.75,
      box.right - inset * 0.5,
      y,
    ),
  ];
  const count = raised ? nearestCount(shade.rows.length * 0.6, 3, 7) : 3;
  const reach = raised ? Math.min(deep * 0.5, count * 2.4 * INCH * box.scale) : dip * 2.4;
  const folds = Array.from({ length: count }, (_, fold) => {
    const share = (fold + 1) / count;
    return swing(side - reach * (1 - share) * 0.92, dip * (0.45 + 0.55 * share));
  });
  return [
    path(
      [
        move(box.left, box.top),
        lineTo(box.right, box.top),
        lineTo(box.right, side + dip * 0.3),
        curveTo(
          box.right - inset * 0.4,
          side + dip * 0.42,
          box.right - inset * 0.8,
          side + dip * 0.2,
          box.right - inset,
          side + dip * 0.1,
        ),
        curveTo(
          box.right - width * 0.3,
          box.bottom + dip * 0.25,
          box.left + width * 0.3,
          box.bottom + dip * 0.25,
          box.left + inset,
          side + dip * 0.1,
        ),
        curveTo(
          box.left + inset * 0.8,
          side + dip * 0.2,
          box.left + inset * 0.4,
          side + dip * 0.42,
          box.left,
          side + dip * 0.3,
        ),
        CLOSE,
      ],
      {
        fill: {
          from: { x: box.left, y: 0, paint: mixColours(tones.base, tones.light, 0.5) },
          to: { x: box.right, y: 0, paint: mixColours(tones.base, tones.shade, 0.2) },
        },
        stroke: tones.edge,
        strokeWidth: hair,
      },
    ),
    ...folds.flatMap((steps): readonly Shape[] => [
      path(steps, { stroke: tones.shade, strokeWidth: Math.max(hair * 2, dip * 0.16), opacity: 0.45, cap: 'round' }),
      path(steps, { stroke: tones.edge, strokeWidth: hair * 0.9, opacity: 0.7, cap: 'round' }),
    ]),
  ];
}

function drawOwnValance(shade: ReckonedRomanShade, box: HungBox): readonly Shape[] {
  const deep = shade.valance * box.scale;
  if (deep < 1) return [];
  const { tones, hair } = box;
  return [
    ...castBelow(box.left, box.right, box.top + deep, Math.min(3, INCH * box.scale)),
    rect(box.left - hair, box.top, box.right - box.left + 2 * hair, deep, {
      fill: {
        from: { x: 0, y: box.top, paint: mixColours(tones.base, tones.light, 0.7) },
        to: { x: 0, y: box.top + deep, paint: mixColours(tones.base, tones.shade, 0.3) },
      },
      stroke: tones.edge,
      strokeWidth: hair,
    }),
  ];
}
