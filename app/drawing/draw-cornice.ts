/** A cornice: a padded box before the wall, its edges rounded by the padding, welts along them. */
import { boxOf, castBelow, drawEnds, drawWelt, weltThickness } from './hung-cloth.ts';
import type { HungBox, HungPlace } from './hung-cloth.ts';
import { curveTo, CLOSE, line, lineTo, move, path, rect } from './make-shapes.ts';
import { INCH } from './measure-given.ts';
import { mixColours } from './mix-colours.ts';
import type { ReckonedCornice } from './reckoned.ts';
import type { PathStep, Shape } from './shape.ts';
import type { SheetStyle } from './sheet-style.ts';

export function drawCornice(cornice: ReckonedCornice, place: HungPlace, style: SheetStyle): readonly Shape[] {
  const box = boxOf(cornice, place, style);
  const edge = shapedEdge(cornice, box);
  const { tones, hair } = box;
  const thick = weltThickness(box);
  const { welts } = cornice.source;
  const tall = box.bottom - box.top;
  const round = Math.min(tall * 0.14, 1.3 * INCH * box.scale);
  const body = [...edge, lineTo(box.right, box.top), lineTo(box.left, box.top), CLOSE];
  const rise = edge.reduce((highest, step) => ('y' in step ? Math.min(highest, step.y) : highest), box.bottom);
  return [
    ...castBelow(box.left, box.right, rise, Math.min(9, 4 * INCH * box.scale)),
    ...drawEnds(box, cornice.returns, { left: box.bottom, right: box.bottom }),
    path(body, {
      fill: {
        from: { x: 0, y: box.top, paint: mixColours(tones.base, tones.light, 0.75) },
        to: { x: 0, y: box.bottom, paint: mixColours(tones.base, tones.shade, 0.35) },
      },
    }),
    // The padding turns away from the light at its edges.
    rect(box.left, box.top, round, rise - box.top, {
      fill: {
        from: { x: box.left, y: 0, paint: mixColours(tones.base, tones.shade, 0.55) },
        to: { x: box.left + round, y: 0, paint: mixColours(tones.base, tones.light, 0.5) },
      },
      opacity: 0.55,
    }),
    rect(box.right - round, box.top, round, rise - box.top, {
      fill: {
        from: { x: box.right - round, y: 0, paint: mixColours(tones.base, tones.light, 0.2) },
        to: { x: box.right, y: 0, paint: tones.shade },
      },
      opacity: 0.7,
    }),
    line(box.left + round, box.top + round * 0.8, box.right - round, box.top + round * 0.8, {
      stroke: tones.light,
      strokeWidth: Math.max(hair, round * 0.5),
      opacity: 0.55,
      cap: 'round',
    }),
    path(body, { stroke: tones.edge, strokeWidth: hair }),
    ...(welts.top === null ? [] : drawWelt([move(box.left, box.top), lineTo(box.right, box.top)], welts.top, thick)),
    ...(welts.bottom === null ? [] : drawWelt(edge, welts.bottom, thick)),
  ];
}

/**
 * The lower edge from left to right. A shaped one is drawn as three waves whose length is that of the template, found by
 * halving: which curve it is nobody has said.
 */
function shapedEdge(cornice: ReckonedCornice, box: HungBox): readonly PathStep[] {
  const straight = [move(box.left, box.bottom), lineTo(box.right, box.bottom)];
  const length = cornice.source.shapedEdge;
  const width = box.right - box.left;
  const wanted = length === null || !Number.isFinite(length) ? 0 : length * box.scale;
  if (wanted <= width * 1.0005) return straight;
  const most = (box.bottom - box.top) * 0.55;
  let [low, high] = [0, most];
  for (let step = 0; step < 24; step += 1) {
    const middle = (low + high) / 2;
    if (waveLength(width, middle) < wanted) low = middle;
    else high = middle;
  }
  return waves(box, low);
}

const WAVES = 3;

/** Half waves of a cosine, lowest at both ends and between. */
function waveLength(width: number, rise: number): number {
  const parts = 180;
  const y = (share: number) => (rise / 2) * (1 - Math.cos(share * WAVES * 2 * Math.PI));
  let sum = 0;
  for (let part = 0; part < parts; part += 1) sum += Math.hypot(width / parts, y((part + 1) / parts) - y(part / parts));
  return sum;
}

function waves(box: HungBox, rise: number): readonly PathStep[] {
  const each = (box.right - box.left) / (WAVES * 2);
  // A cubic with flat ends at this share follows half a cosine wave to about 1 %.
  const flat = each * 0.3642;
  return [
    move(box.left, box.bottom),
    ...Array.from({ length: WAVES * 2 }, (_, half) => {
      const x = box.left + half * each;
      const [from, to] = half % 2 === 0 ? [box.bottom, box.bottom - rise] : [box.bottom - rise, box.bottom];
      return curveTo(x + flat, from, x + each - flat, to, x + each, to);
    }),
  ];
}
