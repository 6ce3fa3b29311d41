/** The practice and the price book as a job file writes them: partial overrides of documented defaults. */
import * as z from 'zod';
import { FULLNESS_BASES, ORDER_BASES, ORDER_EXTRAS, REPEAT_RULES, SEAM_MATCHES, WIDTH_ROUNDINGS } from '../practice.ts';
import {
  CENTIMETRE_NUMBERS,
  INCH_NUMBERS,
  LEAST_FULLNESS,
  PLEATS_PER_WIDTH,
  SHEER_FULLNESS,
  USUAL_FULLNESS,
} from '../practice-defaults.ts';
import { WORK_NAMES, WORKS } from '../labour.ts';
import type { WorkName } from '../labour.ts';
import { PART_NAMES, PARTS } from '../parts.ts';
import type { HardwareName, NotionName } from '../parts.ts';
import { HEADINGS, LINE_KINDS } from '../words.ts';
import type { Heading } from '../words.ts';
import { setting } from './wire-settings.ts';
import { wireValancePractice } from './wire-valance.ts';
import { wireCornicePractice } from './wire-cornice.ts';
import { wireSwagsPractice } from './wire-swags.ts';
import { wireRomanShadePractice } from './wire-roman-shade.ts';
import { wireBedSkirtPractice } from './wire-bed-skirt.ts';
import { wireShowerCurtainPractice } from './wire-shower-curtain.ts';
import {
  fault,
  wireAmount,
  wireChoice,
  wireFactor,
  wireFlag,
  wireFullness,
  wireLength,
  wireLengthRate,
  wireName,
  wireShare,
} from './wire-fields.ts';

function perHeading<T extends z.ZodType>(value: T, defaults: Readonly<Record<Heading, unknown>>, metric = defaults) {
  return z.strictObject(
    Object.fromEntries(
      HEADINGS.map((heading) => [
        heading,
        value.optional().meta({ default: defaults[heading], 'x-default-centimetres': metric[heading] }),
      ]),
    ) as Record<Heading, z.ZodOptional<T>>,
  );
}

const headingTurn = z.union([wireLength, z.strictObject({ unlined: wireLength, lined: wireLength })], {
  error: fault('is not a heading allowance', 'give a length, or { "unlined": 8, "lined": 4 }'),
});

/** A group of lengths, each documented with its default in inch and in centimetre households. */
function lengths<Name extends string>(
  says: Readonly<Record<Name, string>>,
  inch: Readonly<Record<Name, number>>,
  metric: Readonly<Record<Name, number>>,
) {
  const names = Object.keys(says) as Name[];
  return z
    .strictObject(
      Object.fromEntries(
        names.map((name) => [name, setting(wireLength, says[name], inch[name], metric[name])]),
      ) as Record<Name, typeof wireLength>,
    )
    .partial();
}

function layer(kind: 'lining' | 'interlining') {
  return lengths(
    {
      headingAllowance: 'Added above the finished length.',
      bottomHem: 'Turned at the bottom, in total.',
      shorter: 'How much shorter than the face it hangs.',
      narrower: 'How much narrower than the face each piece is cut, on its own width.',
      sideHem: 'Turned at one side edge, in total.',
    },
    INCH_NUMBERS[kind],
    CENTIMETRE_NUMBERS[kind],
  );
}

function stackRange(kind: 'unlined' | 'lined' | 'interlined') {
  return lengths(
    { least: 'At the least, for one width.', most: 'At the most, for one width.' },
    INCH_NUMBERS.stackback[kind],
    CENTIMETRE_NUMBERS.stackback[kind],
  );
}

