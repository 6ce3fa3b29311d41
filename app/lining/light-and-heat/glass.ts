/**
 * Glass by the words of a measure sheet. Visible values are for diffuse daylight; UV is 300 to 400 nm weighted by
 * CIE 89/3 damage under D65; g and U are of the centre of the glass.
 */
import type { Optics } from '#shared/cloth.ts';
import { GLAZINGS } from '#shared/words.ts';
import type { Glazing } from '#shared/words.ts';
import { StackFault } from '../stack-fault.ts';

export interface Glass {
  readonly visible: Optics;
  readonly uv: Optics;
  /** Total solar energy transmittance, 0..1. */
  readonly g: number;
  /** W/m2K. */
  readonly U: number;
  /** Solar direct transmittance, and solar reflectance of the side towards the room. */
  readonly solarTransmittance: number;
  readonly solarReflectanceRoom: number;
  /** Source of each value. */
  readonly rests: {
    readonly visible: string;
    readonly uv: string;
    readonly gAndU: string;
  };
}

const EN_14501 = 'of EN 14501 (from memory)';

export const GLASS: Readonly<Record<Glazing, Glass>> = {
  single: {
    visible: { transmittance: 0.822, reflectance: 0.1474 },
    uv: { transmittance: 0.671, reflectance: 0.074 },
    g: 0.85,
    U: 5.8,
    solarTransmittance: 0.83,
    solarReflectanceRoom: 0.08,
    rests: {
      visible: 'generic 3 mm clear glass in diffuse light, open glass data of a national laboratory',
      uv: 'reckoned from the spectrum of generic 3 mm clear glass',
      gAndU: `reference glazing A ${EN_14501}`,
    },
  },
  double: {
    visible: { transmittance: 0.6907, reflectance: 0.2492 },
    uv: { transmittance: 0.525, reflectance: 0.116 },
    g: 0.76,
    U: 2.9,
    solarTransmittance: 0.69,
    solarReflectanceRoom: 0.14,
    rests: {
      visible: 'two generic 3 mm clear panes composed',
      uv: 'two generic 3 mm clear panes composed',
      gAndU: `reference glazing B ${EN_14501}`,
    },
  },
  'double-low-e': {
    visible: { transmittance: 0.63, reflectance: 0.24 },
    uv: { transmittance: 0.29, reflectance: 0.15 },
    g: 0.59,
    U: 1.2,
    solarTransmittance: 0.49,
    solarReflectanceRoom: 0.27,
    rests: { visible: 'typical, assumed', uv: 'typical, assumed', gAndU: `reference glazing C ${EN_14501}` },
  },
  triple: {
    visible: { transmittance: 0.55, reflectance: 0.3 },
    uv: { transmittance: 0.2, reflectance: 0.18 },
    g: 0.5,
    U: 0.7,
    solarTransmittance: 0.39,
    solarReflectanceRoom: 0.28,
    rests: { visible: 'typical, assumed', uv: 'typical, assumed', gAndU: 'typical of two low-e coats, assumed' },
  },
};

/** Throws `StackFault` (`unknown-glass`) for a word that is none of the list. */
export function glassOf(glazing: Glazing): Glass {
  if (!GLAZINGS.includes(glazing)) {
    throw new StackFault('unknown-glass', {
      path: 'glazing',
      wrong: `"${glazing}" is no glass that is known`,
      right: `write one of ${GLAZINGS.join(', ')}`,
    });
  }
  return GLASS[glazing];
}
