/** Where the light goes: flux in every gap of a stack and what each layer absorbs, by the 2n flux equations. */
import { checkLayer } from './compose-layers.ts';
import type { Layer } from './compose-layers.ts';
import { solveLinear } from './solve-linear.ts';

export interface Fluxes {
  /** Towards the room, in gap 0 (the street, 1) to gap n (the room: what is transmitted). */
  readonly inward: readonly number[];
  /** Towards the street, in gap 0 (what is reflected) to gap n (0: a black room). */
  readonly outward: readonly number[];
  /** Absorbed in each layer, street to room. */
  readonly absorbed: readonly number[];
  readonly transmitted: number;
  readonly reflected: number;
}

/**
 * Unit flux from the street on layers that run street to room, before a black room.
 * With I inward and O outward: I_i = Tf I_(i-1) + Rb O_i and O_(i-1) = Rf I_(i-1) + Tb O_i for each layer i.
 * Absorbed + transmitted + reflected = 1.
 */
export function solveFluxes(layers: readonly Layer[]): Fluxes {
  layers.forEach((layer, i) => checkLayer(layer, `layers[${i}]`));
  const n = layers.length;
  // Unknowns: I_1..I_n at 0..n-1, O_0..O_(n-1) at n..2n-1.
  const a: number[][] = [];
  const b: number[] = [];
  layers.forEach((layer, i) => {
    const forward = new Array<number>(2 * n).fill(0);
    const backward = new Array<number>(2 * n).fill(0);
    forward[i] = 1;
    backward[n + i] = 1;
    if (i > 0) {
      forward[i - 1] = -layer.Tf;
      backward[i - 1] = -layer.Rf;
    }
    if (i < n - 1) {
      forward[n + i + 1] = -layer.Rb;
      backward[n + i + 1] = -layer.Tb;
    }
    a.push(forward);
    b.push(i === 0 ? layer.Tf : 0);
    a.push(backward);
    b.push(i === 0 ? layer.Rf : 0);
  });
  const x = solveLinear(a, b);
  if (x === null) throw new Error('two perfect mirrors face each other: the fluxes between them have no answer');
  const inward = [1, ...x.slice(0, n)];
  const outward = [...x.slice(n), 0];
  const absorbed = layers.map((layer, i) => {
    const fromStreet = inward[i] ?? 0;
    const fromRoom = outward[i + 1] ?? 0;
    return (1 - layer.Tf - layer.Rf) * fromStreet + (1 - layer.Tb - layer.Rb) * fromRoom;
  });
  return { inward, outward, absorbed, transmitted: inward[n] ?? 1, reflected: n === 0 ? 0 : (outward[0] ?? 0) };
}
