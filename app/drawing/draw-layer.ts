/**
 * One layer of the stack in cross-section, by family: yarns of a weave over and under one another, the nap of flannel,
 * coats and dark cores. Parts run from the room to the street, each with its share of the layer's thickness.
 */
import { exhaustive } from '#shared/fault.ts';
import type { FaceFamily, InterliningFamily, LiningFamily } from '#shared/words.ts';
import type { Hex } from './drawn-room.ts';
import type { DrawnLayer } from './drawn-stack.ts';
import { circle, curveTo, move, path, rect, strokes } from './make-shapes.ts';
import { mixColours, luminanceOf, UNDYED } from './mix-colours.ts';
import type { Bounds, PathStep, Shape } from './shape.ts';
import { nearestCount } from './round-shapes.ts';
import { scatter } from './scatter.ts';

type Part =
  | { readonly kind: 'weave'; readonly share: number; readonly yarns: 'fine' | 'plain' | 'coarse' | 'open' }
  | { readonly kind: 'nap' | 'pile'; readonly share: number }
  | { readonly kind: 'coat'; readonly share: number; readonly colour: Hex };

interface Section {
  readonly parts: readonly Part[];
  /** Usual weight in g/m2 ("typical, assumed"), from which the thickness is drawn. */
  readonly weight: number;
  readonly colour: Hex;
}

const WHITE: Hex = '#fdfcf7';
const NATURAL: Hex = '#f0e8d5';
const BLACK: Hex = '#2a2927';
const FOAM: Hex = '#e9e6de';
const SMOKE: Hex = '#8f8b84';

const weave = (share: number, yarns: 'fine' | 'plain' | 'coarse' | 'open' = 'plain'): Part => ({
  kind: 'weave',
  share,
  yarns,
});
const coat = (share: number, colour: Hex): Part => ({ kind: 'coat', share, colour });

const FACES: Readonly<Record<FaceFamily, Section>> = {
  plain: { parts: [weave(1)], weight: 240, colour: UNDYED },
  print: { parts: [weave(1)], weight: 230, colour: UNDYED },
  woven: { parts: [weave(1, 'coarse')], weight: 320, colour: UNDYED },
  sheer: { parts: [weave(1, 'open')], weight: 90, colour: WHITE },
  silk: { parts: [weave(1, 'fine')], weight: 130, colour: UNDYED },
  velvet: { parts: [{ kind: 'pile', share: 0.55 }, weave(0.45)], weight: 380, colour: UNDYED },
};

const LININGS: Readonly<Record<LiningFamily, Section>> = {
  standard: { parts: [weave(1, 'fine')], weight: 150, colour: WHITE },
  combination: { parts: [{ kind: 'nap', share: 0.6 }, weave(0.4, 'fine')], weight: 260, colour: WHITE },
  'dim-out': { parts: [weave(0.42, 'fine'), coat(0.16, SMOKE), weave(0.42, 'fine')], weight: 220, colour: WHITE },
  'blackout-3-pass': {
    parts: [weave(0.46), coat(0.18, FOAM), coat(0.18, BLACK), coat(0.18, WHITE)],
    weight: 260,
    colour: WHITE,
  },
  'blackout-soft': { parts: [weave(0.38, 'fine'), coat(0.24, BLACK), weave(0.38, 'fine')], weight: 280, colour: WHITE },
  'blackout-napped': {
    parts: [{ kind: 'nap', share: 0.45 }, coat(0.18, BLACK), weave(0.37)],
    weight: 380,
    colour: WHITE,
  },
  'black-sateen': { parts: [weave(1, 'fine')], weight: 150, colour: BLACK },
  thermal: { parts: [weave(0.55), coat(0.45, FOAM)], weight: 230, colour: WHITE },
  sheer: { parts: [weave(1, 'open')], weight: 80, colour: WHITE },
  contrast: { parts: [weave(1)], weight: 150, colour: WHITE },
};

const INTERLININGS: Readonly<Record<InterliningFamily, Section>> = {
  light: { parts: [{ kind: 'nap', share: 1 }], weight: 160, colour: NATURAL },
  medium: { parts: [{ kind: 'nap', share: 1 }], weight: 230, colour: NATURAL },
  heavy: { parts: [{ kind: 'nap', share: 1 }], weight: 340, colour: NATURAL },
};

function sectionOf(layer: DrawnLayer): Section {
  switch (layer.role) {
    case 'face':
      return FACES[layer.family];
    case 'lining':
      return LININGS[layer.family];
    case 'interlining':
      return INTERLININGS[layer.family];
    default:
      return exhaustive(layer);
  }
}

/** Drawn thickness at scale 1, in points: by the square root of the weight, nap lofty; 6 to 20. */
export function thicknessOf(layer: DrawnLayer): number {
  const section = sectionOf(layer);
  const given =
    layer.weight !== null && Number.isFinite(layer.weight) && layer.weight > 0 ? layer.weight : section.weight;
  const loft = section.parts.some((part) => part.kind === 'nap' || part.kind === 'pile') ? 1.2 : 1;
  return Math.max(6, Math.min(20, Math.sqrt(given) * 0.74 * loft));
}

