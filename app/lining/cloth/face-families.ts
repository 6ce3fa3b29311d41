/**
 * Face cloth by family when the cloth does not say: typical, assumed. The solar values lie between two of the drapery
 * classes of Keyes (1967), which are told below and read second-hand (reference checks keyes-…); a sheer is opener than
 * any class there.
 */
import type { FaceFamily } from '#shared/words.ts';
import type { TypicalValues } from './typical-values.ts';

export const FACE_FAMILY_VALUES: Readonly<Record<FaceFamily, TypicalValues>> = {
  plain: {
    weight: 200,
    visible: { transmittance: 0.22, reflectance: 0.5 },
    uv: { transmittance: 0.06, reflectance: 0.18 },
    solar: { transmittance: 0.25, reflectance: 0.48 },
    thickness: 0.5,
    stiffness: 0.6,
  },
  print: {
    weight: 215,
    visible: { transmittance: 0.22, reflectance: 0.5 },
    uv: { transmittance: 0.06, reflectance: 0.18 },
    solar: { transmittance: 0.25, reflectance: 0.48 },
    thickness: 0.5,
    stiffness: 0.6,
  },
  woven: {
    weight: 320,
    visible: { transmittance: 0.12, reflectance: 0.42 },
    uv: { transmittance: 0.03, reflectance: 0.15 },
    solar: { transmittance: 0.15, reflectance: 0.42 },
    thickness: 0.9,
    stiffness: 0.65,
  },
  sheer: {
    weight: 80,
    visible: { transmittance: 0.6, reflectance: 0.28 },
    uv: { transmittance: 0.45, reflectance: 0.2 },
    solar: { transmittance: 0.62, reflectance: 0.26 },
    thickness: 0.2,
    stiffness: 0.4,
  },
  silk: {
    weight: 110,
    visible: { transmittance: 0.25, reflectance: 0.48 },
    uv: { transmittance: 0.1, reflectance: 0.2 },
    solar: { transmittance: 0.28, reflectance: 0.46 },
    thickness: 0.2,
    stiffness: 0.6,
  },
  velvet: {
    weight: 380,
    visible: { transmittance: 0.04, reflectance: 0.28 },
    uv: { transmittance: 0.01, reflectance: 0.1 },
    solar: { transmittance: 0.07, reflectance: 0.32 },
    thickness: 1.8,
    stiffness: 0.6,
  },
};

/** Openness I, II, III (open to closed) and yarn D, M, L (dark to light). */
export type KeyesClass = 'II_L' | 'III_D' | 'III_M' | 'III_L';

/** Between which two classes the solar pair of a family lies; null where no published class reaches. */
export const KEYES_BOUNDS: Readonly<Record<FaceFamily, readonly [KeyesClass, KeyesClass] | null>> = {
  plain: ['III_L', 'II_L'],
  print: ['III_L', 'II_L'],
  woven: ['III_M', 'III_L'],
  sheer: null,
  silk: ['III_M', 'II_L'],
  velvet: ['III_D', 'III_M'],
};
