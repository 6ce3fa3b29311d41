/** A valance and its practice as a job file writes them. The fields that every treatment has are the caller's. */
import * as z from 'zod';
import type { TreatmentBase } from '../treatments/treatment-base.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import { ticks } from '../length.ts';
import { BOARD_TURNS, VALANCE_CHOICES, VALANCE_LENGTHS } from '../treatments/valance-practice.ts';
import type { ValancePractice } from '../treatments/valance-practice.ts';
import { PLEAT_PLACES, VALANCE_STYLES } from '../treatments/valance.ts';
import type { BoardHang, RodHang, ValanceTreatment } from '../treatments/valance.ts';
import { readLength, readThousandths } from './read-length.ts';
import { fault, wireChoice, wireFlag, wireFullness, wireLength } from './wire-fields.ts';
import { patternField } from './wire-pattern.ts';
import { readLengths, setting, wireLengths } from './wire-settings.ts';
import {
  boardChoices,
  optionalLength,
  optionalRatio,
  readBoardChoices,
  readTop,
  topFields,
  wireCount,
} from './wire-top-treatment.ts';

export const wireValancePractice = z
  .strictObject({
    ...wireLengths(VALANCE_LENGTHS),
    ...boardChoices,
    boardTurnFrom: setting(
      wireChoice(BOARD_TURNS),
      'Cloth on top of the board: as deep as the board, or the length boardTurn.',
      VALANCE_CHOICES.boardTurnFrom,
    ),
    gatheredFullness: setting(wireFullness, 'Gathered, 1.5 to 2.', VALANCE_CHOICES.gatheredFullness / 1000),
    scallopedFullness: setting(wireFullness, 'Scalloped on a rod.', VALANCE_CHOICES.scallopedFullness / 1000),
    balloonFullness: setting(wireFullness, 'Balloon, 2 to 3.', VALANCE_CHOICES.balloonFullness / 1000),
  })
  .partial();
export type WireValancePractice = z.infer<typeof wireValancePractice>;

/** The fields of a valance besides those of every treatment. */
export const valanceFields = {
  kind: z.literal('valance'),
  style: wireChoice(VALANCE_STYLES),
  ...topFields,
  finishedLength: wireLength.describe('Top of board or heading to the lowest point of the hem.'),
  board: z
    .strictObject({ depth: wireLength.optional().describe('Not given: the larger return, else by the practice.') })
    .nullish()
    .describe('It hangs from a board. Tailored, box-pleated and flat scalloped ones always do.'),
  rod: z
    .strictObject({
      diameter: wireLength,
      header: wireLength.optional().describe('Finished header above the pocket. Not given: none.'),
    })
    .nullish()
    .describe('It hangs on a rod through a pocket.'),
  stiffened: wireFlag().optional().describe('Of a tailored one: held flat by buckram.'),
  pleats: wireCount('pleats', 1, 500).optional().describe('Of a box-pleated one.'),
  pleatsAt: wireChoice(PLEAT_PLACES)
    .optional()
    .describe('Pleats share the face, or the outer two stand at the corners. Not given: between.'),
  pleatTakeUp: wireLength.nullish().describe('Cloth in one box pleat. Not given: by the practice.'),
  fullness: wireFullness.nullish().describe('Of what is gathered along the top.'),
  scallops: wireCount('scallops', 1, 500).nullish().describe('Not given: by their usual width.'),
  scallopDepth: wireLength.optional().describe('From the lowest point of a scallop to its point against the next.'),
  puffs: wireCount('puffs', 1, 500).nullish().describe('Of a balloon. Not given: by their usual width.'),
  ...patternField,
};
export type WireValanceFields = z.infer<z.ZodObject<typeof valanceFields>>;

/** Fields that belong to some styles alone. */
const OWN_FIELDS = {
  stiffened: ['tailored'],
  pleats: ['box-pleated'],
  pleatsAt: ['box-pleated'],
  pleatTakeUp: ['box-pleated'],
  fullness: ['gathered', 'scalloped', 'balloon'],
  scallops: ['scalloped'],
  scallopDepth: ['scalloped'],
  puffs: ['balloon'],
  rod: ['gathered', 'scalloped', 'balloon'],
} as const satisfies Partial<Record<keyof WireValanceFields, readonly ValanceTreatment['style'][]>>;

