/** Swags as they drape from a board: folds as curves from shoulder to shoulder, cascades and jabots as stepped knife folds. */
import type { ClothTones } from './draw-folds.ts';
import { clothTones } from './draw-folds.ts';
import { drawTail, drawJabot } from './draw-tail.ts';
import { boxOf, drawWelt, weltThickness } from './hung-cloth.ts';
import type { HungBox, HungPlace } from './hung-cloth.ts';
import { curveTo, CLOSE, lineTo, move, path, rect } from './make-shapes.ts';
import { INCH } from './measure-given.ts';
import { mixColours } from './mix-colours.ts';
import type { ReckonedSwags } from './reckoned.ts';
import { nearestCount } from './round-shapes.ts';
import type { PathStep, Shape } from './shape.ts';
import type { SheetStyle } from './sheet-style.ts';

/** Lining that shows where nobody has chosen a contrast. */
const LINING = '#ece2cd';
/** Finished depth that one fold takes (common practice: 6 to 7 folds in 16 to 20 in). */
const FOLD = 3 * INCH;

export function drawSwags(swags: ReckonedSwags, place: HungPlace, style: SheetStyle): readonly Shape[] {
  const box = boxOf(swags, place, style);
  const lining = clothTones(swags.source.lining ?? LINING);
  const { cascades, jabots } = swags;
  const swagShapes = orderOf(swags.count).flatMap((index) => {
    const left = box.left + (swags.lefts[index] ?? 0) * box.scale;
    return drawSwag(swags, box, left, left + swags.width * box.scale);
  });
  const tails =
    cascades === null
      ? []
      : (['left', 'right'] as const).flatMap((side) =>
          drawTail({
            tail: cascades,
            x: box[side],
            side,
            top: box.top,
            scale: box.scale,
            tones: box.tones,
            lining,
            hair: box.hair,
          }),
        );
  const between =
    jabots === null
      ? []
      : swags.jabotsAt.flatMap((at) =>
          drawJabot({
            tail: jabots,
            x: box.left + at * box.scale,
            side: 'left',
            top: box.top,
            scale: box.scale,
            tones: box.tones,
            lining,
            hair: box.hair,
          }),
        );
  // Cascades go over the ends of the row, jabots over its joints.
  return [...swagShapes, ...tails, ...between, ...drawBoard(box)];
}

function drawBoard(box: HungBox): readonly Shape[] {
  const thick = Math.max(box.hair * 1.4, 0.6 * INCH * box.scale);
  return [
    rect(box.left, box.top - thick * 0.4, box.right - box.left, thick, {
      fill: box.tones.base,
      stroke: box.tones.edge,
      strokeWidth: box.hair * 0.7,
    }),
  ];
}

/** From both ends inwards, so that the middle one lies on top; of two in the middle the left one. */
function orderOf(count: number): readonly number[] {
  const middle = (count - 1) / 2;
  return Array.from({ length: count }, (_, index) => index).sort(
    (a, b) => Math.abs(b - middle) - Math.abs(a - middle) || b - a,
  );
}

function drawSwag(swags: ReckonedSwags, box: HungBox, left: number, right: number): readonly Shape[] {
  const { tones, hair } = box;
  const depth = box.bottom - box.top;
  const width = right - left;
  const folds = nearestCount(depth / box.scale / FOLD, 2, 12);
  // The straight top between the shoulders is about half the width (a published pattern article).
  const shoulder = width * 0.25;
  const curve = (share: number) => swagCurve(left, right, box.top, depth * share, shoulder * (1 - share));
  const shapes: Shape[] = [];
  for (let fold = folds; fold >= 1; fold -= 1) {
    const outer = curve(fold / folds);
    shapes.push(foldShape(outer, tones, hair, box.top, depth * (fold / folds), left, right));
  }
  const hem = curve(1);
  shapes.push(path(hem.steps, { stroke: tones.edge, strokeWidth: hair * 1.1 }));
  if (swags.source.welt !== null) shapes.push(...drawWelt(hem.steps, swags.source.welt, weltThickness(box)));
  return shapes;
}

interface SwagCurve {
  readonly from: number;
  readonly to: number;
  readonly steps: readonly PathStep[];
}

/** From shoulder to shoulder, hanging `depth` at its middle (a cubic reaches three quarters of its handles). */
function swagCurve(left: number, right: number, top: number, depth: number, inset: number): SwagCurve {
  const [from, to] = [left + inset, right - inset];
  const reach = (to - from) * 0.16;
  const low = top + depth / 0.75;
  return { from, to, steps: [move(from, top), curveTo(from + reach, low, to - reach, low, to, top)] };
}

/** One fold from its lower edge up: it is rounded, lit above and in shade where it turns under. */
function foldShape(
  curve: SwagCurve,
  tones: ClothTones,
  hair: number,
  top: number,
  depth: number,
  left: number,
  right: number,
): Shape {
  const lit = mixColours(tones.base, tones.light, 0.7);
  const dark = mixColours(tones.base, tones.shade, 0.85);
  return path([...curve.steps, lineTo(curve.from, top), CLOSE], {
    fill: {
      from: { x: left + (right - left) * 0.4, y: top + depth * 0.62, paint: lit },
      to: { x: left + (right - left) * 0.418, y: top + depth, paint: dark },
    },
    stroke: tones.edge,
    strokeWidth: hair * 0.8,
  });
}
