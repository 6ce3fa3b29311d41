/** What a family of cloth is like when nobody measured this one: every value typical and assumed. */
import type { CareWay, Cloth, Hand, NeedleWay, Optics } from '#shared/cloth.ts';
import { exhaustive } from '#shared/fault.ts';
import type { FaceFamily, InterliningFamily, LiningFamily } from '#shared/words.ts';
import { FACE_FAMILY_VALUES } from './face-families.ts';
import { nearestHand } from './hand.ts';
import { STARTER_CLOTH } from './starter-cloth.ts';

export interface TypicalValues {
  /** Grams a square metre. */
  readonly weight: number;
  readonly visible: Optics;
  readonly uv: Optics;
  readonly solar: Optics;
  /** Millimetres, lying loose. */
  readonly thickness: number;
  /** How firmly a gram of it holds: 1 would be a coated cloth. */
  readonly stiffness: number;
}

interface HandValues {
  readonly thickness: number;
  readonly stiffness: number;
}

const LINING_HAND: Readonly<Record<LiningFamily, HandValues>> = {
  standard: { thickness: 0.3, stiffness: 0.45 },
  combination: { thickness: 0.9, stiffness: 0.55 },
  'dim-out': { thickness: 0.5, stiffness: 0.6 },
  'blackout-3-pass': { thickness: 0.5, stiffness: 1 },
  'blackout-soft': { thickness: 0.6, stiffness: 0.55 },
  'blackout-napped': { thickness: 1.2, stiffness: 0.85 },
  'black-sateen': { thickness: 0.3, stiffness: 0.45 },
  thermal: { thickness: 0.8, stiffness: 0.7 },
  sheer: { thickness: 0.2, stiffness: 0.35 },
  contrast: { thickness: 0.4, stiffness: 0.5 },
};

const INTERLINING_HAND: Readonly<Record<InterliningFamily, HandValues>> = {
  light: { thickness: 1, stiffness: 0.5 },
  medium: { thickness: 2, stiffness: 0.5 },
  heavy: { thickness: 4, stiffness: 0.5 },
};

/** The three lining families that no starter cloth stands for. */
const OTHER_LININGS = {
  thermal: {
    weight: 240,
    visible: { transmittance: 0.12, reflectance: 0.65 },
    uv: { transmittance: 0.01, reflectance: 0.28 },
    solar: { transmittance: 0.13, reflectance: 0.61 },
  },
  sheer: {
    weight: 60,
    visible: { transmittance: 0.58, reflectance: 0.34 },
    uv: { transmittance: 0.42, reflectance: 0.25 },
    solar: { transmittance: 0.6, reflectance: 0.32 },
  },
  contrast: {
    weight: 160,
    visible: { transmittance: 0.25, reflectance: 0.45 },
    uv: { transmittance: 0.06, reflectance: 0.2 },
    solar: { transmittance: 0.28, reflectance: 0.45 },
  },
} as const;

/** Typical values of the family that `cloth` belongs to. */
export function typicalValues(cloth: Cloth): TypicalValues {
  switch (cloth.role) {
    case 'face':
      return typicalFace(cloth.family);
    case 'lining':
      return typicalLining(cloth.family);
    case 'interlining':
      return typicalInterlining(cloth.family);
    default:
      return exhaustive(cloth);
  }
}

export function typicalFace(family: FaceFamily): TypicalValues {
  return FACE_FAMILY_VALUES[family];
}

export function typicalLining(family: LiningFamily): TypicalValues {
  const hand = LINING_HAND[family];
  switch (family) {
    case 'standard':
      return { ...startersOwn('std-white'), ...hand };
    case 'combination':
      return { ...startersOwn('combo-white'), ...hand };
    case 'dim-out':
      return { ...startersOwn('dim-out'), ...hand };
    case 'blackout-3-pass':
      return { ...startersOwn('blackout-3-pass'), ...hand };
    case 'blackout-soft':
      return { ...startersOwn('soft-blackout'), ...hand };
    case 'blackout-napped':
      return { ...startersOwn('blackout-napped'), ...hand };
    case 'black-sateen':
      return { ...startersOwn('black-sateen'), ...hand };
    case 'thermal':
    case 'sheer':
    case 'contrast':
      return { ...OTHER_LININGS[family], ...hand };
    default:
      return exhaustive(family);
  }
}

export function typicalInterlining(family: InterliningFamily): TypicalValues {
  const ids = { light: 'inter-light', medium: 'inter-med', heavy: 'inter-heavy' } as const;
  return { ...startersOwn(ids[family]), ...INTERLINING_HAND[family] };
}

function startersOwn(id: keyof typeof STARTER_CLOTH): Omit<TypicalValues, 'thickness' | 'stiffness'> {
  const { weight, visible, uv, solar } = STARTER_CLOTH[id];
  if (weight === null || visible === null || uv === null || solar === null) {
    throw new Error(`the starter cloth ${id} lacks a value`);
  }
  return { weight, visible, uv, solar };
}

/** What a family does under a needle and in cleaning, and how it hangs; null where no family can tell. */
export interface TypicalWays {
  readonly needle: NeedleWay | null;
  readonly care: CareWay | null;
  readonly hand: Hand;
}

export function typicalWays(cloth: Cloth): TypicalWays {
  const hand = nearestHand(typicalValues(cloth).stiffness);
  if (cloth.role === 'face') return { needle: null, care: null, hand };
  const alike = Object.values(STARTER_CLOTH).find((each) => each.role === cloth.role && each.family === cloth.family);
  return { needle: alike?.needle ?? null, care: alike?.care ?? null, hand };
}
