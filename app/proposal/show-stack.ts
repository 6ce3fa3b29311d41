/** The two small pictures of an option: the window at noon, and the stack in cross-section with the light fading through. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Job, Opening } from '#shared/job.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import type { TierResult } from '#shared/result.ts';
import { drawLitWindow } from '#app/drawing/draw-lit-window.ts';
import { drawStackStrip } from '#app/drawing/draw-strip.ts';
import type { Hex } from '#app/drawing/drawn-room.ts';
import { litInput } from '#app/drawing/lit-input.ts';
import type { DrawnLayer } from '#app/drawing/drawn-stack.ts';
import type { Drawing } from '#app/drawing/shape.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { faceAppearance, lightProfile, LIGHT_SETTINGS } from '#app/lining/light-and-heat/show-light.ts';
import { describeDrawn } from '#app/drawing/describe-drawn.ts';

/** A column of the paper, in points. */
const COLUMN = 154;
const LIT_HEIGHT = 78;

export interface Stack {
  readonly face: FaceCloth;
  readonly behind: readonly BackCloth[];
}

/** The cloth of an option. Throws when the result names cloth that the job does not have: they do not belong together. */
export function stackOf(job: Job, made: TierResult): Stack {
  const find = (id: string): Cloth => {
    const cloth = resolveCloth(id, job.cloth);
    if (cloth === null) throw new Error(`the result names the cloth "${id}", which is not in the job`);
    return cloth;
  };
  const face = find(made.stack.face);
  if (face.role !== 'face') throw new Error(`"${face.id}" is no face cloth`);
  const behind = made.stack.behind.map(find).filter((cloth): cloth is BackCloth => cloth.role !== 'face');
  return { face, behind };
}

/** The window at noon; null for what hangs at none. */
export function showLitWindow(
  stack: Stack,
  made: TierResult,
  job: Job,
  opening: Opening,
  treatment: Treatment,
): Drawing | null {
  const { readings } = made.judgement;
  const seen = faceAppearance(stack.face, stack.behind, opening.glazing, LIGHT_SETTINGS.noon);
  const scene = {
    dayColour: seen.face as Hex,
    roomLight: readings.lightInRoom,
    openShare: openShareOf(made, glassLight(stack, opening)),
    width: COLUMN,
    height: LIT_HEIGHT,
    detail: 'paper',
  } as const;
  const drawn = describeDrawn(treatment, made, (id) => resolveCloth(id, job.cloth));
  const input = litInput(drawn, { opening, floorClearance: null }, scene);
  return input === null ? null : drawLitWindow(input);
}

export function showStrip(stack: Stack, made: TierResult, opening: Opening): Drawing {
  const levels = lightProfile(stack.face, stack.behind, opening.glazing);
  const after = levels.filter((level) => level.after === 'layer').reverse();
  const layers = [stack.face, ...stack.behind].map((cloth, i) => drawnLayer(cloth, after[i]?.level ?? 0));
  return drawStackStrip({
    layers,
    glazing: opening.glazing,
    lightBehindGlass: glassLight(stack, opening),
    needleHoles: made.judgement.advice.some((advice) => advice.rule.includes('needle')),
    width: COLUMN,
    detail: 'paper',
    ground: 'paper',
  });
}

function glassLight(stack: Stack, opening: Opening): number {
  const levels = lightProfile(stack.face, stack.behind, opening.glazing);
  return levels.find((level) => level.after === 'glass')?.level ?? 1;
}

/** The open share a of T_room = (1 - a) T_stack + a T_glass, read back from the two readings. */
function openShareOf(made: TierResult, glass: number): number {
  const { lightInRoom, lightWithGlass } = made.judgement.readings;
  if (glass <= lightWithGlass) return 0;
  return Math.max(0, Math.min(1, (lightInRoom - lightWithGlass) / (glass - lightWithGlass)));
}

function drawnLayer(cloth: Cloth, light: number): DrawnLayer {
  const base = { colour: colourOf(cloth), weight: cloth.weight, light };
  switch (cloth.role) {
    case 'face':
      return { ...base, role: 'face', family: cloth.family, name: 'face' };
    case 'interlining':
      return { ...base, role: 'interlining', family: cloth.family, name: 'interlining' };
    case 'lining':
      return { ...base, role: 'lining', family: cloth.family, name: LINING_NAMES[cloth.family] ?? 'lining' };
  }
}

/** What is written under a layer; other linings are `lining`. */
const LINING_NAMES: Readonly<Partial<Record<string, string>>> = {
  combination: 'combination',
  'dim-out': 'dim-out',
  'blackout-3-pass': 'blackout',
  'blackout-soft': 'soft blackout',
  'blackout-napped': 'napped blackout',
  'black-sateen': 'black cloth',
  thermal: 'thermal',
};

function colourOf(cloth: Cloth): Hex | null {
  const given = cloth.role === 'face' ? cloth.colour : cloth.shade;
  if (given === 'ivory') return '#f3ead2';
  return given !== null && /^#[0-9a-f]{6}$/iu.test(given) ? (given as Hex) : null;
}
