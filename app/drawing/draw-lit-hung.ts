/**
 * A Roman shade let down before the light, or what leaves glass bare (a valance, a cornice, swags, panels that do not
 * draw, a café curtain): the window in its wall, as light as the readings say.
 */
import { clothTones } from './draw-folds.ts';
import type { ReckonedTreatment } from './reckoned.ts';
import { reckonTreatment } from './reckon-treatment.ts';
import { drawHung } from './draw-hung.ts';
import type { LitHungInput } from './drawn-window.ts';
import { drawFloorLight, drawHalo, drawRoomShell, paintedWall, shownShare, wallColour } from './lit-scene.ts';
import type { Scene } from './lit-scene.ts';
import { rect } from './make-shapes.ts';
import { CASING, INCH, SILL_HORN, take } from './measure-given.ts';
import { mixColours } from './mix-colours.ts';
import { nearestCount } from './round-shapes.ts';
import type { Bounds, Drawing, Shape } from './shape.ts';
import { SHEET_STYLES } from './sheet-style.ts';
import { sayLight } from './show-light.ts';

const SKY_TOP = '#fffdf2';
const SKY_BOTTOM = '#fbf3d8';
/** And by night, seen from a lit room. */
const NIGHT_TOP = '#2a3038';
const NIGHT_BOTTOM = '#3a3d40';
/** A sill lower than this shows the floor. */
const FLOOR_SHOWS = 14 * INCH;

export function drawLitHung(input: LitHungInput, width: number, height: number): Drawing {
  const opening = {
    width: take(input.opening.width, 'width'),
    height: take(input.opening.height, 'height'),
    sill: take(input.opening.sill, 'sill'),
  };
  const head = opening.sill.ticks + opening.height.ticks;
  const ceiling = take(null, 'ceiling', head + 30 * INCH);
  const shade = input.hung.kind === 'roman-shade';
  const hung = reckonTreatment(shown(input), { width: opening.width, sill: opening.sill.ticks, head, ceiling });
  const across = 2 * Math.max(hung.reach, opening.width.ticks / 2 + CASING + SILL_HORN);
  const lowest = Math.min(opening.sill.ticks, hung.hem);
  const floorShows = lowest <= FLOOR_SHOWS;
  const below = floorShows ? height * 0.1 : 0;
  const base = floorShows ? 0 : lowest - 9 * INCH;
  const highest = Math.max(head + CASING, hung.top + hung.over) + 6 * INCH;
  const scale = Math.min((width * 0.86) / across, (height - below) / (highest - base));
  // The floor of the room, perhaps below the picture.
  const ground = height - below + base * scale;
  const middle = width / 2;
  const glass = glassOf(opening, middle, ground, scale);
  const through = shownShare(input.roomLight, 0.12, 0.45);
  const sky = Math.max(0, Math.min(1, input.sky ?? 1));
  const scene: Scene = {
    width,
    height,
    floor: floorShows ? height - below : height,
    scale,
    cloth: shade ? clothOf(hung, middle, ground, scale) : glass,
    wall: input.wall === undefined ? wallColour(through) : paintedWall(input.wall),
    leak: shade ? shownShare(input.openShare, 0.05, 0.5) : sky,
    through,
  };
  const style = { ...SHEET_STYLES[input.detail], hair: input.detail === 'screen' ? 0.75 : 0.5 };
  return {
    width,
    height,
    title: `${shade ? 'Let down' : 'As it hangs'} ${input.when ?? 'at noon'}. Light in the room: ${sayLight(input.roomLight)} of outdoors.`,
    shapes: [
      ...drawRoomShell(scene).filter((shape) => floorShows || !isFloor(shape, scene)),
      ...drawHalo(scene),
      ...(floorShows ? drawFloorLight(scene) : []),
      ...drawLitFrame(glass, scene, { hasSill: opening.sill.ticks > 5 * INCH, sky }),
      ...drawHung(hung, { middle, floor: ground, scale }, style),
      ...(shade ? drawSlits(scene, input) : []),
    ],
  };
}

