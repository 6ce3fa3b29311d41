/** Figures of the lining engine in words and working, with the decimal sign of the locale. */

export type DecimalSign = '.' | ',';

/** A figure as it is written, its point turned into the sign. */
function signed(text: string, sign: DecimalSign): string {
  return sign === '.' ? text : text.replace('.', sign);
}

/** To so many decimals, its zeros kept. */
export function sayFixed(value: number, decimals: number, sign: DecimalSign): string {
  return signed(value.toFixed(decimals), sign);
}

/** A share as per cent: `9 %`, `0.4 %`, `less than 0.1 %`, `over 99 %`. */
export function sayPercent(share: number, sign: DecimalSign): string {
  const percent = 100 * share;
  if (percent === 0) return '0 %';
  if (percent < 0.1) return `less than ${sayFixed(0.1, 1, sign)} %`;
  if (share < 1 && percent > 99.5) return 'over 99 %';
  return `${sayFixed(percent, percent < 0.95 ? 1 : 0, sign)} %`;
}

/** The same with `about` before it, where it is not a bound. */
export function sayAbout(share: number, sign: DecimalSign): string {
  const said = sayPercent(share, sign);
  return /^[\d]/.test(said) ? `about ${said}` : said;
}

/** Three significant figures without an exponent down to a millionth. */
export function sayFigure(value: number, sign: DecimalSign): string {
  if (value === 0) return '0';
  const text = Number(value.toPrecision(3)).toString();
  return signed(/e/.test(text) ? value.toFixed(8).replace(/0+$/, '') : text, sign);
}

/** A list as a sentence has it: `a, b and c`. */
export function sayList(items: readonly string[]): string {
  if (items.length <= 1) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items[items.length - 1] ?? ''}`;
}

/** A name in the middle of a sentence. */
export function lower(name: string): string {
  return `${name.charAt(0).toLowerCase()}${name.slice(1)}`;
}
