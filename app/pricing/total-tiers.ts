/** Totals of one tier over the whole job: lines are rounded, then summed; tax on each rate's rounded base. */
import { minor, shareOf, sumMoney } from '#shared/money.ts';
import type { Minor } from '#shared/money.ts';
import type { PriceBook } from '#shared/price-book.ts';
import type { Price, TierTotals } from '#shared/result.ts';

export function totalPrices(prices: readonly Price[], book: PriceBook): TierTotals {
  const lines = prices.flatMap((price) => price.lines);
  const net = sumMoney(prices.map((price) => price.total));
  const taxes = book.tax.map((tax) => {
    const base = sumMoney(lines.filter((line) => tax.on.includes(line.kind)).map((line) => line.amount));
    return { name: tax.name, amount: shareOf(base, tax.rate, book.rounding) };
  });
  const tax = sumMoney(taxes.map((each) => each.amount));
  const total: Minor = minor(net + tax);
  return { net, taxes, tax, total, deposit: shareOf(total, book.deposit.share, book.rounding) };
}
