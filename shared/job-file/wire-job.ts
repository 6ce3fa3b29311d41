/** The job file: one JSON document that holds a whole project. This schema validates it everywhere; see `read-job.ts`. */
import * as z from 'zod';
import { CARE_WAYS, HANDS, NEEDLE_WAYS, SOURCED_VALUES, VALUE_SOURCES } from '../cloth.ts';
import { LOCALES } from '../locale.ts';
import { CURRENCIES } from '../money.ts';
import {
  BUDGETS,
  CLIMATES,
  FACE_FAMILIES,
  FACINGS,
  GLAZINGS,
  INTERLINING_FAMILIES,
  LINING_FAMILIES,
  MATCHES,
  MEASURE_STATES,
  PRIVACIES,
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
  wireLoss,
  wireName,
  wireShare,
  wireText,
  wireWeight,
} from './wire-fields.ts';
import { TREATMENT_KINDS } from '../treatments/treatment.ts';
import { wireBedSkirt } from './wire-bed-skirt.ts';
import { wireCornice } from './wire-cornice.ts';
import { wireCutting } from './wire-cutting.ts';
import { wirePanels } from './wire-panels.ts';
import { wireRomanShade } from './wire-roman-shade.ts';
import { wireShowerCurtain } from './wire-shower-curtain.ts';
import { wireSwags } from './wire-swags.ts';
import { treatmentBase } from './wire-treatment-base.ts';
import { wireValance } from './wire-valance.ts';
import { wirePractice, wirePriceBook } from './wire-practice.ts';

export const UNITS = ['in', 'cm', 'mm'] as const;

const wireOptics = z.strictObject({ transmittance: wireShare.optional(), reflectance: wireShare.optional() });
const wireBands = z
  .array(wireShare)
  .length(16, { error: fault('does not have 16 bands', 'give 16 shares, 400 to 700 nm by 20 nm') });
const wireMillimetres = z
  .number({ error: fault('is not a number', 'give millimetres, for example 0.4') })
  .positive({ error: fault('is not above 0', 'give millimetres, for example 0.4') })
  .max(50, { error: fault('is thicker than any cloth', 'give millimetres, for example 0.4') });

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
  reflectance: wireShare.optional().describe('Visible, both sides. One given without the other: that one is typical.'),
  uv: wireOptics.optional(),
  solar: wireOptics.optional(),
  streetReflectance: z
    .strictObject({ visible: wireShare, uv: wireShare, solar: wireShare })
    .partial()
    .optional()
    .describe('Of the side towards the street, where it differs from the side towards the room.'),
  spectra: z
    .strictObject({ transmittance: wireBands, reflectance: wireBands })
    .optional()
    .describe('In 16 bands, 400 to 700 nm by 20 nm.'),
  transmittanceWithin: wireLoss.optional().describe('The visible transmittance is right within this.'),
  thickness: wireMillimetres.optional().describe('Millimetres, lying loose.'),
  shrinkage: z
    .strictObject({ length: wireLoss, width: wireLoss })
    .optional()
    .describe('Shares lost in cleaning; 0.03 is 3 %.'),
  needle: wireChoice(NEEDLE_WAYS).optional().describe('What a needle leaves in it.'),
  care: wireChoice(CARE_WAYS).optional(),
  flame: z
    .strictObject({ test: wireName, certificate: wireName })
    .optional()
    .describe('A named certificate, and the test that it was given under.'),
  hand: wireChoice(HANDS).optional(),
  sources: z
    .partialRecord(z.enum(SOURCED_VALUES), wireChoice(VALUE_SOURCES))
    .optional()
    .describe('Where values come from; what is assumed widens the ranges.'),
  price: wireLengthRate.optional(),
  supplier: wireText.optional(),
  notes: wireText.optional(),
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
export const wireTreatment = z.discriminatedUnion(
  'kind',
  [
    wirePanels,
    wireValance(treatmentBase),
    wireCornice(treatmentBase),
    wireSwags(treatmentBase),
    wireRomanShade(treatmentBase),
    wireBedSkirt(treatmentBase),
    wireShowerCurtain(treatmentBase),
  ],
  { error: fault('has no kind that is known', `give one of ${TREATMENT_KINDS.join(', ')}`) },
);
export type WireTreatment = z.infer<typeof wireTreatment>;

export const wireOpening = z.strictObject({
  name: wireName,
  width: wireLength.nullish().describe('Left out only where a bed skirt or a shower curtain alone hangs.'),
  height: wireLength.nullish().describe('Left out only where a bed skirt or a shower curtain alone hangs.'),
  sill: wireLength.nullish(),
  at: wireLength.nullish().describe("Left edge from the wall's left end."),
  glazing: wireChoice(GLAZINGS).optional(),
  heatSourceBelow: wireFlag().optional(),
  measured: wireChoice(MEASURE_STATES).optional().describe('An order needs a final measure. Not given: rough.'),
  notes: wireText.optional(),
  treatments: z.array(wireTreatment),
});
export type WireOpening = z.infer<typeof wireOpening>;

export const wireRoom = z.strictObject({
  name: wireName,
  use: wireChoice(ROOM_USES),
  facing: wireChoice(FACINGS).nullish(),
  climate: wireChoice(CLIMATES).optional(),
  privacy: wireChoice(PRIVACIES)
    .nullish()
    .describe('When nobody outside may see in; at night the lamps are on. Not given: not asked for.'),
  budget: wireChoice(BUDGETS).nullish().describe('Keeps the three options modest, or a step up. Not given: neither.'),
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
    client: z.strictObject({
      name: wireName,
      email: wireText.optional(),
      phone: wireText.optional(),
      address: wireText.optional(),
      notes: wireText.optional(),
    }),
    project: wireName.optional().describe('What the project is called.'),
    letterhead: wireLetterhead.optional(),
    proposal: wireProposalHead.optional(),
    practice: wirePractice.optional(),
    priceBook: z
      .union([z.literal('example'), wirePriceBook], { error: fault('is not a price book', 'give rates, or "example"') })
      .optional(),
    cloth: z.array(wireCloth).optional(),
    cutting: wireCutting.optional().describe('The cloth there is to cut, flaws in it, and cuts placed by hand.'),
    rooms: z.array(wireRoom),
  })
  .meta({
    title: 'Linenfold job file',
    description: 'A whole project: client, rooms, openings, treatments, cloth, practice and price book.',
  });
export type WireJob = z.infer<typeof wireJob>;
