/** A balloon: cloth gathered along the top and drawn up in columns, so that a puff hangs between each two of them. */
import type { HungBox } from './hung-cloth.ts';
import { curveTo, CLOSE, lineTo, move, path, strokes } from './make-shapes.ts';
import { mixColours } from './mix-colours.ts';
import { nearestCount } from './round-shapes.ts';
import type { Shape } from './shape.ts';

export function drawPuffs(box: HungBox, puffs: number, folds: number): readonly Shape[] {
  const width = box.right - box.left;
  const each = width / puffs;
  return Array.from({ length: puffs }, (_, puff) => drawPuff(box, box.left + puff * each, each, folds / puffs)).flat();
}

function drawPuff(box: HungBox, left: number, width: number, folds: number): readonly Shape[] {
  const { tones, hair, top, bottom } = box;
  const deep = bottom - top;
  const right = left + width;
  // At the columns the hem is drawn up; a puff fills out to its sides just above it.
  const nip = bottom - deep * 0.14;
  const belly = Math.min(width * 0.06, deep * 0.08);
  const middle = (left + right) / 2;
  const body = [
    move(left, top),
    lineTo(right, top),
    lineTo(right, top + deep * 0.45),
    curveTo(right + belly * 0.2, top + deep * 0.66, right - belly * 0.3, nip, right - belly, nip + deep * 0.02),
    curveTo(right - width * 0.12, bottom + deep * 0.01, middle + width * 0.2, bottom, middle, bottom),
    curveTo(middle - width * 0.2, bottom, left + width * 0.12, bottom + deep * 0.01, left + belly, nip + deep * 0.02),
    curveTo(left + belly * 0.3, nip, left - belly * 0.2, top + deep * 0.66, left, top + deep * 0.45),
    CLOSE,
  ];
  const fill = {
    from: { x: left, y: 0, paint: mixColours(tones.base, tones.light, 0.7) },
    to: { x: right, y: 0, paint: mixColours(tones.base, tones.shade, 0.75) },
  } as const;
  const swoops = [0.5, 0.66, 0.8, 0.91].map((share, place) => {
    const y = top + deep * share;
    const sag = deep * (0.1 + 0.035 * place);
    const inset = width * (0.05 + 0.02 * place);
    return path(
      [
        move(left + inset * 0.4, y - sag * 0.4),
        curveTo(
          left + inset + width * 0.18,
          y + sag * 0.8,
          right - inset - width * 0.18,
          y + sag * 0.8,
          right - inset * 0.4,
          y - sag * 0.4,
        ),
      ],
      {
        stroke: tones.edge,
        strokeWidth: hair * 0.9,
        opacity: 0.5,
      },
    );
  });
  const count = nearestCount(Math.min(folds * 2.4, width / 2.2), 2, 40);
  const tucks = Array.from({ length: count }, (_, tuck): readonly [number, number, number, number] => {
    const share = (tuck + 0.5) / count;
    const x = left + width * share;
    const long = deep * (0.16 + 0.16 * Math.abs(Math.sin(tuck * 2.1)));
    return [x, top, x + (share - 0.5) * width * 0.04, top + long];
  });
  const lower = path(
    [
      move(left + belly, nip),
      curveTo(left + width * 0.14, bottom + deep * 0.01, middle - width * 0.2, bottom, middle, bottom),
      curveTo(middle + width * 0.2, bottom, right - width * 0.14, bottom + deep * 0.01, right - belly, nip),
      curveTo(right - width * 0.2, bottom - deep * 0.06, left + width * 0.2, bottom - deep * 0.06, left + belly, nip),
      CLOSE,
    ],
    { fill: tones.shade, opacity: 0.55 },
  );
  return [
    path(body, { fill, stroke: tones.edge, strokeWidth: hair }),
    lower,
    strokes(tucks, { stroke: tones.edge, strokeWidth: hair * 0.75, opacity: 0.6 }),
    ...swoops,
  ];
}
