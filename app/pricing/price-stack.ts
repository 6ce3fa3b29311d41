/** The price of one treatment under one stack: lines of cloth, labour, notions and hardware, each rounded once. */
import { isBlackout } from '#shared/cloth.ts';
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { addDecimals, decimalOf, ONE, sayDecimalPlain } from '#shared/decimal.ts';
import type { Decimal } from '#shared/decimal.ts';
import { piecesOf } from '#shared/job.ts';
import type { PanelsTreatment } from '#shared/job.ts';
import { priceOf, sumMoney } from '#shared/money.ts';
import type { Currency } from '#shared/money.ts';
import { ticksPerRate } from '#shared/rate.ts';
import type { LengthRate } from '#shared/rate.ts';
import type { Price, PriceLine } from '#shared/result.ts';
import type { LineKind } from '#shared/words.ts';
import type { PanelsEstimate } from '#app/estimating/estimate-panels.ts';
import { upToWhole } from '#app/estimating/round.ts';
import type { Say } from '#app/estimating/say.ts';
import { billableWidths } from './billable-widths.ts';
import type { RateBook } from './pick-rates.ts';

interface Pricing {
  readonly rates: RateBook;
  readonly currency: Currency;
  readonly say: Say;
}

/** Null while a needed rate is missing; `rates.missing` then names it. */
export function priceStack(
  panels: PanelsTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  estimate: PanelsEstimate,
  pricing: Pricing,
): Price | null {
  const lines = [
    ...priceCloth([face, ...behind], estimate, pricing),
    ...priceLabour(panels, face, behind, estimate, pricing),
    ...priceNotions(panels, estimate, pricing),
    ...priceHardware(panels, estimate, pricing),
  ];
  const known = lines.filter((line) => line !== null);
  if (known.length < lines.length) return null;
  return { total: sumMoney(known.map((line) => line.amount)), lines: known };
}

function priceCloth(cloths: readonly Cloth[], estimate: PanelsEstimate, pricing: Pricing): (PriceLine | null)[] {
  const { rates, say } = pricing;
  return estimate.takeoff.map((line, index) => {
    const cloth = cloths[index];
    const rate = cloth ? rates.cloth(cloth) : null;
    if (!cloth || !rate) return null;
    return byLength(
      'cloth',
      `${cloth.name}, ${say.cloth(line.order)}`,
      rate,
      line.order,
      rates.book.markup.cloth,
      pricing,
    );
  });
}

function priceLabour(
  panels: PanelsTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  estimate: PanelsEstimate,
  pricing: Pricing,
): (PriceLine | null)[] {
  const { rates } = pricing;
  const line = estimate.takeoff[0];
  const widths = line ? billableWidths(face, line, rates.book.labour.billableWidth) * panels.quantity : 0;
  const said = widths === 1 ? '1 width' : `${widths} widths`;
  const interlinings = behind.filter((layer) => layer.role === 'interlining').length;
  return [
    byCount('labour', `Making, ${said}`, rates.perWidth(panels.heading), widths, null, pricing),
    ...(interlinings > 0
      ? [byCount('labour', `Interlining, ${said}`, rates.interlining(), widths * interlinings, null, pricing)]
      : []),
    ...(behind.some(isBlackout)
      ? [byCount('labour', `Blackout, ${said}`, rates.blackout(), widths, null, pricing)]
      : []),
    byCount(
      'labour',
      panels.quantity > 1 ? `Putting up, ${panels.quantity} rods` : 'Putting up',
      rates.installPerRod(),
      panels.quantity,
      null,
      pricing,
    ),
  ];
}

/** Hooks: one for a pleat and one for each end. Where pleats are not counted, none are charged. */
export function countHooks(panels: PanelsTreatment, estimate: PanelsEstimate): number {
  return estimate.pleats ? (estimate.pleats.count + 2) * piecesOf(panels.arrangement) * panels.quantity : 0;
}

/** Weights: two corners of each piece and one at every join. */
export function countWeights(panels: PanelsTreatment, estimate: PanelsEstimate): number {
  return (2 * piecesOf(panels.arrangement) + (estimate.counted?.joins ?? 0)) * panels.quantity;
}

/** Brackets: two ends, and one more wherever a span would be too wide. */
export function countBrackets(panels: PanelsTreatment): number {
  const { bracketSpacing } = panels.practice;
  const spans = bracketSpacing === 0 ? 1 : Math.max(1, upToWhole(panels.rodWidth, bracketSpacing));
  return (spans + 1) * panels.quantity;
}

function priceNotions(panels: PanelsTreatment, estimate: PanelsEstimate, pricing: Pricing): (PriceLine | null)[] {
  const { notions, markup } = pricing.rates.book;
  const lines: (PriceLine | null)[] = [];
  if (notions.headingTape) {
    const length = estimate.madeWidth * panels.quantity;
    lines.push(
      byLength(
        'notions',
        `Heading tape, ${pricing.say.cloth(length)}`,
        notions.headingTape,
        length,
        markup.notions,
        pricing,
      ),
    );
  }
  const hooks = countHooks(panels, estimate);
  if (notions.hook && hooks > 0)
    lines.push(byCount('notions', `Hooks, ${hooks}`, notions.hook, hooks, markup.notions, pricing));
  const weights = countWeights(panels, estimate);
  if (notions.weight)
    lines.push(byCount('notions', `Weights, ${weights}`, notions.weight, weights, markup.notions, pricing));
  return lines;
}

function priceHardware(panels: PanelsTreatment, estimate: PanelsEstimate, pricing: Pricing): (PriceLine | null)[] {
  const { hardware, markup } = pricing.rates.book;
  const lines: (PriceLine | null)[] = [];
  if (hardware.rod) {
    const length = (panels.rodWidth + panels.returns.left + panels.returns.right) * panels.quantity;
    lines.push(
      byLength(
        'hardware',
        `Rod, ${pricing.say.length(length)} ${pricing.say.unit}`,
        hardware.rod,
        length,
        markup.hardware,
        pricing,
      ),
    );
  }
  const brackets = countBrackets(panels);
  if (hardware.bracket)
    lines.push(byCount('hardware', `Brackets, ${brackets}`, hardware.bracket, brackets, markup.hardware, pricing));
  const rings = countHooks(panels, estimate);
  if (hardware.ring && rings > 0)
    lines.push(byCount('hardware', `Rings, ${rings}`, hardware.ring, rings, markup.hardware, pricing));
  return lines;
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
  const quantity = say.number(length / ticksPerRate(rate), 4);
  return {
    label,
    kind,
    amount,
    formula: `${quantity} ${rate.per} × ${sayDecimalPlain(rate.amount)} × ${sayDecimalPlain(factor)}`,
  };
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
