/** Hours of a treatment, where the price book says how many each piece of work takes: told, and priced where no rate is. */
import { addDecimals, decimalOf, multiplyDecimals, sayDecimalPlain } from '#shared/decimal.ts';
import type { Decimal } from '#shared/decimal.ts';
import { WORKS } from '#shared/labour.ts';
import type { PriceBook, WorkHours } from '#shared/price-book.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { Labour } from '#app/estimating/estimate.ts';
import { step } from '#app/estimating/say.ts';

/** Hours of one unit of this work; null where nobody said. */
export function hoursOf(labour: Labour, hours: WorkHours): Decimal | null {
  switch (labour.work) {
    case 'making':
      return hours.perWidth[labour.heading] ?? null;
    case 'interlining':
    case 'blackout':
      return hours[labour.work];
    default:
      return hours.works[labour.work] ?? null;
  }
}

function countOf(labour: Labour): number {
  return 'widths' in labour ? labour.widths : labour.count;
}

function nameOf(labour: Labour): string {
  switch (labour.work) {
    case 'making':
      return 'making';
    case 'interlining':
    case 'blackout':
      return labour.work;
    default:
      return WORKS[labour.work].label.toLowerCase();
  }
}

/** Nothing where no hours are entered for any of this work; work without hours is named as not counted. */
export function workHours(labour: readonly Labour[], { labour: book }: PriceBook): WorkingStep[] {
  const timed = labour.flatMap((each) => {
    const hours = hoursOf(each, book.hours);
    return hours === null ? [] : [{ each, hours }];
  });
  if (timed.length === 0) return [];
  const untimed = labour.filter((each) => hoursOf(each, book.hours) === null).map(nameOf);
  const sum = timed
    .map(({ each, hours }) => multiplyDecimals(decimalOf(countOf(each)), hours))
    .reduce((a, b) => addDecimals(a, b));
  const formula = timed
    .map(({ each, hours }) => `${nameOf(each)} ${countOf(each)} × ${sayDecimalPlain(hours)}`)
    .join(' + ');
  const rests = `price book: hours of each piece of work${untimed.length === 0 ? '' : `; none are entered for ${untimed.join(', ')}`}`;
  return [step('hours', 'hours', formula, `${sayDecimalPlain(sum)} h`, rests)];
}
