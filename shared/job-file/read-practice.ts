/** Reads partial practice and price book into their parsed forms: each level overrides the one under it. */
import { parseDecimal } from '../decimal.ts';
import type { Decimal } from '../decimal.ts';
import { lengthFrom } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import type { Practice, SheerPractice } from '../practice.ts';
import type { PriceBook } from '../price-book.ts';
import { byHeading, FULL_SHEERS } from '../practice-defaults.ts';
import { parseLengthRate } from '../rate.ts';
import type { LengthRate } from '../rate.ts';
import { WORK_NAMES } from '../labour.ts';
import type { WorkName } from '../labour.ts';
import { COUNTED_PARTS, MEASURED_PARTS } from '../parts.ts';
import type { PartName } from '../parts.ts';
import { HEADINGS } from '../words.ts';
import type { Heading } from '../words.ts';
import { readLength, readThousandths } from './read-length.ts';
import { readValancePractice } from './wire-valance.ts';
import { readCornicePractice } from './wire-cornice.ts';
import { readSwagsPractice } from './wire-swags.ts';
import { readRomanShadePractice } from './wire-roman-shade.ts';
import { readBedSkirtPractice } from './wire-bed-skirt.ts';
import { readShowerCurtainPractice } from './wire-shower-curtain.ts';
import type { WirePractice, WirePriceBook } from './wire-practice.ts';

/** `given` laid over `under`. */
export function readPractice(given: WirePractice | undefined, under: Practice, unit: LengthUnit): Practice {
  if (!given) return under;
  const length = (value: number | string | undefined, before: Ticks): Ticks =>
    value === undefined ? before : readLength(value, unit);
  const lengths = <Name extends string>(
    value: Partial<Record<NoInfer<Name>, string | number>> | undefined,
    before: Readonly<Record<Name, Ticks>>,
  ): Record<Name, Ticks> =>
    Object.fromEntries(
      (Object.keys(before) as Name[]).map((name) => [name, length(value?.[name], before[name])]),
    ) as Record<Name, Ticks>;
  const ratio = (value: number | undefined, before: number): number =>
    value === undefined ? before : readThousandths(value);
  return {
    fullness: byHeading((heading) => ratio(given.fullness?.[heading], under.fullness[heading])),
    fullnessOver: given.fullnessOver ?? under.fullnessOver,
    headingAllowance: byHeading((heading) => {
      const value = given.headingAllowance?.[heading];
      if (value === undefined) return under.headingAllowance[heading];
      if (typeof value === 'object')
        return { unlined: readLength(value.unlined, unit), lined: readLength(value.lined, unit) };
      return { unlined: readLength(value, unit), lined: readLength(value, unit) };
    }),
    bottomHem: length(given.bottomHem, under.bottomHem),
    puddleHem: length(given.puddleHem ?? given.bottomHem, under.puddleHem),
    sideHem: length(given.sideHem, under.sideHem),
    hemsInWidth: given.hemsInWidth ?? under.hemsInWidth,
    seam: length(given.seam, under.seam),
    squaring: length(given.squaring, under.squaring),
    shrinkage: given.shrinkage === undefined ? under.shrinkage : Math.round(given.shrinkage * 1e6),
    leastFullness: byHeading((heading) => ratio(given.leastFullness?.[heading], under.leastFullness[heading])),
    widthRounding: given.widthRounding ?? under.widthRounding,
    repeatRule: given.repeatRule ?? under.repeatRule,
    seamMatch: given.seamMatch ?? under.seamMatch,
    orderFrom: given.orderFrom ?? under.orderFrom,
    orderExtra: given.orderExtra ?? under.orderExtra,
    orderStep: length(given.orderStep, under.orderStep),
    remnant: lengths(given.remnant, under.remnant),
    bracketSpacing: length(given.bracketSpacing, under.bracketSpacing),
    pleatsPerWidth: given.pleatsPerWidth ?? under.pleatsPerWidth,
    pleatsClothWidth: length(given.pleatsClothWidth, under.pleatsClothWidth),
    spacing: lengths(given.spacing, under.spacing),
    tab: lengths(given.tab, under.tab),
    pocket: lengths(given.pocket, under.pocket),
    hang: lengths(given.hang, under.hang),
    band: lengths(given.band, under.band),
    layers: lengths(given.layers, under.layers),
    motor: lengths(given.motor, under.motor),
    sheer: readSheers(given, under.sheer, unit),
    stackback: {
      unlined: lengths(given.stackback?.unlined, under.stackback.unlined),
      lined: lengths(given.stackback?.lined, under.stackback.lined),
      interlined: lengths(given.stackback?.interlined, under.stackback.interlined),
    },
    lining: lengths(given.lining, under.lining),
    interlining: lengths(given.interlining, under.interlining),
    valance: readValancePractice(given.valance, under.valance, unit),
    cornice: readCornicePractice(given.cornice, under.cornice, unit),
    swags: readSwagsPractice(given.swags, under.swags, unit),
    romanShade: readRomanShadePractice(given.romanShade, under.romanShade, unit),
    bedSkirt: readBedSkirtPractice(given.bedSkirt, under.bedSkirt, unit),
    showerCurtain: readShowerCurtainPractice(given.showerCurtain, under.showerCurtain, unit),
  };
}

