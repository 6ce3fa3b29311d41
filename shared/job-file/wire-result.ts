/** The result of `price --json`: lengths in the job's units to four decimals, yards and metres always both, money in minor units. */
import * as z from 'zod';
import { CURRENCIES } from '../money.ts';
import { ADVICE_LEVELS } from '../result.ts';
import { PATTERN_PLACES } from '../treatments/pattern-place.ts';
import { TREATMENT_KINDS } from '../treatments/treatment.ts';
import { CLOTH_ROLES, LINE_KINDS, TIERS } from '../words.ts';
import { UNITS } from './wire-job.ts';

const amount = z.int().describe('Minor units of the currency.');
const step = z.strictObject({
  id: z.string(),
  label: z.string(),
  formula: z.string(),
  value: z.string(),
  rests: z.string(),
});
const range = z.tuple([z.number(), z.number()]);

const takeoff = z.strictObject({
  cloth: z.string(),
  name: z.string(),
  role: z.enum(CLOTH_ROLES),
  layer: z.int().min(0).describe('0 is the face, then room to street.'),
  use: z.string().optional().describe('What the cloth is for when it is not the body of a layer.'),
  widths: z.number().nullable().describe('Of one treatment, all pieces; null when the cloth runs sideways.'),
  railroaded: z.boolean(),
  cuts: z.int().describe('Full-width cuts of all quantity.'),
  fullnessMade: z.number().nullable(),
  plainCut: z.number(),
  cutLength: z.number(),
  repeatsPerCut: z.number().nullable(),
  length: z.number().describe('By the handbook, all cuts end to end.'),
  yards: z.number(),
  metres: z.number(),
  planYards: z.number(),
  planMetres: z.number(),
  orderYards: z.number(),
  orderMetres: z.number(),
  pieces: z
    .array(z.strictObject({ cuts: z.int(), orderYards: z.number(), orderMetres: z.number() }))
    .optional()
    .describe('The order piece by piece where it is more than a whole piece of the cloth; not given: it comes in one.'),
  grams: z.number(),
  pattern: z
    .strictObject({
      place: z.enum(PATTERN_PLACES),
      level: z.number().optional().describe('Middle of the motif above the floor, one for the room.'),
      motifBelow: z.number().describe('Middle of the motif below the finished top; negative above it.'),
      cutsBegin: z.number().describe('Where in the repeat the level cuts begin.'),
      widthAboutMotif: z
        .number()
        .optional()
        .describe('The widest cut of one width with a motif in its middle, where one is centred.'),
    })
    .optional()
    .describe('Of a face whose pattern is placed.'),
});

const readings = z.strictObject({
  light: z.number().min(0).max(1),
  lightWithGlass: z.number().min(0).max(1),
  lightInRoom: z.number().min(0).max(1),
  colourShift: z.number().min(0),
  warmth: z.number(),
  fade: z.number(),
  body: z.number().min(1).max(5),
});

const words = z.strictObject({ words: z.string(), figure: z.string(), rests: z.string() });

const tier = z.strictObject({
  stack: z.strictObject({ face: z.string(), behind: z.array(z.string()) }),
  chosen: z
    .strictObject({
      why: z.string(),
      sameAs: z
        .enum(TIERS)
        .optional()
        .describe('The option that it repeats, where no step above that one is worth offering.'),
    })
    .nullable()
    .describe('Not null when the lining engine chose the stack.'),
  title: z.string(),
  says: z.string(),
  takeoff: z.array(takeoff),
  weight: z.strictObject({ grams: z.number() }),
  stackback: z
    .strictObject({ least: z.number(), usual: z.number(), most: z.number() })
    .optional()
    .describe('Wall that one panel takes drawn back; of panels alone.'),
  rodToClear: z
    .strictObject({ rod: z.number(), widths: z.number() })
    .optional()
    .describe('The rod that clears the opening when its panels are drawn back, and the widths on it.'),
  readings,
  ranges: z.partialRecord(
    z.enum(['light', 'lightWithGlass', 'lightInRoom', 'colourShift', 'warmth', 'fade', 'body']),
    range,
  ),
  words: z.strictObject({ light: words, colour: words, warmth: words, fade: words, body: words }),
  assumed: z.array(z.string()),
  advice: z.array(
    z.strictObject({
      rule: z.string(),
      level: z.enum(ADVICE_LEVELS),
      says: z.string(),
      rests: z.string(),
      insisted: z
        .literal(true)
        .optional()
        .describe('A stop that was insisted on: it is made all the same, and the proposal says so.'),
    }),
  ),
  price: z.strictObject({
    total: amount.describe('Net of tax: the sum of the lines.'),
    lines: z.array(z.strictObject({ label: z.string(), kind: z.enum(LINE_KINDS), amount, formula: z.string() })),
  }),
  offer: z.strictObject({ widths: z.number(), fullnessMade: z.number(), says: z.string() }).nullable(),
  working: z.array(step),
});

const totals = z.strictObject({
  net: amount,
  taxes: z.array(z.strictObject({ name: z.string(), amount })),
  tax: amount,
  total: amount.describe('Net and tax.'),
  deposit: amount,
});

const planned = {
  yards: z.number(),
  metres: z.number(),
  orderYards: z.number(),
  orderMetres: z.number(),
  handbookYards: z.number(),
  handbookMetres: z.number(),
  bound: z.number().describe('No plan can be shorter, in yards.'),
  aloneYards: z.number().optional().describe('Each treatment laid out alone, added up: what prices rest on.'),
  orderAloneYards: z.number().optional().describe('Each treatment ordered alone, added up.'),
  bolts: z.int().optional().describe('Pieces of cloth to buy.'),
  unlaid: z.int().optional().describe('Cuts that found no place; not given: none.'),
};

export const wireResult = z
  .strictObject({
    linenfold: z.literal(1),
    units: z.enum(UNITS),
    currency: z.enum(CURRENCIES),
    exampleRates: z.boolean().describe("True when the program's example rates were used."),
    treatments: z.array(
      z.strictObject({
        path: z.string(),
        kind: z.enum(TREATMENT_KINDS),
        finished: z.strictObject({ width: z.number(), length: z.number() }),
        advised: z.strictObject({ tier: z.enum(TIERS), why: z.string() }),
        notChosen: z
          .strictObject({ behind: z.array(z.string()), why: z.string() })
          .nullable()
          .optional()
          .describe('The nearest stack that was left out, and why.'),
        tiers: z.strictObject({ good: tier, better: tier, best: tier }),
      }),
    ),
    plan: z
      .array(z.strictObject({ cloth: z.string(), tier: z.enum(TIERS), ...planned }))
      .describe('Joint over all work that is not declined: every cut of one cloth laid together.'),
    accepted: z
      .array(z.strictObject({ cloth: z.string(), ...planned }))
      .optional()
      .describe('Joint over accepted work, on which orders rest; there once a decision is.'),
    totals: z.strictObject({ good: totals, better: totals, best: totals }),
    warnings: z.array(z.strictObject({ path: z.string(), says: z.string() })),
  })
  .meta({
    title: 'Linenfold result',
    description: 'Three priced options of a job, with quantities, readings and working.',
  });
export type WireResult = z.infer<typeof wireResult>;
