/** From a priced stack to its two pictures: the lit window and the strip from room to street. */
import { drawLitWindow } from '#app/drawing/draw-lit-window.ts';
import { drawStackStrip } from '#app/drawing/draw-strip.ts';
import { litInput } from '#app/drawing/lit-input.ts';
import type { DrawnLayer } from '#app/drawing/drawn-stack.ts';
import type { Drawing } from '#app/drawing/shape.ts';
import { resolveCloth, weightOf } from '#app/lining/cloth/resolve-cloth.ts';
import { placeOf } from '#app/lining/place-of-kind.ts';
import { sayAppearance, saySky } from '#app/lining/say/say-appearance.ts';
import { faceAppearance, lightProfile, LIGHT_SETTINGS, lightUnder } from '#app/lining/light-and-heat/show-light.ts';
import type { Sky } from '#app/lining/light-and-heat/show-light.ts';
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { OpeningRecord, TreatmentRecord } from '#shared/records/records.ts';
import type { TierResult } from '#shared/result.ts';
import type { Hex } from '#app/drawing/drawn-room.ts';
import { drawnMade, isHex } from './draw-document.ts';
import type { Made } from './draw-document.ts';

export interface DrawnTierInput {
  readonly tier: TierResult;
  readonly treatment: TreatmentRecord;
  readonly opening: OpeningRecord;
  /** What the engines made of the project. */
  readonly made: Made;
  /** Hem to floor; null when unknown. */
  readonly clearance: number | null;
  readonly sky: Sky;
  /** Points. */
  readonly width: number;
}

/** Height of the picture over its width. */
const HIGH = 0.52;
/** Eyes see a dull sky as less dull than it is. */
const SKY_POWER = 0.3;
const WHEN: Readonly<Record<string, string>> = {
  lamplight: 'by lamplight',
  overcast: 'under an overcast sky',
  'thin cloud': 'under thin cloud',
  'hazy sun': 'in hazy sun',
  'noon sun': 'at noon',
};

interface Stack {
  readonly face: FaceCloth;
  readonly behind: readonly BackCloth[];
}

function stackOf({ tier, made: { cloth } }: DrawnTierInput): Stack | null {
  const face = resolveCloth(tier.stack.face, cloth);
  const behind = tier.stack.behind
    .map((id) => resolveCloth(id, cloth))
    .filter((each): each is BackCloth => each !== null && each.role !== 'face');
  return face?.role === 'face' ? { face, behind } : null;
}

export interface DrawnTierWindow {
  readonly drawing: Drawing;
  /** What is seen, in words: `lit mostly from behind, coloured as by lamplight`. */
  readonly says: string;
}

/** Null when the stack's cloth is not known any more, and for what stands in no window. */
export function drawTierWindow(input: DrawnTierInput): DrawnTierWindow | null {
  const stack = stackOf(input);
  if (!stack) return null;
  const { treatment, opening, tier, clearance, sky } = input;
  const drawn = drawnMade(treatment, tier, input.made);
  if (drawn === null) return null;
  const setting = lightUnder(sky);
  const seen = faceAppearance(stack.face, stack.behind, opening.glazing, setting);
  const outside = setting.outsideLux / LIGHT_SETTINGS.noon.outsideLux;
  const { readings } = tier.judgement;
  const closes =
    placeOf(drawn.kind) === 'window' && !(drawn.kind === 'panels' && drawn.arrangement === 'pair-stationary');
  const lit = litInput(
    drawn,
    { opening, floorClearance: clearance === null || clearance < 0 ? null : ticks(clearance) },
    {
      dayColour: isHex(seen.face) ? seen.face : '#c9b79a',
      roomLight: readings.lightInRoom * outside,
      openShare: Math.max(0, readings.lightInRoom - readings.lightWithGlass) * outside,
      sky: outside === 0 ? 0 : outside ** SKY_POWER,
      // By day the wall is as light as the stack leaves the room; by night the lamps light it alike.
      ...(sky === null && isHex(seen.wall) ? { wall: seen.wall } : {}),
      when: WHEN[saySky(sky)] ?? 'by day',
      width: input.width,
      height: Math.round(input.width * HIGH),
      detail: 'screen',
    },
  );
  return lit === null
    ? null
    : { drawing: drawLitWindow(lit), says: sayAppearance(seen, sky, closes ? readings.light : null) };
}

export function drawTierStrip(input: DrawnTierInput): Drawing | null {
  const stack = stackOf(input);
  if (!stack) return null;
  const levels = lightProfile(stack.face, stack.behind, input.opening.glazing);
  const roomFirst = levels.filter((level) => level.after === 'layer').reverse();
  const cloths = [stack.face, ...stack.behind];
  return drawStackStrip({
    layers: cloths.map((cloth, index) => drawnLayer(cloth, roomFirst[index]?.level ?? 0)),
    glazing: input.opening.glazing,
    lightBehindGlass: levels.find((level) => level.after === 'glass')?.level ?? 0,
    needleHoles: input.tier.judgement.advice.some(
      (advice) => advice.rule.includes('needle') && advice.level !== 'praise',
    ),
    night: input.sky === null,
    width: input.width,
    detail: 'screen',
    ground: 'card',
  });
}

function drawnLayer(cloth: Cloth, light: number): DrawnLayer {
  const shades: Readonly<Record<string, Hex>> = { white: '#ffffff', ivory: '#f5ecd2' };
  const shade = cloth.shade === null ? null : (shades[cloth.shade] ?? (isHex(cloth.shade) ? cloth.shade : null));
  const base = { colour: isHex(cloth.colour) ? cloth.colour : shade, weight: weightOf(cloth).gramsPerM2, light };
  switch (cloth.role) {
    case 'face':
      return { ...base, name: 'face', role: 'face', family: cloth.family };
    case 'lining':
      return { ...base, name: shortName(cloth), role: 'lining', family: cloth.family };
    case 'interlining':
      return { ...base, name: 'interlining', role: 'interlining', family: cloth.family };
  }
}

function shortName(cloth: Cloth): string {
  switch (cloth.family) {
    case 'blackout-soft':
      return 'soft blackout';
    case 'blackout-3-pass':
    case 'blackout-napped':
      return 'blackout';
    case 'dim-out':
      return 'dim-out';
    case 'black-sateen':
      return 'black sateen';
    default:
      return 'lining';
  }
}
