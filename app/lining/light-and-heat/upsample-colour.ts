/**
 * A reflectance spectrum for a colour that somebody picked: the smoothest one that integrates back to exactly that
 * colour under D65. "Smoothest" is the least sum of squared steps of z, where the reflectance is (tanh z + 1) / 2, so
 * that it always stays between 0 and 1 (the method known as least hyperbolic tangent slope squared, S. Burns, from
 * memory). It is an estimate: many spectra share one colour, and dyes are less smooth than this.
 */
import { BAND_WHITE, moveWhite, readHex, SRGB_WHITE, xyzOfHex } from './colour.ts';
import type { Spectrum } from './colour.ts';
import { BANDS_NM, WEIGHTS } from './observer.ts';
import { solveLinear } from './solve-linear.ts';

const N = BANDS_NM.length;
const W: readonly (readonly number[])[] = BANDS_NM.map((_, i) => [
  (WEIGHTS.X[i] ?? 0) / 100,
  (WEIGHTS.Y[i] ?? 0) / 100,
  (WEIGHTS.Z[i] ?? 0) / 100,
]);
const MOST_STEPS = 100;
const CLOSE_ENOUGH = 1e-10;

/** Colours solved lately: a worksheet asks for the same few at each key. The answer does not depend on it. */
const SOLVED = new Map<string, Spectrum>();
const MOST_SOLVED = 200;

/** `#rrggbb` as 16 shares of one. Black and white are flat. Throws `StackFault` when it is not a colour. */
export function upsampleColour(hex: string): Spectrum {
  const known = SOLVED.get(hex);
  if (known !== undefined) return known;
  const spectrum = solveColour(hex);
  if (SOLVED.size >= MOST_SOLVED) SOLVED.clear();
  SOLVED.set(hex, spectrum);
  return spectrum;
}

function solveColour(hex: string): Spectrum {
  const channels = readHex(hex);
  const [r, g, b] = channels;
  // Greys are flat, and the ends of the scale lie at infinite z.
  if (r === g && g === b) return new Array<number>(N).fill(xyzOfHex(hex).Y / 100);
  const xyz = moveWhite(xyzOfHex(hex), SRGB_WHITE, BAND_WHITE);
  const target = [xyz.X / 100, xyz.Y / 100, xyz.Z / 100];
  const most = Math.max(...target);
  // Light adds up, so a very dark colour is solved brighter, a nearly white one darker, and the answer scaled back.
  if (most < 0.2) return smoothest(target.map((t) => (t * 0.2) / most)).map((s) => (s * most) / 0.2);
  if (xyz.Y > 95) {
    const scaled = smoothest(target.map((t) => t * 0.9)).map((s) => s / 0.9);
    if (Math.max(...scaled) <= 1) return scaled;
  }
  return smoothest(target);
}

function smoothest(target: readonly number[]): Spectrum {
  const start = Math.min(0.99, Math.max(0.01, target[1] ?? 0.5));
  let point = [...new Array<number>(N).fill(Math.atanh(2 * start - 1)), 0, 0, 0];
  let fault = residual(point, target);
  for (let step = 0; step < MOST_STEPS && size(fault) > CLOSE_ENOUGH; step += 1) {
    const move = solveLinear(
      jacobian(point),
      fault.map((f) => -f),
    );
    if (move === null) break;
    const next = shorten(point, move, target, size(fault));
    if (next === null) break;
    point = next;
    fault = residual(point, target);
  }
  return point.slice(0, N).map((z) => (Math.tanh(z) + 1) / 2);
}

/** Halves a step until it brings the answer nearer. */
function shorten(point: number[], move: readonly number[], target: readonly number[], before: number): number[] | null {
  for (let share = 1; share > 1e-6; share /= 2) {
    const next = point.map((p, i) => p + share * (move[i] ?? 0));
    if (size(residual(next, target)) < before) return next;
  }
  return null;
}

function size(fault: readonly number[]): number {
  return Math.sqrt(fault.reduce((sum, f) => sum + f * f, 0));
}

/** Gradient of the steps with the pull of the three colour conditions, then what each condition is off by. */
function residual(point: readonly number[], target: readonly number[]): number[] {
  const out = new Array<number>(N + 3).fill(0);
  for (let i = 0; i < N; i += 1) {
    const z = point[i] ?? 0;
    const f = (Math.tanh(z) + 1) / 2;
    const slope = 0.5 * (1 - Math.tanh(z) ** 2);
    out[i] = bend(point, i) + slope * pull(point, i);
    for (let c = 0; c < 3; c += 1) out[N + c] = (out[N + c] ?? 0) + (W[i]?.[c] ?? 0) * f;
  }
  for (let c = 0; c < 3; c += 1) out[N + c] = (out[N + c] ?? 0) - (target[c] ?? 0);
  return out;
}

function bend(point: readonly number[], i: number): number {
  const z = point[i] ?? 0;
  const before = i > 0 ? z - (point[i - 1] ?? 0) : 0;
  const after = i < N - 1 ? z - (point[i + 1] ?? 0) : 0;
  return before + after;
}

function pull(point: readonly number[], i: number): number {
  return [0, 1, 2].reduce((sum, c) => sum + (W[i]?.[c] ?? 0) * (point[N + c] ?? 0), 0);
}

function jacobian(point: readonly number[]): number[][] {
  const rows = Array.from({ length: N + 3 }, () => new Array<number>(N + 3).fill(0));
  for (let i = 0; i < N; i += 1) {
    const row = rows[i];
    if (row === undefined) continue;
    const t = Math.tanh(point[i] ?? 0);
    const slope = 0.5 * (1 - t * t);
    row[i] = (i > 0 ? 1 : 0) + (i < N - 1 ? 1 : 0) - t * (1 - t * t) * pull(point, i);
    if (i > 0) row[i - 1] = -1;
    if (i < N - 1) row[i + 1] = -1;
    for (let c = 0; c < 3; c += 1) {
      const w = slope * (W[i]?.[c] ?? 0);
      row[N + c] = w;
      const condition = rows[N + c];
      if (condition !== undefined) condition[i] = w;
    }
  }
  return rows;
}
