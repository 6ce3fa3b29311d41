/**
 * Light through a pile of layers, with every reflection between them (Stokes 1862, from memory; checked against the
 * two-layer tests of an open window calculation engine). Layers run from the street to the room; f is the side towards the street,
 * b towards the room. Never multiply transmittances: between pale layers inter-reflection more than doubles the product.
 */
import type { Optics } from '#shared/cloth.ts';
import { StackFault } from '../stack-fault.ts';

/** Diffuse transmittance and reflectance of one layer in one band, from either side; T + R of a side is at most 1. */
export interface Layer {
  readonly Tf: number;
  readonly Rf: number;
  readonly Tb: number;
  readonly Rb: number;
}

/** No layer at all: what an empty stack composes to. */
export const OPEN: Layer = { Tf: 1, Rf: 0, Tb: 1, Rb: 0 };

/** A layer alike from both sides. */
export function layerOf(optics: Optics): Layer {
  return { Tf: optics.transmittance, Rf: optics.reflectance, Tb: optics.transmittance, Rb: optics.reflectance };
}

/** Two layers as one; `outer` is nearer the street. */
export function composeTwo(outer: Layer, inner: Layer): Layer {
  const D = 1 - outer.Rb * inner.Rf;
  return {
    Tf: (outer.Tf * inner.Tf) / D,
    Tb: (inner.Tb * outer.Tb) / D,
    Rf: outer.Rf + (outer.Tf * outer.Tb * inner.Rf) / D,
    Rb: inner.Rb + (inner.Tb * inner.Tf * outer.Rb) / D,
  };
}

/** All layers as one, street to room. Throws `StackFault` (`impossible-optics`) for a layer that makes light. */
export function composeLayers(layers: readonly Layer[]): Layer {
  layers.forEach((layer, i) => checkLayer(layer, `layers[${i}]`));
  return layers.reduce(composeTwo, OPEN);
}

/** Throws `StackFault` when a share lies outside 0..1, or a side sends back more than it gets. */
export function checkLayer(layer: Layer, path: string): void {
  for (const key of ['Tf', 'Rf', 'Tb', 'Rb'] as const) {
    if (!(layer[key] >= 0 && layer[key] <= 1)) {
      throw new StackFault('impossible-optics', {
        path: `${path}.${key}`,
        wrong: `${layer[key]} is not a share of the light`,
        right: 'give a number from 0 to 1',
      });
    }
  }
  // A mirror may face itself across an empty gap only in theory: D = 0 has no answer.
  const most = Math.max(layer.Tf + layer.Rf, layer.Tb + layer.Rb);
  if (most > 1 + 1e-9) {
    throw new StackFault('impossible-optics', {
      path,
      wrong: `transmittance and reflectance make ${most.toPrecision(4)} together`,
      right: 'their sum is at most 1: what is neither passed nor sent back is absorbed',
    });
  }
}