/** Let down, and in the colour that the light makes of it. */
function shown(input: LitHungInput): LitHungInput['hung'] {
  const { hung, dayColour } = input;
  return hung.kind === 'roman-shade'
    ? { ...hung, colour: dayColour, drawn: 'lowered' }
    : { ...hung, colour: dayColour };
}

/** Where the picture ends above the floor there is neither floor nor skirting. */
function isFloor(shape: Shape, scene: Scene): boolean {
  if (shape.kind === 'line') return true;
  return shape.kind === 'rect' && shape.y > scene.height * 0.5;
}

interface Hole {
  readonly width: { readonly ticks: number };
  readonly height: { readonly ticks: number };
  readonly sill: { readonly ticks: number };
}

function glassOf(opening: Hole, middle: number, ground: number, scale: number): Bounds {
  const width = opening.width.ticks * scale;
  const height = opening.height.ticks * scale;
  return { x: middle - width / 2, y: ground - opening.sill.ticks * scale - height, width, height };
}

function clothOf(hung: ReckonedTreatment, middle: number, ground: number, scale: number): Bounds {
  const width = hung.rod.ticks * scale;
  const top = ground - hung.top * scale;
  return { x: middle - width / 2, y: top, width, height: hung.length.ticks * scale };
}

function drawLitFrame(
  glass: Bounds,
  scene: Scene,
  { hasSill, sky }: { readonly hasSill: boolean; readonly sky: number },
): readonly Shape[] {
  const { scale, wall } = scene;
  const casing = CASING * scale;
  const frame = mixColours(wall, '#fffdf6', 0.45);
  const edge = mixColours(wall, '#2b1f12', 0.32);
  const bar = Math.max(0.7, 1.1 * INCH * scale);
  const columns = nearestCount(glass.width / scale / (27 * INCH), 1, 10);
  const rows = nearestCount(glass.height / scale / (27 * INCH), 1, 6);
  const shadedBar = mixColours(frame, '#6b5c45', 0.35);
  const pen = { fill: frame, stroke: edge, strokeWidth: 0.45 } as const;
  return [
    rect(glass.x - casing, glass.y - casing, glass.width + 2 * casing, glass.height + casing, pen),
    rect(glass.x, glass.y, glass.width, glass.height, {
      fill: {
        from: { x: 0, y: glass.y, paint: mixColours(NIGHT_TOP, SKY_TOP, sky) },
        to: { x: 0, y: glass.y + glass.height, paint: mixColours(NIGHT_BOTTOM, SKY_BOTTOM, sky) },
      },
      stroke: edge,
      strokeWidth: 0.45,
    }),
    ...Array.from({ length: columns - 1 }, (_, place) =>
      rect(glass.x + (glass.width * (place + 1)) / columns - bar / 2, glass.y, bar, glass.height, { fill: shadedBar }),
    ),
    ...Array.from({ length: rows - 1 }, (_, place) =>
      rect(glass.x, glass.y + (glass.height * (place + 1)) / rows - bar / 2, glass.width, bar, { fill: shadedBar }),
    ),
    ...(hasSill
      ? [
          rect(
            glass.x - casing - SILL_HORN * scale,
            glass.y + glass.height,
            glass.width + 2 * (casing + SILL_HORN * scale),
            Math.max(1.2, 1.4 * INCH * scale),
            pen,
          ),
        ]
      : []),
  ];
}

/** Light beside a shade, where cloth ends and the window does not. */
function drawSlits(scene: Scene, input: LitHungInput): readonly Shape[] {
  if (scene.leak <= 0.02) return [];
  const { cloth } = scene;
  const breadth = Math.max(0.4, 1.5 * scene.leak);
  const bright = { fill: '#fffae6', opacity: 0.35 + 0.6 * scene.leak } as const;
  const bottom = mixColours(clothTones(input.dayColour).base, '#fffae6', 0.9);
  return [
    rect(cloth.x - breadth, cloth.y, breadth, cloth.height, bright),
    rect(cloth.x + cloth.width, cloth.y, breadth, cloth.height, bright),
    rect(cloth.x, cloth.y + cloth.height, cloth.width, breadth * 0.7, { fill: bottom, opacity: bright.opacity * 0.8 }),
  ];
}
