/** Exact decimals for rates and shares, as digits over a power of ten. No float multiplies money. */
export interface Decimal {
  readonly digits: bigint;
  readonly scale: number;
}

/** How an amount that falls between two minor units is settled; named wherever it is used. */
export type Rounding = 'half-up' | 'half-even' | 'up' | 'down';

/** Reads `38.00`, `38,5`, `-0.0625`. Null when it is not a plain decimal. Accepts numbers by their shortest form. */
export function parseDecimal(given: string | number): Decimal | null {
  const text = typeof given === 'number' ? plainNumber(given) : given.trim();
  const found = /^([-−]?)(\d+)(?:[.,](\d+))?$/.exec(text);
  if (!found) return null;
  const parts = found[3] ?? '';
  const digits = BigInt((found[2] ?? '0') + parts);
  return { digits: found[1] === '' ? digits : -digits, scale: parts.length };
}

function plainNumber(value: number): string {
  const text = String(value);
  return /e/i.test(text) ? value.toFixed(12).replace(/0+$/, '').replace(/\.$/, '') : text;
}

export function addDecimals(a: Decimal, b: Decimal): Decimal {
  const scale = Math.max(a.scale, b.scale);
  return { digits: a.digits * 10n ** BigInt(scale - a.scale) + b.digits * 10n ** BigInt(scale - b.scale), scale };
}

export function multiplyDecimals(a: Decimal, b: Decimal): Decimal {
  return { digits: a.digits * b.digits, scale: a.scale + b.scale };
}

export const ONE: Decimal = { digits: 1n, scale: 0 };

export function decimalOf(whole: number): Decimal {
  if (!Number.isSafeInteger(whole)) throw new Error(`not a whole number: ${whole}`);
  return { digits: BigInt(whole), scale: 0 };
}

export function sayDecimalPlain(value: Decimal): string {
  const sign = value.digits < 0n ? '-' : '';
  const digits = (value.digits < 0n ? -value.digits : value.digits).toString().padStart(value.scale + 1, '0');
  const whole = digits.slice(0, digits.length - value.scale);
  const parts = digits.slice(digits.length - value.scale);
  return parts === '' ? sign + whole : `${sign}${whole}.${parts}`;
}

/** `num / den` as a whole number by the named rule. `den` must be above zero. */
export function divideRounded(num: bigint, den: bigint, rounding: Rounding): bigint {
  if (den <= 0n) throw new Error('division by zero or a negative');
  const sign = num < 0n ? -1n : 1n;
  const size = num < 0n ? -num : num;
  const whole = size / den;
  const rest = size % den;
  const half = 2n * rest;
  switch (rounding) {
    case 'down':
      return sign * whole;
    case 'up':
      return sign * (rest === 0n ? whole : whole + 1n);
    case 'half-up':
      return sign * (half >= den ? whole + 1n : whole);
    case 'half-even':
      return sign * (half > den || (half === den && whole % 2n === 1n) ? whole + 1n : whole);
  }
}
