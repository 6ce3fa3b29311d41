/** What valances, cornices and swags share as a job file writes them: where they hang, and the settings of their boards. */
import * as z from 'zod';
import type { LengthUnit, Ticks } from '../length.ts';
import { ticks } from '../length.ts';
import type { Mount } from '../treatments/treatment-base.ts';
import { BOARD_CHOICES, BOARD_COVERS, BOARD_FIXINGS, WELT_GRAINS } from '../treatments/board-practice.ts';
import type { BoardChoices } from '../treatments/board-practice.ts';
import { MOUNTS } from '../words.ts';
import { readLength, readThousandths } from './read-length.ts';
import { fault, wireChoice, wireLength, wireName } from './wire-fields.ts';
import { setting } from './wire-settings.ts';

/** A count of things side by side. */
export function wireCount(what: string, least: number, most: number) {
  return z
    .number({ error: fault('is not a number', `give how many ${what}`) })
    .int({ error: fault('is not a whole number', `give how many ${what}`) })
    .min(least, { error: fault(`is less than ${least}`, `give ${least} or more ${what}`) })
    .max(most, { error: fault(`is more than ${most}`, `give ${most} ${what} or fewer`) });
}

const wirePart = z
  .number({ error: fault('is not a number', 'give the parts of the drop, for example 5') })
  .min(1, { error: fault('is less than 1', 'give the parts of the drop, for example 5') })
  .max(50, { error: fault('is more than 50', 'give the parts of the drop, for example 5') });

/** Settings of boards and welts that are not lengths. */
export const boardChoices = {
  boardCover: setting(wireChoice(BOARD_COVERS), 'Cloth that covers the board.', BOARD_CHOICES.boardCover),
  boardFixing: setting(wireChoice(BOARD_FIXINGS), 'How it is held to its board.', BOARD_CHOICES.boardFixing),
  weltGrain: setting(wireChoice(WELT_GRAINS), 'Grain of the strips of a welt.', BOARD_CHOICES.weltGrain),
  shallowestPart: setting(
    wirePart,
    'Shallower than one part in this of the whole drop looks mean.',
    BOARD_CHOICES.shallowestPart,
  ),
  deepestPart: setting(
    wirePart,
    'Deeper than one part in this of the whole drop looks heavy.',
    BOARD_CHOICES.deepestPart,
  ),
};

type GivenChoices = { readonly [Name in keyof BoardChoices]?: BoardChoices[Name] | undefined };

export function readBoardChoices(given: GivenChoices, under: BoardChoices): BoardChoices {
  return {
    boardCover: given.boardCover ?? under.boardCover,
    boardFixing: given.boardFixing ?? under.boardFixing,
    weltGrain: given.weltGrain ?? under.weltGrain,
    shallowestPart: given.shallowestPart ?? under.shallowestPart,
    deepestPart: given.deepestPart ?? under.deepestPart,
  };
}

/** Fields of every top treatment. */
export const topFields = {
  mount: z
    .strictObject({ where: wireChoice(MOUNTS), above: wireLength.optional().describe('Its top above the frame.') })
    .optional(),
  width: wireLength.describe('Face of board, box or rod, end to end, before returns.'),
  return: z
    .union([wireLength, z.strictObject({ left: wireLength, right: wireLength })], {
      error: fault('is not a return', 'give a length, or { "left": 6, "right": 3.5 }'),
    })
    .optional()
    .describe('Not given: the return of the treatment underneath and the clearance, where "over" is given; else none.'),
  over: wireLength.nullish().describe('Return of the treatment that hangs underneath.'),
  dropOf: wireLength.nullish().describe('The whole drop that it tops, floor to top: for its proportion.'),
  welt: wireName.nullish().describe('Cloth id of a welt along the lower edge.'),
};

/** The fields above as they are read, whatever the kind. */
export interface WireTop {
  readonly mount?: { readonly where: Mount['where']; readonly above?: number | string | undefined } | undefined;
  readonly width: number | string;
  readonly return?: number | string | { readonly left: number | string; readonly right: number | string } | undefined;
  readonly over?: number | string | null | undefined;
  readonly dropOf?: number | string | null | undefined;
}

export interface ReadTop {
  readonly mount: Mount;
  readonly width: Ticks;
  readonly returns: { readonly left: Ticks; readonly right: Ticks };
  readonly over: Ticks | null;
  readonly dropOf: Ticks | null;
}

export function readTop(wire: WireTop, clearance: Ticks, unit: LengthUnit): ReadTop {
  const over = optionalLength(wire.over, unit);
  return {
    mount: { where: wire.mount?.where ?? 'wall', above: optionalLength(wire.mount?.above, unit) ?? ticks(0) },
    width: readLength(wire.width, unit),
    returns: readReturns(wire.return, ticks(over === null ? 0 : over + clearance), unit),
    over,
    dropOf: optionalLength(wire.dropOf, unit),
  };
}

function readReturns(wire: WireTop['return'], usual: Ticks, unit: LengthUnit): ReadTop['returns'] {
  if (wire === undefined) return { left: usual, right: usual };
  if (typeof wire === 'object') return { left: readLength(wire.left, unit), right: readLength(wire.right, unit) };
  const each = readLength(wire, unit);
  return { left: each, right: each };
}

export function optionalLength(value: number | string | null | undefined, unit: LengthUnit): Ticks | null {
  return value === undefined || value === null ? null : readLength(value, unit);
}

export function optionalRatio(value: number | undefined, before: number): number {
  return value === undefined ? before : readThousandths(value);
}
