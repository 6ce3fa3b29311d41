/** A cloth of a job file as a record of the portfolio: what `write-cloth.ts` in shared writes back to the very same cloth. */
import { optionalLength, readLength } from '#shared/job-file/read-length.ts';
import type { WireCloth } from '#shared/job-file/wire-job.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { ClothRecord } from '#shared/records/records.ts';
import { newCloth, PLAINEST } from './new-records.ts';
import type { Birth } from './new-records.ts';

export function recordCloth(wire: WireCloth, projectId: string, birth: Birth, unit: LengthUnit): ClothRecord {
  const vertical = optionalLength(wire.repeat?.vertical, unit);
  const matches = vertical !== null && vertical > 0;
  return {
    ...newCloth(birth, projectId, wire.role),
    code: wire.id,
    name: wire.name ?? wire.id,
    family: wire.family ?? (matches && wire.repeat?.match !== 'none' ? 'print' : PLAINEST[wire.role]),
    width: readLength(wire.width, unit),
    usableWidth: optionalLength(wire.usableWidth, unit),
    match: matches ? (wire.repeat?.match ?? 'straight') : 'none',
    repeatVertical: vertical,
    repeatHorizontal: optionalLength(wire.repeat?.horizontal, unit),
    cutOnRepeat: wire.repeat?.cutOnRepeat ?? false,
    oneWay: wire.oneWay ?? false,
    bolt: optionalLength(wire.bolt, unit),
    orderStep: optionalLength(wire.orderStep, unit),
    leastOrder: optionalLength(wire.leastOrder, unit),
    railroad: wire.railroad ?? false,
    content: wire.content ?? null,
    weight: wire.weight ?? null,
    colour: wire.colour ?? null,
    shade: wire.shade ?? null,
    visible: recordShares(wire),
    uv: recordShares(wire.uv),
    solar: recordShares(wire.solar),
    ...recordKnown(wire),
    price: wire.price ?? null,
    supplier: wire.supplier ?? '',
    notes: wire.notes ?? '',
  };
}

type Shares = { readonly transmittance?: number | undefined; readonly reflectance?: number | undefined };

function recordShares(shares: Shares | undefined): ClothRecord['visible'] {
  const { transmittance = null, reflectance = null } = shares ?? {};
  return transmittance === null && reflectance === null ? null : { transmittance, reflectance };
}

function recordKnown(wire: WireCloth): Partial<ClothRecord> {
  return {
    streetReflectance: wire.streetReflectance ?? null,
    spectra: wire.spectra ?? null,
    transmittanceWithin: wire.transmittanceWithin ?? null,
    thickness: wire.thickness ?? null,
    shrinkage: wire.shrinkage ?? null,
    needle: wire.needle ?? null,
    care: wire.care ?? null,
    flame: wire.flame ?? null,
    hand: wire.hand ?? null,
    sources: wire.sources ?? null,
  };
}
