/** Panels under a heading, as a job file writes them. */
import * as z from 'zod';
import { HANG_ENDS } from '../treatments/panels.ts';
import { RODS } from '../treatments/rods.ts';
import { ARRANGEMENTS, HEADINGS, MOUNTS } from '../words.ts';
import { wireDecision } from './wire-decision.ts';
import { fault, wireChoice, wireFlag, wireFullness, wireLength, wireName } from './wire-fields.ts';
import { patternField } from './wire-pattern.ts';
import { wirePractice } from './wire-practice.ts';
import { wireQuantity, wireStacks } from './wire-stacks.ts';

const turnFault = fault('is not an angle', 'give degrees that the rod turns, for example 45');

/** Where the length starts and ends, instead of a finished length: the commonest remake, so it is asked. */
export const wireHang = z.strictObject({
  fixing: z
    .union([wireLength, z.array(wireLength).min(1).max(9)], {
      error: fault(
        'is not a height',
        'give the height of the fixing above the floor, or readings at left, centre and right',
      ),
    })
    .describe('Height of the fixing above the floor: ring eye, track or pole; or readings along it.'),
  headingBelow: wireLength.optional().describe('Top of the heading below the fixing.'),
  headingAbove: wireLength.optional().describe('Top of the heading above the fixing.'),
  to: wireChoice(HANG_ENDS),
  by: wireLength
    .optional()
    .describe("Clear of the floor or sill, below the sill, or lying on the floor; the practice's unless given."),
});

/** The runs of a bay, instead of a rod face: each loses projection × tan(turn / 2) at each corner that it touches. */
export const wireBay = z.strictObject({
  runs: z
    .array(wireLength, { error: fault('is not a list', 'give the length of each run along the wall') })
    .min(2)
    .max(12),
  turns: z.array(z.number({ error: turnFault }).min(1, { error: turnFault }).max(170, { error: turnFault })),
  projection: wireLength.describe('From the wall to the rod.'),
});

const wireBand = z.strictObject({
  edge: wireChoice(['leading', 'hem', 'both-sides']),
  cloth: wireName.describe('The id of a face or contrast cloth.'),
  width: wireLength.describe('Finished width of the strip.'),
});

export const wirePanels = z.strictObject({
  name: wireName,
  kind: z.literal('panels', { error: fault('is not a kind that is known', 'give panels') }),
  heading: wireChoice(HEADINGS),
  arrangement: wireChoice(ARRANGEMENTS),
  mount: z
    .strictObject({ where: wireChoice(MOUNTS), above: wireLength.optional().describe('Rod above the frame.') })
    .optional(),
  face: wireName.describe('The id of the face cloth.'),
  rodWidth: wireLength.optional().describe('Rod face, bracket to bracket, before returns and overlap; or give bay.'),
  bay: wireBay.optional(),
  finishedLength: wireLength.optional().describe('Top of the heading to the hem; or give hang.'),
  hang: wireHang.optional(),
  fullness: wireFullness.nullish(),
  return: z
    .union([wireLength, z.strictObject({ left: wireLength, right: wireLength })], {
      error: fault('is not a return', 'give a length, or { "left": 6, "right": 3.5 }'),
    })
    .optional(),
  overlap: wireLength.optional().describe('The whole overlap at the centre, of a pair alone.'),
  quantity: wireQuantity.optional(),
  practice: wirePractice.optional(),
  widths: z
    .number({ error: fault('is not a number', 'give the widths of each piece, for example 1.5') })
    .min(0.5, { error: fault('is less than half a width', 'give 0.5 or more') })
    .max(200, { error: fault('is more than 200 widths', 'give the widths of one piece') })
    .multipleOf(0.5, { error: fault('is not in half widths', 'give whole or half widths, for example 1.5') })
    .nullish()
    .describe('Widths of each piece, given instead of fullness.'),
  panelsOnRod: wireQuantity.optional().describe('Still panels side by side on one rod, instead of one or two.'),
  fingers: z.literal([2, 3], { error: fault('is not 2 or 3', 'give 2 or 3 fingers') }).optional(),
  rodDiameter: wireLength.optional(),
  header: wireLength.optional().describe('Stands above a rod pocket, within the finished length.'),
  arch: z.strictObject({ rise: wireLength.describe('Of the arch above its springing.') }).optional(),
  cafe: wireFlag().optional().describe('Covers the lower part of the window alone.'),
  rod: wireChoice(RODS)
    .optional()
    .describe('What hooks hang on: rings on a pole, which butt, or a track, whose master arm overlaps.'),
  motor: z
    .strictObject({ at: wireChoice(['left', 'right']) })
    .optional()
    .describe('A motor drives the track from this end.'),
  weightedEdge: wireFlag()
    .optional()
    .describe("The cloth's weighted edge is the hem: it runs sideways, with no hem of its own."),
  bands: z.array(wireBand).max(6).optional().describe('Strips of another cloth along an edge.'),
  ...patternField,
  pleatToPattern: wireFlag()
    .optional()
    .describe('Pleat and space together are the repeat across, divided by a whole number.'),
  stacks: wireStacks.optional(),
  decision: wireDecision.optional(),
});
export type WirePanels = z.infer<typeof wirePanels>;
