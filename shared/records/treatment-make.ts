/** How a treatment is made, as the portfolio keeps it: lengths in ticks, null where nothing is written yet. */
import * as z from 'zod';
import { KIND_FIELDS, PANELS_EXTRAS } from '../job-file/kind-fields.ts';
import type { OtherKind } from '../job-file/kind-fields.ts';
import { ARRANGEMENTS, HEADINGS, MOUNTS } from '../words.ts';
import { maybeTicks } from './record-fields.ts';
import { findUnfit } from './ticks-form.ts';

export type TicksForm = Readonly<Record<string, unknown>>;

/** An object in the ticks form of a wire schema. */
function ticksForm(schema: z.ZodObject) {
  return z.custom<TicksForm>(
    (value) => typeof value === 'object' && value !== null && findUnfit(schema, value).length === 0,
    {
      error: (issue) => {
        const unfit = typeof issue.input === 'object' && issue.input !== null ? findUnfit(schema, issue.input) : [];
        return `does not fit at ${unfit.join(', ')}; give whole ticks, and only what this kind has`;
      },
    },
  );
}

/** How panels are made; null where nothing is written yet (fullness: the practice's own). */
export const panelsMake = z.object({
  kind: z.literal('panels'),
  heading: z.enum(HEADINGS),
  arrangement: z.enum(ARRANGEMENTS),
  mountWhere: z.enum(MOUNTS),
  mountAbove: maybeTicks,
  rodWidth: maybeTicks,
  finishedLength: maybeTicks,
  /** Thousandths. */
  fullness: z.int().min(1000).max(6000).nullable(),
  returnLeft: maybeTicks,
  returnRight: maybeTicks,
  overlap: maybeTicks,
  /** Widths of each piece in halves, instead of fullness. */
  halfWidths: z.int().min(1).max(400).nullable(),
  /** What only some panels have (`PANELS_EXTRAS`), in ticks form: where the length starts, bays, arches, bands. */
  extras: ticksForm(PANELS_EXTRAS),
});
export type PanelsMake = z.infer<typeof panelsMake>;

/** Every other kind keeps the shape of its wire fields, in ticks (`KIND_FIELDS`). */
function otherMake<Kind extends OtherKind>(kind: Kind) {
  return z.object({ kind: z.literal(kind), form: ticksForm(KIND_FIELDS[kind]) });
}

export const treatmentMake = z.discriminatedUnion('kind', [
  panelsMake,
  otherMake('valance'),
  otherMake('cornice'),
  otherMake('swags'),
  otherMake('roman-shade'),
  otherMake('bed-skirt'),
  otherMake('shower-curtain'),
]);
export type TreatmentMake = z.infer<typeof treatmentMake>;
export type OtherMake = Exclude<TreatmentMake, { kind: 'panels' }>;
