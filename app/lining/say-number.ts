/** Figures of the lining engine in words and working; decimals with a point, as working is written everywhere. */

/** A share as per cent: `9 %`, `0.4 %`, `less than 0.1 %`, `over 99 %`. */
export function sayPercent(share: number): string {
  const percent = 100 * share;
  if (percent === 0) return '0 %';
  if (percent < 0.1) return 'less than 0.1 %';
  if (share < 1 && percent > 99.5) return 'over 99 %';
  return `${percent < 0.95 ? percent.toFixed(1) : percent.toFixed(0)} %`;
}

/** The same with `about` before it, where it is not a bound. */
export function sayAbout(share: number): string {
  const said = sayPercent(share);
  return /^[\d]/.test(said) ? `about ${said}` : said;
}

/** Three significant figures without an exponent down to a millionth. */
export function sayFigure(value: number): string {
  if (value === 0) return '0';
  const text = Number(value.toPrecision(3)).toString();
  return /e/.test(text) ? value.toFixed(8).replace(/0+$/, '') : text;
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
