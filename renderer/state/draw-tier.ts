/** From a priced stack to its two pictures: the lit window and the strip from room to street. */
import { drawLitWindow } from '#app/drawing/draw-lit-window.ts';
import { drawStackStrip } from '#app/drawing/draw-strip.ts';
import type { DrawnLayer } from '#app/drawing/drawn-stack.ts';
import type { Drawing } from '#app/drawing/shape.ts';
import { resolveCloth, weightOf } from '#app/lining/resolve-cloth.ts';
import { faceAppearance, lightProfile, LIGHT_SETTINGS } from '#app/lining/show-light.ts';
import type { LightSettingName } from '#app/lining/show-light.ts';
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { isFurniture } from '#app/drawing/drawn-treatment.ts';
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
  readonly hour: LightSettingName;
  /** Points. */
  readonly width: number;
}

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

/** Null when the stack's cloth is not known any more, and for what is not drawn so. */
export function drawTierWindow(input: DrawnTierInput): Drawing | null {
  const stack = stackOf(input);
  if (!stack) return null;
  const { treatment, opening, tier, clearance } = input;
  const drawn = drawnMade(treatment, tier, input.made);
  if (drawn === null || isFurniture(drawn)) return null;
  const setting = LIGHT_SETTINGS[input.hour];
  const seen = faceAppearance(stack.face, stack.behind, opening.glazing, setting);
  const outside = setting.outsideLux / LIGHT_SETTINGS.noon.outsideLux;
  const { readings } = tier.judgement;
  const scene = {
    dayColour: isHex(seen.face) ? seen.face : '#c9b79a',
    roomLight: Math.min(1, readings.lightInRoom * outside + (outside < 0.1 ? 0.15 : 0)),
    openShare: outside === 0 ? 0 : Math.max(0, readings.lightInRoom - readings.lightWithGlass),
    width: input.width,
    height: Math.round(input.width * 0.44),
    detail: 'screen',
  } as const;
  if (drawn.kind !== 'panels') return drawLitWindow({ ...scene, hung: drawn, opening });
  return drawLitWindow({
    ...scene,
    heading: drawn.heading,
    arrangement: drawn.arrangement,
    rodWidth: drawn.rodWidth,
    finishedLength: drawn.finishedLength,
    fullness: drawn.fullness,
    halfWidths: drawn.halfWidths,
    pleats: drawn.pleats,
    floorClearance: clearance === null || clearance < 0 ? null : ticks(clearance),
  });
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
