/** The job file: one JSON document that holds a whole project. This schema validates it everywhere; see `read-job.ts`. */
import * as z from 'zod';
import { LOCALES } from '../locale.ts';
import { CURRENCIES } from '../money.ts';
import {
  CLIMATES,
  FACE_FAMILIES,
  FACINGS,
  GLAZINGS,
  INTERLINING_FAMILIES,
  LINING_FAMILIES,
  MATCHES,
  ROOM_USES,
} from '../words.ts';
import {
  fault,
  wireChoice,
  wireColour,
  wireDate,
  wireFlag,
  wireLength,
  wireLengthRate,
  wireName,
  wireShare,
  wireText,
  wireWeight,
} from './wire-fields.ts';
import { wirePanels } from './wire-panels.ts';
import { wirePractice, wirePriceBook } from './wire-practice.ts';

export const UNITS = ['in', 'cm', 'mm'] as const;

const wireOptics = z.strictObject({ transmittance: wireShare, reflectance: wireShare });

export const clothBase = {
  id: wireName,
  name: wireName.optional(),
  width: wireLength,
  usableWidth: wireLength.optional().describe('Between the places where seams can fall; the width unless given.'),
  repeat: z
    .strictObject({
      vertical: wireLength.optional(),
      horizontal: wireLength.optional(),
      match: wireChoice(MATCHES).optional().describe('As it meets at the selvage. Not given: straight.'),
      cutOnRepeat: wireFlag()
        .optional()
        .describe('The supplier cuts at our place in the repeat, so no extra is needed.'),
    })
    .nullish(),
  railroad: wireFlag().optional().describe('The cloth may be used sideways.'),
  content: z
    .record(wireName, z.number({ error: fault('is not a number', 'give per cent, for example 55') }))
    .optional()
    .describe('Fibres in per cent, summing to 100.'),
  weight: wireWeight.optional(),
  colour: wireColour.optional(),
  shade: wireText
    .regex(/^(white|ivory|#[0-9a-fA-F]{6})$/, {
      error: fault('is not a shade', 'give white, ivory or a colour such as "#c9b79a"'),
    })
    .optional(),
  transmittance: wireShare.optional().describe('Visible, both sides.'),
  reflectance: wireShare.optional().describe('Visible, both sides.'),
  uv: wireOptics.optional(),
  solar: wireOptics.optional(),
  price: wireLengthRate.optional(),
  oneWay: wireFlag().optional().describe('Nap or a pattern that runs one way: no cut may be turned.'),
  bolt: wireLength.optional().describe('A whole piece of it: no cut and no dye lot is longer.'),
  orderStep: wireLength.optional().describe("The supplier's own step; else the practice's."),
  leastOrder: wireLength.optional().describe('The least that the supplier sells.'),
};

export const wireCloth = z.discriminatedUnion(
  'role',
  [
    z.strictObject({ ...clothBase, role: z.literal('face'), family: wireChoice(FACE_FAMILIES).optional() }),
    z.strictObject({ ...clothBase, role: z.literal('lining'), family: wireChoice(LINING_FAMILIES) }),
    z.strictObject({ ...clothBase, role: z.literal('interlining'), family: wireChoice(INTERLINING_FAMILIES) }),
  ],
  { error: fault('has no role that is known', 'give "role": face, lining or interlining') },
);
export type WireCloth = z.infer<typeof wireCloth>;

/** Every kind of treatment, told apart by `kind`. */
export const wireTreatment = z.discriminatedUnion('kind', [wirePanels], {
  error: fault('has no kind that is known', 'give "kind": "panels"'),
});
export type WireTreatment = z.infer<typeof wireTreatment>;

export const wireOpening = z.strictObject({
  name: wireName,
  width: wireLength,
  height: wireLength,
  sill: wireLength.nullish(),
  at: wireLength.nullish().describe("Left edge from the wall's left end."),
  glazing: wireChoice(GLAZINGS).optional(),
  heatSourceBelow: wireFlag().optional(),
  treatments: z.array(wireTreatment),
});
export type WireOpening = z.infer<typeof wireOpening>;

export const wireRoom = z.strictObject({
  name: wireName,
  use: wireChoice(ROOM_USES),
  facing: wireChoice(FACINGS).nullish(),
  climate: wireChoice(CLIMATES).optional(),
  ceiling: wireLength.nullish(),
  openings: z.array(wireOpening),
});
export type WireRoom = z.infer<typeof wireRoom>;

export const wireLetterhead = z.strictObject({ name: wireName, lines: z.array(wireText).optional() });

export const wireProposalHead = z
  .strictObject({
    number: wireText,
    date: wireDate,
    validUntil: wireDate,
    terms: wireText,
    cancellation: wireText,
    tierNames: z.strictObject({ good: wireName, better: wireName, best: wireName }).partial(),
  })
  .partial();

export const wireJob = z
  .strictObject({
    linenfold: z.literal(1, { error: fault('is not a job file that this program knows', 'give "linenfold": 1') }),
    units: wireChoice(UNITS),
    currency: wireChoice(CURRENCIES),
    locale: wireChoice(LOCALES).optional(),
    client: z.strictObject({ name: wireName, email: wireText.optional(), address: wireText.optional() }),
    letterhead: wireLetterhead.optional(),
    proposal: wireProposalHead.optional(),
    practice: wirePractice.optional(),
    priceBook: z
      .union([z.literal('example'), wirePriceBook], { error: fault('is not a price book', 'give rates, or "example"') })
      .optional(),
    cloth: z.array(wireCloth).optional(),
    rooms: z.array(wireRoom),
  })
  .meta({
    title: 'Linenfold job file',
    description: 'A whole project: client, rooms, openings, treatments, cloth, practice and price book.',
  });
export type WireJob = z.infer<typeof wireJob>;
