/**
 * Spectra of a layer in the 16 bands: its shade gives the shape, its visible transmittance and reflectance the height.
 * Cloth passes the light that its yarns scatter, so transmittance is taken to follow the shape of the reflectance (as
 * the white and ivory of the reference example do within 2 %); where the two would exceed 1, transmittance yields.
 */
import type { Spectrum } from './colour.ts';
import { visibleShare } from './colour.ts';
import type { Layer } from './compose-layers.ts';
import type { FilledCloth } from '../cloth/resolve-cloth.ts';
import { BANDS_NM } from './observer.ts';
import { upsampleColour } from './upsample-colour.ts';

/** Reflectance of a white and an ivory lining (synthetic; reference check shift-spectral). Ivory falls to the blue. */
// prettier-ignore
export const WHITE_SHAPE: Spectrum = [
  0.7, 0.78, 0.8, 0.8, 0.8, 0.8, 0.8, 0.8, 0.8, 0.8, 0.8, 0.8, 0.8, 0.8, 0.8, 0.8,
];
// prettier-ignore
export const IVORY_SHAPE: Spectrum = [
  0.5, 0.58, 0.65, 0.69, 0.72, 0.74, 0.76, 0.77, 0.78, 0.79, 0.79, 0.8, 0.8, 0.8, 0.8, 0.8,
];

export interface LayerSpectra {
  readonly transmittance: Spectrum;
  /** Of the side towards the room. */
  readonly reflectance: Spectrum;
  /** Of the side towards the street, where it is another. */
  readonly street?: Spectrum;
}

/** One band of a layer, street side and room side. */
export function layerInBand(spectra: LayerSpectra, band: number): Layer {
  const passed = spectra.transmittance[band] ?? 0;
  const back = spectra.reflectance[band] ?? 0;
  return { Tf: passed, Tb: passed, Rb: back, Rf: spectra.street?.[band] ?? back };
}

/** The reflectance shape of a shade: `white`, `ivory`, `neutral` (flat) or `#rrggbb`. */
export function shapeOf(shade: string): Spectrum {
  if (shade === 'white') return WHITE_SHAPE;
  if (shade === 'ivory') return IVORY_SHAPE;
  if (shade === 'neutral') return BANDS_NM.map(() => 1);
  return upsampleColour(shade);
}

/**
 * Spectra of one layer: those that were measured, brought to its visible shares; else by its shade. A black shade, which
 * has no shape, is taken as flat.
 */
export function spectraOf(
  layer: Pick<FilledCloth, 'shade' | 'visible'> & Partial<Pick<FilledCloth, 'spectra' | 'street'>>,
): LayerSpectra {
  const measured = layer.spectra ?? null;
  const shape = measured === null ? shapeOf(layer.shade) : measured.reflectance;
  const open = shape.map(() => 1);
  const reflectance = fitShare(shape, layer.visible.reflectance, open);
  const left = reflectance.map((r) => Math.max(0, 1 - r));
  const transmittance = fitShare(measured?.transmittance ?? shape, layer.visible.transmittance, left);
  const street = layer.street?.visible ?? layer.visible.reflectance;
  if (street === layer.visible.reflectance) return { transmittance, reflectance };
  const rest = transmittance.map((t) => Math.max(0, 1 - t));
  return { transmittance, reflectance, street: fitShare(shape, street, rest) };
}

/**
 * A spectrum of this shape with this visible share, nowhere above its ceiling. Plain scaling where it fits; where a
 * band would overflow, the shape is softened as a dye of less strength would be (a power of it under the ceiling), so
 * that a bright reading given to a deep colour pales it instead of cutting its top off.
 */
export function fitShare(shape: Spectrum, share: number, ceiling: Spectrum): Spectrum {
  const have = visibleShare(shape);
  if (share <= 0) return shape.map(() => 0);
  const base = have > 1e-9 ? shape : shape.map(() => 1);
  const k = share / visibleShare(base);
  const scaled = base.map((s) => k * s);
  if (scaled.every((s, i) => s <= (ceiling[i] ?? 1))) return scaled;
  const top = Math.max(...base);
  const softened = (power: number): Spectrum => base.map((s, i) => (ceiling[i] ?? 1) * (s / top) ** power);
  let weak = 0;
  let strong = 64;
  if (visibleShare(softened(weak)) <= share) return softened(weak);
  for (let turn = 0; turn < 60; turn += 1) {
    const middle = (weak + strong) / 2;
    if (visibleShare(softened(middle)) > share) weak = middle;
    else strong = middle;
  }
  // Where the ceiling takes the top of the shape, no strength leaves little enough: the rest is scaled.
  const found = softened(strong);
  const got = visibleShare(found);
  return got > share ? found.map((s) => (s * share) / got) : found;
}
