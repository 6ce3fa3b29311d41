/** Collections of cuts as one number: how many of each kind, in a mixed radix. A part of a collection has a smaller code. */
export interface CountCode {
  /** One more than the code of all cuts. */
  readonly size: number;
  readonly stride: (kind: number) => number;
  readonly digit: (code: number, kind: number) => number;
  /** Whether `more` can be added to `code` without exceeding the counts. */
  readonly fits: (code: number, more: number) => boolean;
  /** Every part of a collection, the empty one and itself included. */
  readonly parts: (code: number) => readonly number[];
}

/** Null when there are more than `limit` collections. */
export function makeCountCode(counts: readonly number[], limit: number): CountCode | null {
  const strides: number[] = [];
  let size = 1;
  for (const count of counts) {
    strides.push(size);
    size *= count + 1;
    if (size > limit) return null;
  }
  const digits = Array.from({ length: size }, (_, code) => {
    let rest = code;
    return counts.map((count) => {
      const digit = rest % (count + 1);
      rest = (rest - digit) / (count + 1);
      return digit;
    });
  });
  const none: readonly number[] = [];
  return {
    size,
    stride: (kind) => strides[kind] ?? 0,
    digit: (code, kind) => digits[code]?.[kind] ?? 0,
    fits: (code, more) => {
      const [a, b] = [digits[code] ?? none, digits[more] ?? none];
      return counts.every((count, kind) => (a[kind] ?? 0) + (b[kind] ?? 0) <= count);
    },
    parts: (code) => {
      let found = [0];
      (digits[code] ?? none).forEach((digit, kind) => {
        const stride = strides[kind] ?? 0;
        const wider: number[] = [];
        for (let many = 0; many <= digit; many += 1) for (const part of found) wider.push(part + many * stride);
        found = wider;
      });
      return found;
    },
  };
}