export function drawLayer(layer: DrawnLayer, box: Bounds, hair: number): readonly Shape[] {
  const section = sectionOf(layer);
  const colour = layer.colour === null ? section.colour : mixColours(layer.colour, '#000000', 0);
  const shapes: Shape[] = [];
  let x = box.x;
  for (const part of section.parts) {
    const strip = { ...box, x, width: box.width * part.share };
    shapes.push(...drawPart(part, strip, colour, hair));
    x += strip.width;
  }
  const isNap = section.parts.length === 1 && section.parts[0]?.kind === 'nap';
  const rim = rect(
    box.x,
    box.y,
    box.width,
    box.height,
    { stroke: inkOn(colour), strokeWidth: hair, opacity: isNap ? 0.6 : 1 },
    1,
  );
  return [...shapes, rim];
}

/** Yarn lines: darker than a pale cloth, paler than a dark one. */
function inkOn(colour: Hex): Hex {
  return luminanceOf(colour) > 0.12 ? mixColours(colour, '#2b1f12', 0.58) : mixColours(colour, '#fffaf0', 0.45);
}

function drawPart(part: Part, box: Bounds, colour: Hex, hair: number): readonly Shape[] {
  const { kind } = part;
  switch (kind) {
    case 'coat':
      return [rect(box.x, box.y, box.width, box.height, { fill: part.colour })];
    case 'weave':
      return drawWeave(box, colour, hair, part.yarns);
    case 'nap':
      return drawNap(box, colour, hair);
    case 'pile':
      return drawPile(box, colour, hair);
    default:
      return exhaustive(kind);
  }
}

/** From one weft yarn to the next, and the yarn's thickness, as shares of a plain weave's. */
const YARNS = {
  fine: { pitch: 0.72, yarn: 0.8 },
  plain: { pitch: 1, yarn: 1 },
  coarse: { pitch: 1.35, yarn: 1.25 },
  open: { pitch: 1.8, yarn: 0.8 },
} as const;

/** Weft yarns cut through (dots), two warp yarns going over and under them. */
function drawWeave(box: Bounds, colour: Hex, hair: number, yarns: keyof typeof YARNS): readonly Shape[] {
  const { pitch, yarn } = YARNS[yarns];
  const count = nearestCount(box.height / (4.6 * pitch), 3, 80);
  const step = box.height / count;
  const middle = box.x + box.width / 2;
  const swing = Math.min(box.width * 0.36, step * 0.9);
  const warp = (phase: 1 | -1): PathStep[] => [
    move(middle, box.y),
    ...Array.from({ length: count }, (_, place) => {
      const [from, to] = [box.y + place * step, box.y + (place + 1) * step];
      const side = (place % 2 === 0 ? phase : -phase) * swing * 1.33;
      return curveTo(middle + side, from + step * 0.25, middle + side, to - step * 0.25, middle, to);
    }),
  ];
  const ink = inkOn(colour);
  const r = Math.min(step * 0.3, box.width * 0.17) * yarn;
  const wefts = Array.from({ length: count }, (_, place) =>
    circle(middle, box.y + (place + 0.5) * step, r, { fill: ink, opacity: 0.55 }),
  );
  const pen = { stroke: ink, strokeWidth: hair * 0.9 * yarn } as const;
  return [
    rect(box.x, box.y, box.width, box.height, { fill: colour, opacity: yarns === 'open' ? 0.75 : 1 }),
    ...wefts,
    path(warp(1), pen),
    path(warp(-1), { ...pen, opacity: 0.55 }),
  ];
}

/** Hairs lie every which way, always the same every which way. */
function drawNap(box: Bounds, colour: Hex, hair: number): readonly Shape[] {
  const count = nearestCount((box.width * box.height) / 9, 12, 400);
  const length = Math.min(5, box.width * 0.5);
  const hairs = Array.from({ length: count }, (_, place): readonly [number, number, number, number] => {
    const [u, v, turn] = [scatter(place, 0.754877), scatter(place, 0.56984), scatter(place, 0.618034) * 6.283];
    const x = box.x + box.width * (0.04 + 0.92 * u);
    const y = box.y + length * 0.4 + (box.height - length * 0.8) * v;
    const [dx, dy] = [(Math.cos(turn) * length) / 2, (Math.sin(turn) * length) / 2.6];
    return [x - dx, y - dy, x + dx, y + dy];
  });
  return [
    rect(box.x, box.y, box.width, box.height, { fill: colour }),
    strokes(hairs, { stroke: inkOn(colour), strokeWidth: hair * 0.7, opacity: 0.42, cap: 'round' }),
  ];
}

/** Pile stands towards the room. */
function drawPile(box: Bounds, colour: Hex, hair: number): readonly Shape[] {
  const count = nearestCount(box.height / 1.9, 6, 120);
  const tufts = Array.from({ length: count }, (_, place): readonly [number, number, number, number] => {
    const y = box.y + ((place + 0.5) * box.height) / count;
    return [box.x + box.width * 0.12 * scatter(place, 0.618034), y + 0.5, box.x + box.width, y];
  });
  return [
    rect(box.x, box.y, box.width, box.height, { fill: colour }),
    strokes(tufts, { stroke: inkOn(colour), strokeWidth: hair * 0.8, opacity: 0.6 }),
  ];
}
