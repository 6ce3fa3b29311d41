/** What the drawings need of light: the beam through the cross-section, and the face as it looks by day and by lamp. */
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import type { Glazing } from '#shared/words.ts';
import { ciede2000 } from './ciede2000.ts';
import { BAND_WHITE, hexOfXyz, labOf, moveWhite, scaleToY, SRGB_WHITE, xyzOf } from './colour.ts';
import type { Xyz } from './colour.ts';
import { stackSpectra } from './colour-shift.ts';
import { composeLayers, layerOf } from './compose-layers.ts';
import { glassOf } from './glass.ts';
import { fillStack, layerIn } from '../cloth/resolve-cloth.ts';
import { roundReading } from './round-reading.ts';
import { spectraOf } from './spectra.ts';

export interface LightLevel {
  /** What the light has just passed. */
  readonly after: 'street' | 'glass' | 'layer';
  /** Cloth id of the layer; null for street and glass. */
  readonly cloth: string | null;
  /** Share of the daylight outside that a window of just these layers would pass; never rises. */
  readonly level: number;
}

/** Levels from street to room: outside 1, after the glass, after each layer; the last is what reaches the room. */
export function lightProfile(face: FaceCloth, behind: readonly BackCloth[], glazing: Glazing): readonly LightLevel[] {
  const stack = fillStack(face, behind);
  const streetFirst = [stack.face, ...stack.behind].reverse();
  const layers = [layerOf(glassOf(glazing).visible), ...streetFirst.map((layer) => layerIn(layer, 'visible'))];
  return [
    { after: 'street', cloth: null, level: 1 },
    { after: 'glass', cloth: null, level: composeLayers(layers.slice(0, 1)).Tf },
    ...streetFirst.map((layer, i) => ({
      after: 'layer' as const,
      cloth: layer.cloth.id,
      level: composeLayers(layers.slice(0, i + 2)).Tf,
    })),
  ];
}

/** Light on the two sides of a window, in lux. */
export interface LightSetting {
  /** Daylight on the glass from the street. */
  readonly outsideLux: number;
  /** Light in the room on the face, without what comes through the window. */
  readonly roomLux: number;
}

/** The ends of the slider from overcast to noon, and lamplight (typical, assumed). */
export const LIGHT_SETTINGS = {
  overcast: { outsideLux: 4000, roomLux: 250 },
  noon: { outsideLux: 20000, roomLux: 500 },
  lamplight: { outsideLux: 0, roomLux: 150 },
} as const satisfies Readonly<Record<string, LightSetting>>;

/** 0 is an overcast sky, 1 noon sun; between them by equal steps for the eye. Null is night, with the lamps on. */
export type Sky = number | null;

export function lightUnder(sky: Sky): LightSetting {
  if (sky === null) return LIGHT_SETTINGS.lamplight;
  const { overcast, noon } = LIGHT_SETTINGS;
  const share = Math.min(1, Math.max(0, sky));
  const between = (from: number, to: number): number => from * (to / from) ** share;
  return {
    outsideLux: between(overcast.outsideLux, noon.outsideLux),
    roomLux: between(overcast.roomLux, noon.roomLux),
  };
}

export interface FaceAppearance {
  /** The face as `#rrggbb`. */
  readonly face: string;
  /** A white wall beside the window, in the same exposure. */
  readonly wall: string;
  /** Brightness of the face over that of a white wall of the room, before the picture is squeezed into a screen. */
  readonly glow: number;
  /** Of the brightness of the face, the share that has come through it, 0..1. */
  readonly through: number;
  /** CIEDE2000 from the face by lamplight, both at one brightness. */
  readonly shift: number;
  /** The shift is towards yellow. */
  readonly warmer: boolean;
}

/** The eye is set by the room, and a little by the window. */
const WINDOW_SETS_EYE = 0.1;
/** Walls get this share of what comes through the window, spread over the room (assumed). */
const SPREAD = 0.1;
const WALL_REFLECTANCE = 0.8;
/** Up to here brightness is shown as it is; above, it is squeezed. */
const SHOULDER = 0.4;
/** The brightest cloth shown: short of paper white, so that a glowing face keeps its colour. */
const BRIGHTEST = 0.78;

/**
 * The face seen from the room: daylight through glass and stack, and room light sent back by the stack. Lamplight is
 * shown as an eye used to it sees it: as white. The exposure depends on the light alone, so stacks can be compared.
 */
export function faceAppearance(
  face: FaceCloth,
  behind: readonly BackCloth[],
  glazing: Glazing,
  setting: LightSetting,
): FaceAppearance {
  const filled = fillStack(face, behind);
  const glass = layerOf(glassOf(glazing).visible);
  const stack = stackSpectra([filled.face, ...filled.behind].map(spectraOf), glass);
  const { outsideLux, roomLux } = setting;
  const through = scale(xyzOf(stack.toRoom), outsideLux);
  const sent = scale(xyzOf(stack.backToRoom), roomLux);
  const exposure = roomLux + WINDOW_SETS_EYE * outsideLux;
  const seen = scale(add(through, sent), exposure > 0 ? 1 / exposure : 0);
  const onWall = scale(add(scale(BAND_WHITE, roomLux), scale(through, SPREAD)), WALL_REFLECTANCE);
  const wall = scale(onWall, exposure > 0 ? 1 / exposure : 0);
  return {
    face: show(seen),
    wall: show(wall),
    glow: wall.Y > 0 ? seen.Y / wall.Y : 0,
    through: through.Y + sent.Y > 0 ? through.Y / (through.Y + sent.Y) : 0,
    ...shiftFrom(xyzOf(stack.backToRoom), seen),
  };
}

function shiftFrom(byLamp: Xyz, seen: Xyz): Pick<FaceAppearance, 'shift' | 'warmer'> {
  const [before, after] = [byLamp, seen].map((xyz) => labOf(scaleToY(xyz, 50), BAND_WHITE));
  if (before === undefined || after === undefined || seen.Y <= 0) return { shift: 0, warmer: true };
  return { shift: roundReading('colourShift', ciede2000(before, after)), warmer: after.b >= before.b };
}

function show(xyz: Xyz): string {
  const shown = xyz.Y > 0 ? scale(xyz, (100 * squeeze(xyz.Y / 100)) / xyz.Y) : xyz;
  return hexOfXyz(moveWhite(shown, BAND_WHITE, SRGB_WHITE));
}

/** Identity up to the shoulder, then towards the brightest without reaching it. */
function squeeze(y: number): number {
  if (y <= SHOULDER) return y;
  const rest = BRIGHTEST - SHOULDER;
  return SHOULDER + rest * (1 - Math.exp(-(y - SHOULDER) / rest));
}

function add(a: Xyz, b: Xyz): Xyz {
  return { X: a.X + b.X, Y: a.Y + b.Y, Z: a.Z + b.Z };
}

function scale(a: Xyz, k: number): Xyz {
  return { X: k * a.X, Y: k * a.Y, Z: k * a.Z };
}
