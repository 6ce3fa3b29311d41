/**
 * Fading: damage by light, weighted by wavelength (CIE 89/3 as in ISO 9050: D = exp(3.6 - 0.012 nm), 300 to 700 nm).
 * What counts is what reaches the back of the face, with every reflection between glass, lining and face. Ultraviolet
 * is only about a third of the damage behind ordinary glass: stopping it alone does not save a colour.
 */
import type { Glazing } from '#shared/words.ts';
import { composeLayers, layerOf } from './compose-layers.ts';
import type { Layer } from './compose-layers.ts';
import { D65_FROM_NM, daylightAt } from './daylight.ts';
import { glassOf } from './glass.ts';
import { BANDS_NM } from './observer.ts';
import { layerIn } from '../cloth/resolve-cloth.ts';
import type { FilledCloth } from '../cloth/resolve-cloth.ts';
import { layerInBand, spectraOf } from './spectra.ts';

/** Relative damage of light of a wavelength in nm; 1 at 300. */
export function damageAt(nm: number): number {
  return Math.exp(3.6 - 0.012 * nm);
}

/** D65 weighted by damage from `from` to `to` nm, by trapezoids of 1 nm. */
export function damageBetween(from: number, to: number): number {
  let sum = 0;
  for (let nm = from; nm < to; nm += 1) {
    const end = Math.min(nm + 1, to);
    sum += ((end - nm) * (daylightAt(nm) * damageAt(nm) + daylightAt(end) * damageAt(end))) / 2;
  }
  return sum;
}

const HALF_BAND_NM = 10;
const LAST_NM = 700;
const UV_DAMAGE = damageBetween(D65_FROM_NM, BANDS_NM[0] ?? 0);
/** Damage of each of the 16 visible bands, the first and the last a half. */
const VISIBLE_DAMAGE: readonly number[] = BANDS_NM.map((nm) =>
  damageBetween(Math.max(nm - HALF_BAND_NM, BANDS_NM[0] ?? 0), Math.min(nm + HALF_BAND_NM, LAST_NM)),
);

export interface Fade {
  /** Share of the damage kept from the back of the face, against the same face unlined behind the same glass. */
  readonly kept: number;
  /** Damage reaching the back of the face, lined and unlined, where daylight outside is 1. */
  readonly reaching: number;
  readonly reachingUnlined: number;
  /** Of what reaches the unlined face, the share that is ultraviolet. */
  readonly uvShareUnlined: number;
}

/** `behind` room to street. */
export function reckonFade(face: FilledCloth, behind: readonly FilledCloth[], glazing: Glazing): Fade {
  const lined = damageOnFace(face, behind, glazing);
  const unlined = damageOnFace(face, [], glazing);
  const reaching = lined.uv + lined.visible;
  const reachingUnlined = unlined.uv + unlined.visible;
  return {
    kept: behind.length === 0 ? 0 : 1 - reaching / reachingUnlined,
    reaching,
    reachingUnlined,
    uvShareUnlined: unlined.uv / reachingUnlined,
  };
}

function damageOnFace(
  face: FilledCloth,
  behind: readonly FilledCloth[],
  glazing: Glazing,
): { readonly uv: number; readonly visible: number } {
  const glass = glassOf(glazing);
  const streetFirst = [face, ...behind].reverse();
  const total = UV_DAMAGE + VISIBLE_DAMAGE.reduce((sum, d) => sum + d, 0);
  const uv = arriving([layerOf(glass.uv), ...streetFirst.map((layer) => layerIn(layer, 'uv'))]);
  const spectra = streetFirst.map(spectraOf);
  const visible = VISIBLE_DAMAGE.map(
    (damage, i) => damage * arriving([layerOf(glass.visible), ...spectra.map((each) => layerInBand(each, i))]),
  );
  return { uv: (UV_DAMAGE * uv) / total, visible: visible.reduce((sum, v) => sum + v, 0) / total };
}

/**
 * Flux that reaches the last layer from behind, of one from the street, before a black room: what the others pass,
 * bounced between them and the last. The same as the flux equations give (`solve-fluxes.ts`), in closed form.
 */
function arriving(layers: readonly Layer[]): number {
  const last = layers[layers.length - 1];
  if (last === undefined) return 1;
  const before = composeLayers(layers.slice(0, -1));
  return before.Tf / (1 - before.Rb * last.Rf);
}
