/** The price of one treatment under one stack: lines of cloth, labour, notions and hardware, each rounded once. */
import type { Cloth } from '#shared/cloth.ts';
import { addDecimals, decimalOf, ONE, sayDecimalPlain } from '#shared/decimal.ts';
import type { Decimal } from '#shared/decimal.ts';
import { priceOf, sumMoney } from '#shared/money.ts';
import type { Currency } from '#shared/money.ts';
import { WORKS } from '#shared/labour.ts';
import { PARTS } from '#shared/parts.ts';
import type { Part } from '#shared/parts.ts';
import { ticksPerRate } from '#shared/rate.ts';
import type { LengthRate } from '#shared/rate.ts';
import type { Price, PriceLine } from '#shared/result.ts';
import type { LineKind } from '#shared/words.ts';
import type { Estimate, Labour } from '#app/estimating/estimate.ts';
import type { Say } from '#app/estimating/say.ts';
import type { RateBook } from './pick-rates.ts';

interface Pricing {
  readonly rates: RateBook;
  readonly currency: Currency;
  readonly say: Say;
  readonly clothOf: (id: string) => Cloth | null;
}

/** Null while a needed rate is missing. */
export function priceStack(estimate: Estimate, pricing: Pricing): Price | null {
  const lines = [
    ...priceCloth(estimate, pricing),
    ...estimate.labour.map((labour) => priceLabour(labour, pricing)),
    ...estimate.parts.map((part) => pricePart(part, pricing)).filter((line) => line !== 'not sold'),
  ];
  const known = lines.filter((line) => line !== null);
  if (known.length < lines.length) return null;
  return { total: sumMoney(known.map((line) => line.amount)), lines: known };
}

function priceCloth(estimate: Estimate, pricing: Pricing): (PriceLine | null)[] {
  const { rates, say, clothOf } = pricing;
  return estimate.takeoff.map((line) => {
    const cloth = clothOf(line.cloth);
    const rate = cloth ? rates.cloth(cloth) : null;
    if (!cloth || !rate) return null;
    const use = line.use === undefined ? '' : `, ${line.use}`;
    const label = `${cloth.name}${use}, ${say.cloth(line.order)}`;
    return byLength('cloth', label, rate, line.order, rates.book.markup.cloth, pricing);
  });
}

function priceLabour(labour: Labour, pricing: Pricing): PriceLine | null {
  const { rates } = pricing;
  switch (labour.work) {
    case 'making':
      return byWidths('Making', rates.perWidth(labour.heading), labour.widths, pricing);
    case 'interlining':
      return byWidths('Interlining', rates.interlining(), labour.widths, pricing);
    case 'blackout':
      return byWidths('Blackout', rates.blackout(), labour.widths, pricing);
    default: {
      const { label, per } = WORKS[labour.work];
      const many = labour.count === 1 ? '' : `, ${labour.count}`;
      const said = per === 'ft' ? `, ${labour.count} ft` : many;
      return byCount('labour', `${label}${said}`, rates.work(labour.work), labour.count, null, pricing);
    }
  }
}

function byWidths(label: string, rate: Decimal | null, widths: number, pricing: Pricing): PriceLine | null {
  const said = widths === 1 ? '1 width' : `${widths} widths`;
  return byCount('labour', `${label}, ${said}`, rate, widths, null, pricing);
}

/** Not everybody sells hardware or charges notions: a part without a rate is left out, and `priceJob` says so. */
function pricePart(part: Part, pricing: Pricing): PriceLine | null | 'not sold' {
  const { book } = pricing.rates;
  const { kind, label } = PARTS[part.part];
  const markup = book.markup[kind];
  if ('length' in part) {
    const rate = book.parts.byLength[part.part];
    const said =
      kind === 'notions' ? pricing.say.cloth(part.length) : `${pricing.say.length(part.length)} ${pricing.say.unit}`;
    return rate ? byLength(kind, `${label}, ${said}`, rate, part.length, markup, pricing) : 'not sold';
  }
  const rate = book.parts.each[part.part];
  return rate ? byCount(kind, `${label}, ${part.count}`, rate, part.count, markup, pricing) : 'not sold';
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
