/**
 * Solves A x = b by elimination with row pivoting. Small dense systems only (a stack has 2n unknowns, a spectrum 19).
 * Returns null when the matrix is singular to machine precision. Inputs are not changed.
 */
export function solveLinear(a: readonly (readonly number[])[], b: readonly number[]): number[] | null {
  const n = b.length;
  const rows = a.map((row, i) => [...row, b[i] ?? 0]);
  for (let col = 0; col < n; col += 1) {
    let pivot = col;
    for (let row = col + 1; row < n; row += 1) {
      if (Math.abs(entry(rows, row, col)) > Math.abs(entry(rows, pivot, col))) pivot = row;
    }
    const top = rows[pivot];
    const here = rows[col];
    if (top === undefined || here === undefined || Math.abs(top[col] ?? 0) < 1e-300) return null;
    rows[col] = top;
    rows[pivot] = here;
    for (let row = col + 1; row < n; row += 1) {
      const factor = entry(rows, row, col) / (top[col] ?? 1);
      if (factor === 0) continue;
      const target = rows[row];
      if (target === undefined) continue;
      for (let k = col; k <= n; k += 1) target[k] = (target[k] ?? 0) - factor * (top[k] ?? 0);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let row = n - 1; row >= 0; row -= 1) {
    let sum = entry(rows, row, n);
    for (let k = row + 1; k < n; k += 1) sum -= entry(rows, row, k) * (x[k] ?? 0);
    x[row] = sum / entry(rows, row, row);
  }
  return x.every(Number.isFinite) ? x : null;
}

function entry(rows: readonly (readonly number[])[], row: number, col: number): number {
  return rows[row]?.[col] ?? 0;
}
