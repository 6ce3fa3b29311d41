/** A cloth of the portfolio as a job file lists it. */
import type { Optics } from '../cloth.ts';
import { lengthIn } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import type { ClothRecord } from '../records/records.ts';
import { FACE_FAMILIES as FACE, INTERLINING_FAMILIES as INTERLINING, LINING_FAMILIES as LINING } from '../words.ts';
import type { WireCloth } from './wire-job.ts';

/** Six decimals of an inch, centimetre or millimetre are finer than a tick: they read back exactly. */
function length(value: Ticks, unit: LengthUnit): number {
  return lengthIn(value, unit, 6);
}

/** Null while it has no width. */
export function writeCloth(cloth: ClothRecord, unit: LengthUnit): WireCloth | null {
  if (cloth.width === null || cloth.width === 0) return null;
  const base = {
    id: cloth.code,
    ...(cloth.name.trim() === '' ? {} : { name: cloth.name }),
    width: length(cloth.width, unit),
    ...(cloth.usableWidth === null || cloth.usableWidth === 0 ? {} : { usableWidth: length(cloth.usableWidth, unit) }),
    ...(cloth.match === 'none' || cloth.repeatVertical === null || cloth.repeatVertical === 0
      ? {}
      : {
          repeat: {
            vertical: length(cloth.repeatVertical, unit),
            ...(cloth.repeatHorizontal === null ? {} : { horizontal: length(cloth.repeatHorizontal, unit) }),
            match: cloth.match,
            cutOnRepeat: cloth.cutOnRepeat,
          },
        }),
    railroad: cloth.railroad,
    ...(cloth.oneWay ? { oneWay: true } : {}),
    ...(cloth.bolt === null ? {} : { bolt: length(cloth.bolt, unit) }),
    ...(cloth.orderStep === null ? {} : { orderStep: length(cloth.orderStep, unit) }),
    ...(cloth.leastOrder === null ? {} : { leastOrder: length(cloth.leastOrder, unit) }),
    ...(cloth.content === null ? {} : { content: cloth.content }),
    ...(cloth.weight === null ? {} : { weight: cloth.weight }),
    ...(cloth.colour === null ? {} : { colour: cloth.colour }),
    ...(cloth.shade === null ? {} : { shade: cloth.shade }),
    ...writeShares(cloth.visible),
    ...(cloth.uv === null ? {} : { uv: writeShares(cloth.uv) }),
    ...(cloth.solar === null ? {} : { solar: writeShares(cloth.solar) }),
    ...writeKnown(cloth),
    ...(cloth.price === null ? {} : { price: cloth.price }),
    ...(cloth.supplier === '' ? {} : { supplier: cloth.supplier }),
    ...(cloth.notes === '' ? {} : { notes: cloth.notes }),
  };
  return withFamily(base, cloth);
}

/** What is only half told yet, such as one spectrum of two, waits for its other half. */
function writeKnown(cloth: ClothRecord): Partial<WireCloth> {
  const { spectra, shrinkage, flame } = cloth;
  return {
    ...(cloth.streetReflectance === null ? {} : { streetReflectance: cloth.streetReflectance }),
    ...(spectra?.transmittance && spectra.reflectance
      ? { spectra: { transmittance: spectra.transmittance, reflectance: spectra.reflectance } }
      : {}),
    ...(cloth.transmittanceWithin === null ? {} : { transmittanceWithin: cloth.transmittanceWithin }),
    ...(cloth.thickness === null ? {} : { thickness: cloth.thickness }),
    ...(shrinkage === null || shrinkage.length === null || shrinkage.width === null
      ? {}
      : { shrinkage: { length: shrinkage.length, width: shrinkage.width } }),
    ...(cloth.needle === null ? {} : { needle: cloth.needle }),
    ...(cloth.care === null ? {} : { care: cloth.care }),
    ...(flame === null || flame.test.trim() === '' || flame.certificate.trim() === '' ? {} : { flame }),
    ...(cloth.hand === null ? {} : { hand: cloth.hand }),
    ...(cloth.sources === null ? {} : { sources: cloth.sources }),
  };
}

function writeShares(shares: ClothRecord['visible']): Partial<Optics> {
  const { transmittance = null, reflectance = null } = shares ?? {};
  return { ...(transmittance === null ? {} : { transmittance }), ...(reflectance === null ? {} : { reflectance }) };
}

/** Role and family belong together; a record whose family fits another role falls back to the plainest one. */
function withFamily(base: Omit<WireCloth, 'role' | 'family'>, cloth: ClothRecord): WireCloth {
  switch (cloth.role) {
    case 'face': {
      const family = FACE.find((each) => each === cloth.family);
      return { ...base, role: 'face', family: family ?? 'plain' };
    }
    case 'lining': {
      const family = LINING.find((each) => each === cloth.family);
      return { ...base, role: 'lining', family: family ?? 'standard' };
    }
    case 'interlining': {
      const family = INTERLINING.find((each) => each === cloth.family);
      return { ...base, role: 'interlining', family: family ?? 'medium' };
    }
  }
}
