/** The fields of each kind besides those of every treatment: what the portfolio keeps of it, and what a sheet asks. */
import * as z from 'zod';
import type { TreatmentKind } from '../treatments/treatment.ts';
import { bedSkirtFields } from './wire-bed-skirt.ts';
import { corniceFields } from './wire-cornice.ts';
import { wirePanels } from './wire-panels.ts';
import { romanShadeFields } from './wire-roman-shade.ts';
import { showerCurtainFields } from './wire-shower-curtain.ts';
import { swagsFields } from './wire-swags.ts';
import { valanceFields } from './wire-valance.ts';

export type OtherKind = Exclude<TreatmentKind, 'panels'>;
export const OTHER_KINDS = [
  'valance',
  'cornice',
  'swags',
  'roman-shade',
  'bed-skirt',
  'shower-curtain',
] as const satisfies readonly OtherKind[];

/** All but panels, whose record has named columns of its own. `kind` itself is left out. */
export const KIND_FIELDS: Readonly<Record<OtherKind, z.ZodObject>> = {
  valance: z.object(valanceFields).omit({ kind: true }),
  cornice: z.object(corniceFields).omit({ kind: true }),
  swags: z.object(swagsFields).omit({ kind: true }),
  'roman-shade': z.object(romanShadeFields).omit({ kind: true }),
  'bed-skirt': z.object(bedSkirtFields).omit({ kind: true }),
  'shower-curtain': z.object(showerCurtainFields).omit({ kind: true }),
};

/** What panels may have besides the measurements of every pair. */
export const PANELS_EXTRAS = z.object(
  wirePanels.pick({
    bay: true,
    hang: true,
    panelsOnRod: true,
    fingers: true,
    rodDiameter: true,
    header: true,
    arch: true,
    cafe: true,
    rod: true,
    motor: true,
    weightedEdge: true,
    bands: true,
    pattern: true,
    pleatToPattern: true,
  }).shape,
);