/** The whole treatment: `base` has name, face, quantity, practice and stacks. */
export function wireValance<Base extends z.ZodRawShape>(base: Base) {
  return z.strictObject({ ...base, ...valanceFields }).superRefine((given: unknown, context) => {
    const valance = given as WireValanceFields;
    const { style } = valance;
    const tell = (field: keyof WireValanceFields, wrong: string, right: string): void => {
      context.addIssue({ code: 'custom', path: [field], message: fault(wrong, right) });
    };
    for (const [field, styles] of Object.entries(OWN_FIELDS) as [keyof typeof OWN_FIELDS, readonly string[]][])
      if (valance[field] !== undefined && valance[field] !== null && !styles.includes(style))
        tell(field, `is given for a ${style} valance`, `leave it out, or choose ${styles.join(' or ')}`);
    if (style === 'box-pleated' && valance.pleats === undefined)
      tell('pleats', 'is missing', 'give how many box pleats it has');
    if (style === 'scalloped' && valance.scallopDepth === undefined)
      tell('scallopDepth', 'is missing', 'give how deep the scallops are cut, for example 3');
    if (valance.rod && valance.board) tell('rod', 'is given beside a board', 'give the rod or the board');
    if ((style === 'gathered' || style === 'balloon') && !valance.rod && !valance.board)
      tell('rod', 'is missing', 'give "rod": { "diameter": 1 }, or "board": { }');
    if (style === 'scalloped' && !valance.rod && typeof valance.fullness === 'number' && valance.fullness > 1)
      tell('fullness', 'is given for scallops on a board', 'leave it out: they lie flat; or give the rod');
  });
}

/** A section of the practice, laid over the one under it. */
export function readValancePractice(
  given: WireValancePractice | undefined,
  under: ValancePractice,
  unit: LengthUnit,
): ValancePractice {
  if (!given) return under;
  // A length given for the turn is meant to be used.
  const turn = given.boardTurn === undefined ? under.boardTurnFrom : ('given' as const);
  return {
    ...readLengths(VALANCE_LENGTHS, given, under, unit),
    ...readBoardChoices(given, under),
    boardTurnFrom: given.boardTurnFrom ?? turn,
    gatheredFullness: optionalRatio(given.gatheredFullness, under.gatheredFullness),
    scallopedFullness: optionalRatio(given.scallopedFullness, under.scallopedFullness),
    balloonFullness: optionalRatio(given.balloonFullness, under.balloonFullness),
  };
}

/** The treatment parsed. `practice` is its resolved section. */
export function readValance(
  wire: WireValanceFields,
  base: TreatmentBase,
  practice: ValancePractice,
  unit: LengthUnit,
): ValanceTreatment {
  const top = readTop(wire, practice.overClearance, unit);
  const common = {
    ...base,
    ...top,
    kind: 'valance' as const,
    practice: { ...base.practice, valance: practice },
    finishedLength: readLength(wire.finishedLength, unit),
    welt: wire.welt ?? null,
  };
  const deeper = ticks(Math.max(top.returns.left, top.returns.right));
  const usual: Ticks = deeper > 0 ? deeper : practice.boardDepth;
  const board: BoardHang = { by: 'board', depth: optionalLength(wire.board?.depth, unit) ?? usual };
  const rod: RodHang | null = wire.rod
    ? {
        by: 'rod',
        diameter: readLength(wire.rod.diameter, unit),
        header: optionalLength(wire.rod.header, unit) ?? ticks(0),
      }
    : null;
  const hang = rod ?? board;
  const gathers = (usualFullness: number) => ({
    fullness: typeof wire.fullness === 'number' ? readThousandths(wire.fullness) : usualFullness,
    fullnessGiven: typeof wire.fullness === 'number',
  });
  switch (wire.style) {
    case 'tailored':
      return { ...common, style: 'tailored', hang: board, stiffened: wire.stiffened ?? false };
    case 'box-pleated':
      return {
        ...common,
        style: 'box-pleated',
        hang: board,
        pleats: wire.pleats ?? 1,
        pleatsAt: wire.pleatsAt ?? 'between',
        takeUp: optionalLength(wire.pleatTakeUp, unit) ?? practice.pleatTakeUp,
      };
    case 'gathered':
      return { ...common, ...gathers(practice.gatheredFullness), style: 'gathered', hang };
    case 'scalloped':
      return {
        ...common,
        ...gathers(rod ? practice.scallopedFullness : 1000),
        style: 'scalloped',
        hang,
        scallops: wire.scallops ?? null,
        depth: optionalLength(wire.scallopDepth, unit) ?? ticks(0),
      };
    case 'balloon':
      return { ...common, ...gathers(practice.balloonFullness), style: 'balloon', hang, puffs: wire.puffs ?? null };
  }
}
