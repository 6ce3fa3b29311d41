/** From one cloth of a job file to cloth as the engines see it. */
import type { Cloth, KnownOfCloth, Optics, Repeat } from '../cloth.ts';
import type { LengthUnit } from '../length.ts';
import { parseLengthRate } from '../rate.ts';
import { parseWeight } from '../weight.ts';
import { optionalLength, readLength } from './read-length.ts';
import type { WireCloth } from './wire-job.ts';

/** One cloth of the wire form. Its faults have been told before. */
export function toCloth(wire: WireCloth, unit: LengthUnit): Cloth {
  const width = readLength(wire.width, unit);
  const base = {
    id: wire.id,
    name: wire.name ?? wire.id,
    width,
    usableWidth: wire.usableWidth === undefined ? width : readLength(wire.usableWidth, unit),
    repeat: toRepeat(wire.repeat, unit),
    railroad: wire.railroad ?? false,
    content: wire.content ?? null,
    weight: wire.weight === undefined ? null : parseWeight(wire.weight, width),
    colour: wire.colour ?? null,
    shade: wire.shade ?? null,
    visible: pairOf(wire),
    uv: pairOf(wire.uv),
    solar: pairOf(wire.solar),
    ...knownOf(wire),
    price: wire.price === undefined ? null : parseLengthRate(wire.price),
    supply: {
      oneWay: wire.oneWay ?? false,
      bolt: optionalLength(wire.bolt, unit),
      orderStep: optionalLength(wire.orderStep, unit),
      leastOrder: optionalLength(wire.leastOrder, unit),
    },
  };
  switch (wire.role) {
    case 'face':
      return { ...base, role: 'face', family: wire.family ?? (base.repeat ? 'print' : 'plain') };
    case 'lining':
      return { ...base, role: 'lining', family: wire.family };
    case 'interlining':
      return { ...base, role: 'interlining', family: wire.family };
  }
}

type Shares = { readonly transmittance?: number | undefined; readonly reflectance?: number | undefined };

/** Both shares of a band, or null: one alone is a lone one. */
function pairOf(shares: Shares | undefined): Optics | null {
  const { transmittance, reflectance } = shares ?? {};
  return transmittance === undefined || reflectance === undefined ? null : { transmittance, reflectance };
}

function loneOf(shares: Shares | undefined): Partial<Optics> | undefined {
  const { transmittance, reflectance } = shares ?? {};
  if ((transmittance === undefined) === (reflectance === undefined)) return undefined;
  return transmittance === undefined ? { reflectance } : { transmittance };
}

/** What she knows of it beyond its label; what was not told stays undefined. */
function knownOf(wire: WireCloth): KnownOfCloth {
  const { streetReflectance, spectra, transmittanceWithin, thickness, shrinkage, needle, care, flame, hand } = wire;
  const { sources } = wire;
  const lone = { visible: loneOf(wire), uv: loneOf(wire.uv), solar: loneOf(wire.solar) };
  const told = { streetReflectance, spectra, transmittanceWithin, thickness, shrinkage, needle, care, flame, hand };
  return Object.values(lone).every((each) => each === undefined) ? { ...told, sources } : { ...told, sources, lone };
}

function toRepeat(wire: WireCloth['repeat'], unit: LengthUnit): Repeat | null {
  if (!wire || wire.match === 'none' || wire.vertical === undefined) return null;
  const vertical = readLength(wire.vertical, unit);
  if (vertical === 0) return null;
  return {
    vertical,
    horizontal: wire.horizontal === undefined ? null : readLength(wire.horizontal, unit),
    match: wire.match ?? 'straight',
    cutOnRepeat: wire.cutOnRepeat ?? false,
  };
}
