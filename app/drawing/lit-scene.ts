/** The room of a lit window: walls as light as the stack leaves them, light round the cloth and on the floor. Points. */
import { line, outline, path, rect } from './make-shapes.ts';
import { INCH } from './measure-given.ts';
import { mixColours } from './mix-colours.ts';
import type { Bounds, Shape } from './shape.ts';

const DARK_WALL = '#746b60';
const LIGHT_WALL = '#f6edda';
const GLOW = '#fff2c9';

export interface Scene {
  readonly width: number;
  readonly height: number;
  readonly floor: number;
  readonly scale: number;
  /** All of the cloth. */
  readonly cloth: Bounds;
  readonly wall: `#${string}`;
  /** 0..1: how strongly light leaks round the cloth, and comes through it. */
  readonly leak: number;
  readonly through: number;
}

/** 0..1 from a share: eyes see little light as more than it is. */
export function shownShare(value: number, full: number, power: number): number {
  return value > 0 ? Math.min(1, value / full) ** power : 0;
}

/** Wall colour of a room that is `through` light. */
export function wallColour(through: number): `#${string}` {
  return mixColours(DARK_WALL, LIGHT_WALL, through);
}

/** A white wall in the warm paint of the picture. */
export function paintedWall(white: `#${string}`): `#${string}` {
  return mixColours(white, '#c8ae7e', 0.5);
}

/** Wall and floor, a little darker towards the corners of the room. */
export function drawRoomShell(scene: Scene): readonly Shape[] {
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
export function drawHalo(scene: Scene): readonly Shape[] {
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
export function drawFloorLight(scene: Scene): readonly Shape[] {
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