export const wirePractice = z
  .strictObject({
    fullness: perHeading(wireFullness, mapHeadings(USUAL_FULLNESS)).describe('Fullness by heading, as a ratio.'),
    fullnessOver: setting(
      wireChoice(FULLNESS_BASES),
      'Fullness acts on face, overlap and returns, or on face and overlap alone.',
      'whole',
    ),
    headingAllowance: perHeading(
      headingTurn,
      INCH_NUMBERS.headingAllowance,
      CENTIMETRE_NUMBERS.headingAllowance,
    ).describe('Added above the finished length of each face cut: a length, or one for unlined and one for lined.'),
    bottomHem: setting(
      wireLength,
      'Bottom hem in total, such as a doubled 4 in hem.',
      INCH_NUMBERS.bottomHem,
      CENTIMETRE_NUMBERS.bottomHem,
    ),
    puddleHem: setting(
      wireLength,
      'Bottom hem in total of what lies on the floor, single; not given: the bottom hem where one is written, else this.',
      INCH_NUMBERS.puddleHem,
      CENTIMETRE_NUMBERS.puddleHem,
    ),
    sideHem: setting(
      wireLength,
      'Side hem of one edge in total, such as a doubled 1 1/2 in hem.',
      INCH_NUMBERS.sideHem,
      CENTIMETRE_NUMBERS.sideHem,
    ),
    hemsInWidth: setting(wireFlag(), 'Side hems and seams are added before dividing into widths.', false),
    seam: setting(wireLength, 'Lost from each of two widths at a join.', 0),
    squaring: setting(wireLength, 'Extra on every face cut for straightening.', 0),
    shrinkage: setting(
      wireShare.max(0.5, { error: fault('is more than half the cloth', 'give a share such as 0.03') }),
      'Share lost in washing before cutting.',
      0,
    ),
    leastFullness: perHeading(wireFullness, mapHeadings(LEAST_FULLNESS)).describe(
      'One width fewer is offered while it makes this.',
    ),
    widthRounding: setting(
      wireChoice(WIDTH_ROUNDINGS),
      'Whole widths of all pieces together, or half widths of each piece.',
      'up',
    ),
    repeatRule: setting(
      wireChoice(REPEAT_RULES),
      'Cuts up to whole repeats, or one repeat added to each cut.',
      'whole',
    ),
    seamMatch: setting(
      wireChoice(SEAM_MATCHES),
      'Joined widths of patterned panels bring all that is usable, or whole repeats across, so that their seams read on.',
      'usable',
    ),
    orderFrom: setting(
      wireChoice(ORDER_BASES),
      'Order from the treatment as laid out, or from the handbook length.',
      'plan',
    ),
    orderExtra: setting(
      wireChoice(ORDER_EXTRAS),
      'Extra once for each cloth, because no bolt starts at our place in the repeat.',
      'one-repeat',
    ),
    orderStep: setting(
      wireLength,
      'Orders are rounded up to this.',
      INCH_NUMBERS.orderStep,
      CENTIMETRE_NUMBERS.orderStep,
    ),
    remnant: lengths(
      { length: 'What is left over is worth keeping from this length on.', width: 'And from this width on.' },
      INCH_NUMBERS.remnant,
      CENTIMETRE_NUMBERS.remnant,
    ),
    bracketSpacing: setting(
      wireLength,
      'The widest span between two brackets of a rod.',
      INCH_NUMBERS.bracketSpacing,
      CENTIMETRE_NUMBERS.bracketSpacing,
    ),
    pleatsPerWidth: setting(
      z
        .number({ error: fault('is not a number', 'give the pleats in one width, for example 5') })
        .int({ error: fault('is not a whole number', 'give the pleats in one width, for example 5') })
        .min(1, { error: fault('is less than one', 'give the pleats in one width, for example 5') })
        .max(40, { error: fault('is more than 40', 'give the pleats in one width, for example 5') }),
      'Pleats in one width at the usual fullness.',
      PLEATS_PER_WIDTH,
    ),
    pleatsClothWidth: setting(
      wireLength,
      'The width of cloth that pleatsPerWidth counts on; cloth more than a tenth wider or narrower, and cloth run sideways, is counted by its flat width.',
      INCH_NUMBERS.pleatsClothWidth,
      CENTIMETRE_NUMBERS.pleatsClothWidth,
    ),
    spacing: lengths(
      {
        grommet: 'Between two grommets, at the most.',
        grommetLeast: 'Between two grommets, at the least.',
        grommetEdge: 'From a side edge to its first grommet.',
        grommetRing: 'Outer diameter of a grommet: no seam lies under it.',
        grommetTrim: 'The most that is trimmed off at the wall side to move a seam from under a grommet.',
        glider: 'Between two gliders of a wave track.',
        waveEnds: 'Flat cloth beyond the first and last glider of one panel, together.',
        tab: 'Between two tabs, at the most.',
        hook: 'Between two hooks of a gathered tape, at the most.',
        clip: 'Between two rings or clips of a flat panel, at the most.',
      },
      INCH_NUMBERS.spacing,
      CENTIMETRE_NUMBERS.spacing,
    ),
    tab: lengths(
      {
        width: 'Finished width of one tab.',
        drop: 'From the panel to the top of the rod.',
        seam: 'Lost at each seam.',
      },
      INCH_NUMBERS.tab,
      CENTIMETRE_NUMBERS.tab,
    ),
    pocket: lengths(
      { turn: 'Turned under at the pocket.', ease: 'Ease over the rod.' },
      INCH_NUMBERS.pocket,
      CENTIMETRE_NUMBERS.pocket,
    ),
    hang: lengths(
      {
        floor: 'Clear of the floor, when the length is found from the fixing.',
        sill: 'Clear of the sill.',
        apron: 'Below the sill.',
        break: 'Bent where it meets the floor.',
        puddle: 'Lying on the floor.',
        fullPuddle: 'Lying on the floor in folds.',
      },
      INCH_NUMBERS.hang,
      CENTIMETRE_NUMBERS.hang,
    ),
    band: lengths({ seam: 'Lost at each long edge of a band.' }, INCH_NUMBERS.band, CENTIMETRE_NUMBERS.band),
    layers: lengths(
      {
        drapery: 'Return of a drapery over another, at the least.',
        clear: 'From what hangs behind to the front of panels before it, at the least.',
        past: 'How far a valance, cornice or swags go past a rod underneath, on each side, at the least.',
      },
      INCH_NUMBERS.layers,
      CENTIMETRE_NUMBERS.layers,
    ),
    motor: lengths(
      { least: 'What a motor takes of the track at its end, at the least.', most: 'And at the most.' },
      INCH_NUMBERS.motor,
      CENTIMETRE_NUMBERS.motor,
    ),
    sheer: z
      .strictObject({
        fullness: setting(wireFullness, 'Fullness of sheers, pleated or gathered.', SHEER_FULLNESS.fullness / 1000),
        leastFullness: setting(
          wireFullness,
          'One width fewer is offered while it makes this.',
          SHEER_FULLNESS.leastFullness / 1000,
        ),
        ...lengths(
          {
            bottomHem: 'Bottom hem in total, such as a doubled 5 in hem.',
            sideHem: 'Side hem of one edge in total, such as a doubled 1 in hem.',
          },
          INCH_NUMBERS.sheer,
          CENTIMETRE_NUMBERS.sheer,
        ).shape,
      })
      .partial()
      .describe('Panels whose face is a sheer; not given: what is written for all panels, else these.'),
    stackback: z
      .strictObject({
        unlined: stackRange('unlined'),
        lined: stackRange('lined'),
        interlined: stackRange('interlined'),
      })
      .partial()
      .describe('Wall that one width of cloth takes when drawn back.'),
    lining: layer('lining'),
    interlining: layer('interlining'),
    valance: wireValancePractice,
    cornice: wireCornicePractice,
    swags: wireSwagsPractice,
    romanShade: wireRomanShadePractice,
    bedSkirt: wireBedSkirtPractice,
    showerCurtain: wireShowerCurtainPractice,
  })
  .partial()
  .meta({ id: 'practice' });