/** What is written for all panels counts for sheers too, unless theirs is written beside it. */
function readSheers(given: WirePractice, under: SheerPractice, unit: LengthUnit): SheerPractice {
  const sheer = given.sheer ?? {};
  const length = (name: 'bottomHem' | 'sideHem'): Ticks => {
    const value = sheer[name] ?? given[name];
    return value === undefined ? under[name] : readLength(value, unit);
  };
  const ratios = (name: 'fullness' | 'leastFullness'): SheerPractice['fullness'] =>
    byHeading((heading) => {
      const value = (FULL_SHEERS.includes(heading) ? sheer[name] : undefined) ?? given[name]?.[heading];
      return value === undefined ? under[name][heading] : readThousandths(value);
    });
  return {
    fullness: ratios('fullness'),
    leastFullness: ratios('leastFullness'),
    bottomHem: length('bottomHem'),
    sideHem: length('sideHem'),
  };
}

const ZERO: Decimal = { digits: 0n, scale: 0 };

/** A book in which nothing is set yet: no markup, no tax, no deposit. */
export const EMPTY_PRICE_BOOK: PriceBook = {
  example: false,
  labour: {
    perWidth: {},
    interlining: null,
    blackout: null,
    works: {},
    hour: null,
    hours: { perWidth: {}, interlining: null, blackout: null, works: {} },
    billableWidth: lengthFrom(54, 'in'),
  },
  cloth: {},
  parts: { each: {}, byLength: {} },
  markup: { cloth: ZERO, hardware: ZERO, notions: ZERO },
  tax: [],
  deposit: { share: ZERO },
  rounding: 'half-up',
};

function amountOr(value: string | number | undefined, before: Decimal | null): Decimal | null {
  return value === undefined ? before : parseDecimal(value);
}

function readPerHeading(
  given: Readonly<Partial<Record<Heading, string | number>>> | undefined,
): Partial<Record<Heading, Decimal>> {
  const amounts: Partial<Record<Heading, Decimal>> = {};
  for (const heading of HEADINGS) {
    const amount = amountOr(given?.[heading], null);
    if (amount !== null) amounts[heading] = amount;
  }
  return amounts;
}

function readWorks(
  labour: Readonly<Partial<Record<WorkName, string | number | undefined>>> | undefined,
): Partial<Record<WorkName, Decimal>> {
  const works: Partial<Record<WorkName, Decimal>> = {};
  for (const name of WORK_NAMES) {
    const amount = amountOr(labour?.[name], null);
    if (amount !== null) works[name] = amount;
  }
  return works;
}

/** Amounts and rates by length stand side by side in the file; the table of parts tells them apart. */
function readParts(given: WirePriceBook, under: PriceBook['parts']): PriceBook['parts'] {
  const each = { ...under.each };
  const byLength = { ...under.byLength };
  const rates: Readonly<Partial<Record<PartName, string | number>>> = { ...given.hardware, ...given.notions };
  for (const [name, value] of Object.entries(rates) as [PartName, string | number][]) {
    const counted = COUNTED_PARTS.find((part) => part === name);
    const measured = MEASURED_PARTS.find((part) => part === name);
    const amount = counted === undefined ? null : parseDecimal(value);
    const rate = measured === undefined ? null : parseLengthRate(String(value));
    if (counted !== undefined && amount !== null) each[counted] = amount;
    if (measured !== undefined && rate !== null) byLength[measured] = rate;
  }
  return { each, byLength };
}

export function readPriceBook(given: WirePriceBook | undefined, under: PriceBook, unit: LengthUnit): PriceBook {
  if (!given) return under;
  const perWidth = { ...under.labour.perWidth, ...readPerHeading(given.labour?.perWidth) };
  const cloth: Record<string, LengthRate> = { ...under.cloth };
  for (const [id, value] of Object.entries(given.cloth ?? {})) {
    const rate = parseLengthRate(value);
    if (rate !== null) cloth[id] = rate;
  }
  const { labour, markup } = given;
  return {
    example: under.example,
    labour: {
      perWidth,
      interlining: amountOr(labour?.interlining, under.labour.interlining),
      blackout: amountOr(labour?.blackout, under.labour.blackout),
      works: { ...under.labour.works, ...readWorks(labour) },
      hour: amountOr(labour?.hour, under.labour.hour),
      hours: {
        perWidth: { ...under.labour.hours.perWidth, ...readPerHeading(labour?.hours?.perWidth) },
        interlining: amountOr(labour?.hours?.interlining, under.labour.hours.interlining),
        blackout: amountOr(labour?.hours?.blackout, under.labour.hours.blackout),
        works: { ...under.labour.hours.works, ...readWorks(labour?.hours) },
      },
      billableWidth:
        labour?.billableWidth === undefined ? under.labour.billableWidth : readLength(labour.billableWidth, unit),
    },
    cloth,
    parts: readParts(given, under.parts),
    markup: {
      cloth: amountOr(markup?.cloth, under.markup.cloth) ?? ZERO,
      hardware: amountOr(markup?.hardware, under.markup.hardware) ?? ZERO,
      notions: amountOr(markup?.notions, under.markup.notions) ?? ZERO,
    },
    tax:
      given.tax === undefined
        ? under.tax
        : given.tax.map((tax) => ({ name: tax.name, rate: parseDecimal(tax.rate) ?? ZERO, on: tax.on })),
    deposit: { share: amountOr(given.deposit?.share, under.deposit.share) ?? ZERO },
    rounding: given.rounding ?? under.rounding,
  };
}
