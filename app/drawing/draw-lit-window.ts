/**
 * The treatment closed at noon: the cloth in its computed day colour, light leaking round it by the computed open share,
 * the room as light as the stack leaves it. Its colours are a scene of its own and do not follow the colour scheme.
 */
import { piecesOf } from '#shared/job.ts';
import { clothTones, drawFolds } from './draw-folds.ts';
import type { ClothTones, HangingPiece } from './draw-folds.ts';
import { HEADING_LOOKS } from './draw-heading.ts';
import { drawRod } from './draw-rod.ts';
import type { RodLine } from './draw-rod.ts';
import type { Given } from './drawn-room.ts';
import type { LitWindowInput } from './drawn-window.ts';
import { line, outline, path, rect } from './make-shapes.ts';
import { mixColours } from './mix-colours.ts';
import { countPleats } from './pleats.ts';
import { FINIAL, INCH, RING_DROP } from './reckon-opening.ts';
import type { Bounds, Drawing, Shape } from './shape.ts';
import { sayLight } from './show-light.ts';

export type * from './drawn-window.ts';

const DARK_WALL = '#746b60';
const LIGHT_WALL = '#f6edda';
const GLOW = '#fff2c9';
const ROD = '#3c3934';

/** Points, exactly as large as asked; the treatment keeps the proportion of rod face to length. */
export function drawLitWindow(input: LitWindowInput): Drawing {
  const width = Math.max(40, Number.isFinite(input.width) ? input.width : 200);
  const height = Math.max(30, Number.isFinite(input.height) ? input.height : 100);
  const scene = setScene(input, width, height);
  const hair = input.detail === 'screen' ? 0.7 : 0.45;
  const rod: RodLine = {
    y: scene.rodY,
    thickness: Math.max(hair * 2.2, 1.5 * INCH * scene.scale),
    paint: ROD,
    shine: '#fffdf8',
  };
  const pieces = hang(input, scene, hair);
  const look = HEADING_LOOKS[input.heading];
  const cloth = pieces.flatMap((piece) => [...drawFolds(piece), ...look.draw(piece, rod)]);
  const rods = drawRod(rod, { middle: width / 2, half: scene.cloth.width / 2, scale: scene.scale, where: 'wall' });
  const hangs = look.hangs === 'ring' || input.heading === 'rod-pocket' ? [...rods, ...cloth] : [...cloth, ...rods];
  return {
    width,
    height,
    title: `Closed ${input.when ?? 'at noon'}. Light in the room: ${sayLight(input.roomLight)} of outdoors.`,
    shapes: [
      ...drawRoomShell(scene),
      ...drawHalo(scene),
      ...drawFloorLight(scene),
      ...hangs,
      ...drawSlits(scene, pieces),
    ],
  };
}

interface Scene {
  readonly width: number;
  readonly height: number;
  readonly floor: number;
  readonly scale: number;
  readonly rodY: number;
  /** All of the cloth. */
  readonly cloth: Bounds;
  readonly wall: `#${string}`;
  /** 0..1: how strongly light leaks round the cloth, and comes through it. */
  readonly leak: number;
  readonly through: number;
}

function within(value: Given, fallback: number, low: number, high: number): number {
  return Math.max(low, Math.min(high, value !== null && Number.isFinite(value) ? value : fallback));
}

function share(value: number, full: number, power: number): number {
  return value > 0 ? Math.min(1, value / full) ** power : 0;
}

function setScene(input: LitWindowInput, width: number, height: number): Scene {
  const rod = within(input.rodWidth, 72 * INCH, 6 * INCH, 600 * INCH);
  const length = within(input.finishedLength, 84 * INCH, 6 * INCH, 300 * INCH);
  // A hem high over the floor is a short curtain: the floor then lies below the picture's part of the wall.
  const clearance = within(input.floorClearance, INCH / 2, 0, 60 * INCH);
  const over = 9 * INCH;
  const below = Math.max(9, height * 0.1);
  const scale = Math.min((width * 0.9) / (rod + 2 * FINIAL), (height - below) / (length + clearance + over));
  const floor = height - below;
  const bottom = floor - clearance * scale;
  const top = bottom - length * scale;
  const drops = { ring: -RING_DROP * scale, track: 0, over: (HEADING_LOOKS[input.heading].depth / 2) * scale } as const;
  const through = share(input.roomLight, 0.12, 0.45);
  return {
    width,
    height,
    floor,
    scale,
    rodY: top + drops[HEADING_LOOKS[input.heading].hangs],
    cloth: { x: (width - rod * scale) / 2, y: top, width: rod * scale, height: bottom - top },
    wall: mixColours(DARK_WALL, LIGHT_WALL, through),
    leak: share(input.openShare, 0.05, 0.5),
    through,
  };
}

