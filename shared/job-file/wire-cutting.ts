/** The cloth there is to cut as a job file writes it: `cutting`. Every part of it may be left out. */
import * as z from 'zod';
import type { Cutting } from '../cutting.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import { readLength } from './read-length.ts';
import { fault, wireLength, wireName, wireRun } from './wire-fields.ts';

const onHand = {
  cloth: wireName.describe('The id of the cloth.'),
  name: wireName.describe('Unique among the bolts and remnants of its cloth.'),
  dyeLot: wireName.optional().describe('Not given: it matches only itself.'),
  startsAt: wireLength
    .optional()
    .describe('The place in the repeat at its very start. Not given: nobody knows, and one repeat is set aside.'),
};

const wireBolt = z.strictObject({
  ...onHand,
  length: wireRun.optional().describe('Not given: as long as one likes.'),
});
const wireRemnant = z.strictObject({
  ...onHand,
  length: wireLength,
  width: wireLength.optional().describe("Not given: the cloth's whole width."),
});
const wireFlaw = z.strictObject({
  cloth: wireName.describe('The id of the cloth.'),
  on: wireName.describe('A bolt or remnant of that cloth; "bolt 1" where none is listed.'),
  from: wireRun.describe('Where the bad stretch begins, from the start of the bolt.'),
  to: wireRun.describe('Where it ends.'),
});
const wirePlacedCut = z.strictObject({
  cloth: wireName.describe('The id of the cloth.'),
  treatment: wireName.describe('Room, opening and treatment: "Nursery/East window/Panels".'),
  cut: z
    .number({ error: fault('is not a number', 'give the number of the cut, from 1') })
    .int({ error: fault('is not a whole number', 'give the number of the cut, from 1') })
    .min(1, { error: fault('is below 1', 'give the number of the cut, from 1') })
    .describe("Counts the treatment's cuts of that cloth from 1, as the cut plan does."),
  on: wireName.describe('A bolt or remnant of that cloth; "bolt 1" where none is listed.'),
  at: wireRun.describe('Where it starts, from the start of the bolt.'),
  x: wireLength.optional().describe('Its left edge from the left selvage. Not given: along a selvage.'),
});

export const wireCutting = z
  .strictObject({
    bolts: z.array(wireBolt).describe('Cloth that has come, or will. Not given: as many bolts as it takes.'),
    remnants: z.array(wireRemnant).describe('Cloth on hand: it is laid on first and adds nothing to the order.'),
    flaws: z.array(wireFlaw).describe('Stretches that are bad over the whole width.'),
    fixed: z.array(wirePlacedCut).describe('Cuts placed by hand: the plan works round them.'),
  })
  .partial()
  .meta({ id: 'cutting' });
export type WireCutting = z.infer<typeof wireCutting>;

/** Its faults have been told before. */
export function readCutting(wire: WireCutting | undefined, unit: LengthUnit): Cutting {
  const length = (value: number | string): Ticks => readLength(value, unit);
  const maybe = (value: number | string | undefined): Ticks | null =>
    value === undefined ? null : readLength(value, unit);
  return {
    bolts: (wire?.bolts ?? []).map((bolt) => ({
      cloth: bolt.cloth,
      name: bolt.name,
      length: maybe(bolt.length),
      dyeLot: bolt.dyeLot ?? null,
      startsAt: maybe(bolt.startsAt),
    })),
    remnants: (wire?.remnants ?? []).map((remnant) => ({
      cloth: remnant.cloth,
      name: remnant.name,
      length: length(remnant.length),
      width: maybe(remnant.width),
      dyeLot: remnant.dyeLot ?? null,
      startsAt: maybe(remnant.startsAt),
    })),
    flaws: (wire?.flaws ?? []).map((flaw) => ({
      cloth: flaw.cloth,
      on: flaw.on,
      from: length(flaw.from),
      to: length(flaw.to),
    })),
    fixed: (wire?.fixed ?? []).map((fixed) => ({
      cloth: fixed.cloth,
      treatment: fixed.treatment,
      cut: fixed.cut,
      on: fixed.on,
      at: length(fixed.at),
      x: maybe(fixed.x),
    })),
  };
}
