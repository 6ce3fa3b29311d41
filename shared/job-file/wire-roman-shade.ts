/** A Roman shade and its practice as a job file writes them. The fields that every treatment has are the caller's. */
import * as z from 'zod';
import { ticks } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import {
  INSIDE_LENGTHS,
  RETURN_DROPS,
  RIB_PLACES,
  ROMAN_CHOICES,
  ROMAN_LENGTHS,
  ROMAN_STYLES,
  ROW_RULES,
  SHADE_LIFTS,
  SOFT_FOLD_LININGS,
} from '../treatments/roman-shade.ts';
import type { RomanShadePractice, RomanShadeTreatment, RomanSize } from '../treatments/roman-shade.ts';
import type { TreatmentBase } from '../treatments/treatment-base.ts';
import { MOUNTS } from '../words.ts';
import { readLength, readThousandths } from './read-length.ts';
import { fault, wireChoice, wireFlag, wireFullness, wireLength } from './wire-fields.ts';
import { patternField } from './wire-pattern.ts';
import { readLengths, setting, wireLengths } from './wire-settings.ts';

export const wireRomanShadePractice = z
  .strictObject({
    ...wireLengths(ROMAN_LENGTHS),
    rowRule: setting(
      wireChoice(ROW_RULES),
      'board-line: spacing = length / (rows - 1/2), the board line is a row; head-room: (length - head room) / (ring rows + 1/2). First row half a space up.',
      ROMAN_CHOICES.rowRule,
    ),
    insideLength: setting(
      wireChoice(INSIDE_LENGTHS),
      'Inside a frame: the longest reading, or the shortest less its deduction.',
      ROMAN_CHOICES.insideLength,
    ),
    softFoldFullness: setting(
      wireFullness,
      'Cloth of soft folds over the finished length.',
      ROMAN_CHOICES.softFoldFullness / 1000,
    ),
    softFoldLining: setting(
      wireChoice(SOFT_FOLD_LININGS),
      'The lining folds with the face, or hangs flat.',
      ROMAN_CHOICES.softFoldLining,
    ),
    returnDrop: setting(
      wireChoice(RETURN_DROPS),
      'Side returns hang as deep as the raised stack, or over the whole length.',
      ROMAN_CHOICES.returnDrop,
    ),
  })
  .partial();
export type WireRomanShadePractice = z.infer<typeof wireRomanShadePractice>;

function readings(one: string) {
  return z
    .array(wireLength, { error: fault('are not readings', `give ${one} in a list, for example [34.5, 34.5, 34.625]`) })
    .min(1, { error: fault('holds no reading', `give ${one}`) })
    .max(9, { error: fault('holds more than nine readings', `give ${one}`) });
}

const wireSize = z.discriminatedUnion(
  'basis',
  [
    z.strictObject({
      basis: z.literal('opening'),
      widths: readings('the width at top, middle and bottom'),
      lengths: readings('the length at left, middle and right'),
      diagonals: z
        .tuple([wireLength, wireLength], {
          error: fault('are not two diagonals', 'give both, for example [66, 66.25]'),
        })
        .optional(),
      depth: wireLength.optional().describe('Frame depth free of handles, tiles and sill lip.'),
    }),
    z.strictObject({
      basis: z.literal('finished'),
      width: wireLength.describe('Of the shade, deductions taken.'),
      length: wireLength.describe('Of the shade, top of the board to the hem.'),
    }),
  ],
  {
    error: fault(
      'does not say what was measured',
      'give "basis": "opening" (the workroom deducts) or "finished" (deductions taken)',
    ),
  },
);

function counted(what: string, least: number, most: number) {
  return z
    .number({ error: fault('is not a number', `give how many ${what}`) })
    .int({ error: fault('is not a whole number', `give how many ${what}`) })
    .min(least, { error: fault(`is less than ${least}`, `give ${least} or more`) })
    .max(most, { error: fault(`is more than ${most}`, `give ${most} or less`) });
}

