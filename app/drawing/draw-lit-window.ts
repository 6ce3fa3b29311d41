/**
 * The treatment closed at noon: the cloth in its computed day colour, light leaking round it by the computed open share,
 * the room as light as the stack leaves it. Its colours are a scene of its own and do not follow the colour scheme.
 */
import { piecesOf } from '#shared/treatments/panels.ts';
import { clothTones, drawFolds } from './draw-folds.ts';
import type { ClothTones, HangingPiece } from './draw-folds.ts';
import { HEADING_LOOKS } from './draw-heading.ts';
import { drawRod } from './draw-rod.ts';
import type { RodLine } from './draw-rod.ts';
import type { Given } from './drawn-room.ts';
import type { LitPanelsInput, LitWindowInput } from './drawn-window.ts';
import { drawLitHung } from './draw-lit-hung.ts';
import { drawFloorLight, drawHalo, drawRoomShell, paintedWall, shownShare, wallColour } from './lit-scene.ts';
import type { Scene } from './lit-scene.ts';
import { rect } from './make-shapes.ts';
import { mixColours } from './mix-colours.ts';
import { countPleats } from './pleats.ts';
import { FINIAL, INCH, RING_DROP } from './measure-given.ts';
import type { Drawing, Shape } from './shape.ts';
import { sayLight } from './show-light.ts';

export type * from './drawn-window.ts';

const ROD = '#3c3934';

/** Points, exactly as large as asked; the treatment keeps the proportion of rod face to length. */
export function drawLitWindow(input: LitWindowInput): Drawing {
  const width = Math.max(40, Number.isFinite(input.width) ? input.width : 200);
  const height = Math.max(30, Number.isFinite(input.height) ? input.height : 100);
  return 'hung' in input ? drawLitHung(input, width, height) : drawLitPanels(input, width, height);
}

function drawLitPanels(input: LitPanelsInput, width: number, height: number): Drawing {
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

interface PanelScene extends Scene {
  readonly rodY: number;
}

function within(value: Given, fallback: number, low: number, high: number): number {
  return Math.max(low, Math.min(high, value !== null && Number.isFinite(value) ? value : fallback));
}

function setScene(input: LitPanelsInput, width: number, height: number): PanelScene {
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
  const through = shownShare(input.roomLight, 0.12, 0.45);
  return {
    width,
    height,
    floor,
    scale,
    rodY: top + drops[HEADING_LOOKS[input.heading].hangs],
    cloth: { x: (width - rod * scale) / 2, y: top, width: rod * scale, height: bottom - top },
    wall: input.wall === undefined ? wallColour(through) : paintedWall(input.wall),
    leak: shownShare(input.openShare, 0.05, 0.5),
    through,
  };
}

function hang(input: LitPanelsInput, scene: Scene, hair: number): readonly HangingPiece[] {
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
function litTones(input: LitPanelsInput, scene: Scene): ClothTones {
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
