/** What the portfolio keeps of a cloth beyond its label; each null where nobody has said it yet. */
import * as z from 'zod';
import { CARE_WAYS, HANDS, NEEDLE_WAYS, SOURCED_VALUES, VALUE_SOURCES } from '../cloth.ts';
import { shortText } from './record-fields.ts';

const share = z.number().min(0).max(1);
const loss = share.lt(1);
/** One share may be known without the other. */
const optics = z.object({ transmittance: share.nullable(), reflectance: share.nullable() });
const bands = z.array(share).length(16);

export const knownOfCloth = z.object({
  visible: optics.nullable(),
  uv: optics.nullable(),
  solar: optics.nullable(),
  streetReflectance: z.object({ visible: share, uv: share, solar: share }).partial().nullable(),
  spectra: z.object({ transmittance: bands.nullable(), reflectance: bands.nullable() }).nullable(),
  transmittanceWithin: loss.nullable(),
  /** Millimetres. */
  thickness: z.number().positive().max(50).nullable(),
  shrinkage: z.object({ length: loss.nullable(), width: loss.nullable() }).nullable(),
  needle: z.enum(NEEDLE_WAYS).nullable(),
  care: z.enum(CARE_WAYS).nullable(),
  /** Empty where only the other of the two is written. */
  flame: z.object({ test: shortText, certificate: shortText }).nullable(),
  hand: z.enum(HANDS).nullable(),
  sources: z.partialRecord(z.enum(SOURCED_VALUES), z.enum(VALUE_SOURCES)).nullable(),
});
export type KnownRecord = z.infer<typeof knownOfCloth>;

export const NOTHING_KNOWN: KnownRecord = {
  visible: null,
  uv: null,
  solar: null,
  streetReflectance: null,
  spectra: null,
  transmittanceWithin: null,
  thickness: null,
  shrinkage: null,
  needle: null,
  care: null,
  flame: null,
  hand: null,
  sources: null,
};