/** Wall and floor, a little darker towards the corners of the room. */
function drawRoomShell(scene: Scene): readonly Shape[] {
  const { width, height, floor, wall } = scene;
  const shade = mixColours(wall, '#2b1f12', 0.1);
  const boards = mixColours(wall, '#4a3216', 0.2);
  const half = width / 2;
  const side = (from: number, to: number): Shape =>
    rect(Math.min(from, to), 0, half + 0.3, floor, {
      fill: { from: { x: from, y: 0, paint: shade }, to: { x: to, y: 0, paint: wall } },
    });
  const skirting = Math.max(1.2, 5 * INCH * scene.scale);
  return [
    side(0, half),
    side(width, half),
    rect(0, floor - skirting, width, skirting, { fill: mixColours(wall, '#fffaf0', 0.22) }),
    line(0, floor - skirting, width, floor - skirting, { stroke: mixColours(wall, '#2b1f12', 0.18), strokeWidth: 0.5 }),
    rect(0, floor, width, height - floor, {
      fill: {
        from: { x: 0, y: floor, paint: mixColours(boards, '#2b1f12', 0.12) },
        to: { x: 0, y: height, paint: boards },
      },
    }),
  ];
}

const HALO_STEPS = 12;

/** Light on the wall round the cloth: soft rings, each a little larger, all of them faint; kept within the wall. */
function drawHalo(scene: Scene): readonly Shape[] {
  const strength = Math.min(1, scene.leak * 0.85 + scene.through * 0.2);
  if (strength <= 0.01) return [];
  const { cloth, floor, width } = scene;
  const reach = Math.min(width, floor) * 0.16 * (0.35 + 0.65 * strength);
  return Array.from({ length: HALO_STEPS }, (_, step): Shape => {
    const out = reach * ((step + 1) / HALO_STEPS) ** 1.5;
    const left = Math.max(0, cloth.x - out);
    const right = Math.min(width, cloth.x + cloth.width + out);
    const top = Math.max(0, cloth.y - out * 0.9);
    const foot = Math.min(floor, cloth.y + cloth.height + out * 0.9);
    return rect(
      left,
      top,
      right - left,
      foot - top,
      { fill: GLOW, opacity: 0.17 * strength * (1 - step / HALO_STEPS) + 0.01 },
      out * 0.7,
    );
  });
}

/** What comes in under the hem lies on the floor, and spreads towards us. */
function drawFloorLight(scene: Scene): readonly Shape[] {
  const { cloth, floor, height, width } = scene;
  // Under a short curtain stands a wall, and only what comes through the cloth reaches the floor.
  const isLong = floor - cloth.y - cloth.height < 6 * INCH * scene.scale;
  const strength = Math.min(1, (isLong ? scene.leak * 0.8 : 0) + scene.through * 0.3);
  if (strength <= 0.01) return [];
  const steps = 7;
  return Array.from({ length: steps }, (_, step): Shape => {
    const part = (step + 1) / steps;
    const deep = floor + (height - floor) * part ** 0.8;
    const spread = (height - floor) * 1.1 * part;
    const inset = cloth.width * 0.03 * (1 - part);
    return path(
      outline([
        { x: cloth.x + inset, y: floor },
        { x: cloth.x + cloth.width - inset, y: floor },
        { x: Math.min(width, cloth.x + cloth.width + spread), y: deep },
        { x: Math.max(0, cloth.x - spread), y: deep },
      ]),
      { fill: GLOW, opacity: 0.2 * strength },
    );
  });
}

function hang(input: LitWindowInput, scene: Scene, hair: number): readonly HangingPiece[] {
  const pieces = piecesOf(input.arrangement);
  const { cloth, scale } = scene;
  const look = HEADING_LOOKS[input.heading];
  const finishedWidth = cloth.width / scale;
  const folds = countPleats({
    heading: input.heading,
    pieces,
    pleats: input.pleats,
    halfWidths: input.halfWidths,
    fullness: input.fullness,
    finishedWidth,
  });
  const tones = litTones(input, scene);
  const each = cloth.width / pieces;
  return Array.from({ length: pieces }, (_, piece) => ({
    left: cloth.x + each * piece,
    right: cloth.x + each * (piece + 1),
    top: cloth.y,
    bottom: cloth.y + cloth.height,
    folds,
    heading: Math.min(look.depth * scale, cloth.height / 3),
    flare: 0,
    hem: 4 * INCH * scale,
    tones,
    hair,
  }));
}

/** With light behind it the single cloth glows and the doubled flanks stay darker. */
function litTones(input: LitWindowInput, scene: Scene): ClothTones {
  const plain = clothTones(input.dayColour);
  return {
    ...plain,
    light: mixColours(plain.base, '#fff6dc', 0.18 + 0.3 * scene.through),
    edge: mixColours(plain.base, '#2b1f12', 0.42),
  };
}

/** Thin bright lines where cloth ends and light does not: at both edges, where a pair meets, along the top. */
function drawSlits(scene: Scene, pieces: readonly HangingPiece[]): readonly Shape[] {
  if (scene.leak <= 0.02) return [];
  const { cloth } = scene;
  const breadth = Math.max(0.4, 1.6 * scene.leak);
  const bright = { fill: '#fffae6', opacity: 0.35 + 0.6 * scene.leak } as const;
  const meeting = pieces
    .slice(1)
    .map((piece) => rect(piece.left - breadth * 0.2, cloth.y, breadth * 0.4, cloth.height, bright));
  return [
    rect(cloth.x - breadth, cloth.y, breadth, cloth.height, bright),
    rect(cloth.x + cloth.width, cloth.y, breadth, cloth.height, bright),
    ...meeting,
    rect(cloth.x, cloth.y - breadth * 0.7, cloth.width, breadth * 0.7, { ...bright, opacity: bright.opacity * 0.7 }),
  ];
}