export type WirePractice = z.infer<typeof wirePractice>;

function mapHeadings(values: Readonly<Record<Heading, number>>): Record<Heading, number> {
  return Object.fromEntries(HEADINGS.map((heading) => [heading, values[heading] / 1000])) as Record<Heading, number>;
}

export const ROUNDINGS = ['half-up', 'half-even', 'up', 'down'] as const;

/** Rates of one kind of part, by the names of `shared/parts.ts`. */
function partRates<Kind extends 'hardware' | 'notions'>(kind: Kind) {
  type Names = Kind extends 'hardware' ? HardwareName : NotionName;
  const names = PART_NAMES.filter((name) => PARTS[name].kind === kind);
  return z.strictObject(
    Object.fromEntries(
      names.map((name) => [
        name,
        (PARTS[name].per === 'each' ? wireAmount : wireLengthRate).describe(PARTS[name].says),
      ]),
    ) as { [Name in Names]: (typeof PARTS)[Name]['per'] extends 'each' ? typeof wireAmount : typeof wireLengthRate },
  );
}

const WORK_RATES = Object.fromEntries(
  WORK_NAMES.map((name) => [name, wireAmount.describe(WORKS[name].says)]),
) as Record<WorkName, typeof wireAmount>;

const WORK_HOURS = Object.fromEntries(
  WORK_NAMES.map((name) => [name, wireFactor.describe(WORKS[name].says)]),
) as Record<WorkName, typeof wireFactor>;

export const wirePriceBook = z
  .strictObject({
    labour: z
      .strictObject({
        perWidth: z
          .partialRecord(z.enum(HEADINGS), wireAmount)
          .describe('For each billable width of the face, by heading.'),
        interlining: wireAmount.describe('Added for each width and each interlining layer.'),
        blackout: wireAmount.describe('Added for each width when a blackout hangs behind.'),
        ...WORK_RATES,
        hour: wireAmount.describe('An hour: prices work whose hours are given and whose own rate is not.'),
        hours: z
          .strictObject({
            perWidth: z.partialRecord(z.enum(HEADINGS), wireFactor).describe('Making one billable width, by heading.'),
            interlining: wireFactor,
            blackout: wireFactor,
            ...WORK_HOURS,
          })
          .partial()
          .describe('Hours that one unit of each piece of work takes.'),
        billableWidth: wireLength.describe('Billable widths are the flat cloth over this, up to whole ones (54 in).'),
      })
      .partial(),
    cloth: z
      .record(wireName, wireLengthRate)
      .describe('Cost of generic cloth, or of cloth listed without a price, by cloth id.'),
    hardware: partRates('hardware').partial(),
    notions: partRates('notions').partial(),
    markup: z
      .strictObject({ cloth: wireFactor, hardware: wireFactor, notions: wireFactor })
      .partial()
      .describe('1.0 doubles the cost. Not given: 0.'),
    tax: z.array(
      z.strictObject({
        name: wireName,
        rate: wireFactor,
        on: z.array(wireChoice(LINE_KINDS)),
      }),
    ),
    deposit: z.strictObject({
      share: wireFactor.refine((value) => Number(String(value).replace(',', '.')) <= 1, {
        error: fault('is above 1', 'give a share from 0 to 1, for example 0.5'),
      }),
    }),
    rounding: wireChoice(ROUNDINGS),
  })
  .partial()
  .meta({ id: 'priceBook' });
export type WirePriceBook = z.infer<typeof wirePriceBook>;