/** The fields of a Roman shade besides those of every treatment. */
export const romanShadeFields = {
  kind: z.literal('roman-shade'),
  style: wireChoice(ROMAN_STYLES),
  mount: z
    .strictObject({ where: wireChoice(MOUNTS), above: wireLength.optional().describe('Board above the frame.') })
    .describe('inside the frame; wall or ceiling is an outside mount.'),
  size: wireSize,
  thick: wireFlag().optional().describe('Thick cloth takes the larger deduction inside a frame.'),
  return: z
    .union([wireLength, z.strictObject({ left: wireLength, right: wireLength })], {
      error: fault('is not a return', 'give a length, or { "left": 1.5, "right": 1.5 }'),
    })
    .optional()
    .describe('Side returns of an outside mount. Not given: the depth of the board.'),
  rows: counted('rows', 2, 200).nullish().describe('As the row rule counts them. Not given: by the usual spacing.'),
  columns: counted('columns of rings', 2, 200).nullish(),
  ribs: wireChoice(RIB_PLACES).optional().describe('Not given: in the rows, none on a relaxed shade.'),
  lift: wireChoice(SHADE_LIFTS)
    .optional()
    .describe(
      'Not given: cordless. A cord that a child can reach has to be asked for. A motor stands at the control end.',
    ),
  control: wireChoice(['left', 'right']).optional(),
  valance: z.strictObject({ depth: wireLength }).nullish().describe('A valance of its own, by its finished depth.'),
  ...patternField,
};
export type WireRomanShadeFields = z.infer<z.ZodObject<typeof romanShadeFields>>;

/** The whole treatment: `base` has name, face, quantity, practice and stacks. */
export function wireRomanShade<Base extends z.ZodRawShape>(base: Base) {
  return z.strictObject({ ...base, ...romanShadeFields });
}

/** A section of the practice, laid over the one under it. */
export function readRomanShadePractice(
  given: WireRomanShadePractice | undefined,
  under: RomanShadePractice,
  unit: LengthUnit,
): RomanShadePractice {
  if (!given) return under;
  return {
    ...readLengths(ROMAN_LENGTHS, given, under, unit),
    rowRule: given.rowRule ?? under.rowRule,
    insideLength: given.insideLength ?? under.insideLength,
    softFoldFullness:
      given.softFoldFullness === undefined ? under.softFoldFullness : readThousandths(given.softFoldFullness),
    softFoldLining: given.softFoldLining ?? under.softFoldLining,
    returnDrop: given.returnDrop ?? under.returnDrop,
  };
}

/** The treatment parsed. `practice` is its resolved section. */
export function readRomanShade(
  wire: WireRomanShadeFields,
  base: TreatmentBase,
  practice: RomanShadePractice,
  unit: LengthUnit,
): RomanShadeTreatment {
  return {
    ...base,
    practice: { ...base.practice, romanShade: practice },
    kind: 'roman-shade',
    style: wire.style,
    mount: {
      where: wire.mount.where,
      above: wire.mount.above === undefined ? ticks(0) : readLength(wire.mount.above, unit),
    },
    size: readSize(wire.size, unit),
    thick: wire.thick ?? false,
    returns: readReturns(wire, practice, unit),
    rows: wire.rows ?? null,
    columns: wire.columns ?? null,
    ribs: wire.ribs ?? (wire.style === 'relaxed' ? 'none' : 'rows'),
    lift: wire.lift ?? 'cordless',
    control: wire.control ?? 'right',
    valance: wire.valance ? { depth: readLength(wire.valance.depth, unit) } : null,
  };
}

function readSize(wire: WireRomanShadeFields['size'], unit: LengthUnit): RomanSize {
  const length = (value: number | string): Ticks => readLength(value, unit);
  if (wire.basis === 'finished') return { basis: 'finished', width: length(wire.width), length: length(wire.length) };
  return {
    basis: 'opening',
    widths: wire.widths.map(length),
    lengths: wire.lengths.map(length),
    diagonals: wire.diagonals === undefined ? null : [length(wire.diagonals[0]), length(wire.diagonals[1])],
    depth: wire.depth === undefined ? null : length(wire.depth),
  };
}

/** Not given: the depth of the board in front of a wall, nothing inside a frame. */
function readReturns(
  wire: WireRomanShadeFields,
  practice: RomanShadePractice,
  unit: LengthUnit,
): RomanShadeTreatment['returns'] {
  if (typeof wire.return === 'object')
    return { left: readLength(wire.return.left, unit), right: readLength(wire.return.right, unit) };
  const usual = wire.mount.where === 'inside' ? ticks(0) : practice.boardDepth;
  const each = wire.return === undefined ? usual : readLength(wire.return, unit);
  return { left: each, right: each };
}
