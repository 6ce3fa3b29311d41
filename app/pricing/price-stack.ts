/** The price of one treatment under one stack: lines of cloth, labour, notions and hardware, each rounded once. */
import type { Cloth } from '#shared/cloth.ts';
import { addDecimals, decimalOf, ONE, sayDecimalPlain } from '#shared/decimal.ts';
import type { Decimal } from '#shared/decimal.ts';
import { priceOf, sumMoney } from '#shared/money.ts';
import type { Currency } from '#shared/money.ts';
import { ticksPerRate } from '#shared/rate.ts';
import type { LengthRate } from '#shared/rate.ts';
import type { Price, PriceLine } from '#shared/result.ts';
import type { LineKind } from '#shared/words.ts';
import type { Estimate, Labour, Part } from '#app/estimating/estimate.ts';
import type { Say } from '#app/estimating/say.ts';
import type { RateBook } from './pick-rates.ts';

interface Pricing {
  readonly rates: RateBook;
  readonly currency: Currency;
  readonly say: Say;
}

/** `cloths` are the face and the layers behind it, as in the take-off. Null while a needed rate is missing. */
export function priceStack(cloths: readonly Cloth[], estimate: Estimate, pricing: Pricing): Price | null {
  const lines = [
    ...priceCloth(cloths, estimate, pricing),
    ...estimate.labour.map((labour) => priceLabour(labour, pricing)),
    ...estimate.parts.map((part) => pricePart(part, pricing)).filter((line) => line !== 'not sold'),
  ];
  const known = lines.filter((line) => line !== null);
  if (known.length < lines.length) return null;
  return { total: sumMoney(known.map((line) => line.amount)), lines: known };
}

function priceCloth(cloths: readonly Cloth[], estimate: Estimate, pricing: Pricing): (PriceLine | null)[] {
  const { rates, say } = pricing;
  return estimate.takeoff.map((line, index) => {
    const cloth = cloths[index];
    const rate = cloth ? rates.cloth(cloth) : null;
    if (!cloth || !rate) return null;
    const label = `${cloth.name}, ${say.cloth(line.order)}`;
    return byLength('cloth', label, rate, line.order, rates.book.markup.cloth, pricing);
  });
}

function priceLabour(labour: Labour, pricing: Pricing): PriceLine | null {
  const { rates } = pricing;
  switch (labour.work) {
    case 'making':
      return byCount(
        'labour',
        `Making, ${sayWidths(labour.widths)}`,
        rates.perWidth(labour.heading),
        labour.widths,
        null,
        pricing,
      );
    case 'interlining':
      return byCount(
        'labour',
        `Interlining, ${sayWidths(labour.widths)}`,
        rates.interlining(),
        labour.widths,
        null,
        pricing,
      );
    case 'blackout':
      return byCount('labour', `Blackout, ${sayWidths(labour.widths)}`, rates.blackout(), labour.widths, null, pricing);
    case 'putting-up': {
      const label = labour.rods > 1 ? `Putting up, ${labour.rods} rods` : 'Putting up';
      return byCount('labour', label, rates.installPerRod(), labour.rods, null, pricing);
    }
  }
}

function sayWidths(count: number): string {
  return count === 1 ? '1 width' : `${count} widths`;
}

/** Not everybody sells hardware or charges notions: a part without a rate is left out, and `priceJob` says so. */
function pricePart(part: Part, pricing: Pricing): PriceLine | null | 'not sold' {
  const { hardware, notions, markup } = pricing.rates.book;
  const { say } = pricing;
  switch (part.part) {
    case 'rod':
      if (!hardware.rod) return 'not sold';
      return byLength(
        'hardware',
        `Rod, ${say.length(part.length)} ${say.unit}`,
        hardware.rod,
        part.length,
        markup.hardware,
        pricing,
      );
    case 'bracket':
      if (!hardware.bracket) return 'not sold';
      return byCount('hardware', `Brackets, ${part.count}`, hardware.bracket, part.count, markup.hardware, pricing);
    case 'ring':
      if (!hardware.ring) return 'not sold';
      return byCount('hardware', `Rings, ${part.count}`, hardware.ring, part.count, markup.hardware, pricing);
    case 'heading-tape':
      if (!notions.headingTape) return 'not sold';
      return byLength(
        'notions',
        `Heading tape, ${say.cloth(part.length)}`,
        notions.headingTape,
        part.length,
        markup.notions,
        pricing,
      );
    case 'hook':
      if (!notions.hook) return 'not sold';
      return byCount('notions', `Hooks, ${part.count}`, notions.hook, part.count, markup.notions, pricing);
    case 'weight':
      if (!notions.weight) return 'not sold';
      return byCount('notions', `Weights, ${part.count}`, notions.weight, part.count, markup.notions, pricing);
  }
}

function byLength(
  kind: LineKind,
  label: string,
  rate: LengthRate,
  length: number,
  markup: Decimal,
  { rates, currency, say }: Pricing,
): PriceLine {
  const factor = addDecimals(ONE, markup);
  const amount = priceOf(rate.amount, [decimalOf(length), factor], ticksPerRate(rate), currency, rates.book.rounding);
  const quantity = `${say.number(length / ticksPerRate(rate), 4)} ${rate.per}`;
  return { label, kind, amount, formula: `${quantity} × ${sayDecimalPlain(rate.amount)} × ${sayDecimalPlain(factor)}` };
}

function byCount(
  kind: LineKind,
  label: string,
  rate: Decimal | null,
  count: number,
  markup: Decimal | null,
  { rates, currency }: Pricing,
): PriceLine | null {
  if (rate === null) return null;
  const factors = [decimalOf(count), ...(markup === null ? [] : [addDecimals(ONE, markup)])];
  const amount = priceOf(rate, factors, 1, currency, rates.book.rounding);
  const marked = markup === null ? '' : ` × ${sayDecimalPlain(addDecimals(ONE, markup))}`;
  return { label, kind, amount, formula: `${count} × ${sayDecimalPlain(rate)}${marked}` };
}
