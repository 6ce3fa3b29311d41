/**
 * The generic cloth that every portfolio knows without listing: 54 in wide, values typical and assumed, price open.
 * A job's own cloth of the same id wins over one of these. Transmittance and reflectance of the standard lining, the
 * medium interlining and the three-pass blackout are the worked example of the reference checks (stack-drape-2 to -5).
 */
import type { BackCloth, Content, Optics } from '#shared/cloth.ts';
import { ticks, TICKS_PER_INCH } from '#shared/length.ts';
import { GENERIC_CLOTH_IDS } from '#shared/words.ts';
import type { GenericClothId } from '#shared/words.ts';
import { TYPICAL } from './provenance.ts';
import type { Provenance } from './provenance.ts';

/** Most lining is about 54 in wide (common practice). */
const WIDTH = ticks(54 * TICKS_PER_INCH);
const COTTON: Content = { cotton: 100 };
const COATED: Content = { polyester: 70, cotton: 30 };
const POLYESTER: Content = { polyester: 100 };
/** Interlining is left undyed: a little warmer than white (common practice; the colour is assumed). */
export const OFF_WHITE = '#f8f6f0';

function optics(transmittance: number, reflectance: number): Optics {
  return { transmittance, reflectance };
}

/** What no page of the starter book says. */
export const BLANK = {
  width: WIDTH,
  usableWidth: WIDTH,
  repeat: null,
  railroad: false,
  colour: null,
  price: null,
} as const;

export const STARTER_CLOTH: Readonly<Record<GenericClothId, BackCloth>> = {
  'std-white': {
    ...BLANK,
    id: 'std-white',
    role: 'lining',
    family: 'standard',
    name: 'Standard lining, white',
    content: COTTON,
    weight: 140,
    shade: 'white',
    visible: optics(0.35, 0.58),
    uv: optics(0.08, 0.25),
    solar: optics(0.36, 0.55),
    thickness: 0.3,
  },
  'std-ivory': {
    ...BLANK,
    id: 'std-ivory',
    role: 'lining',
    family: 'standard',
    name: 'Standard lining, ivory',
    content: COTTON,
    weight: 140,
    shade: 'ivory',
    visible: optics(0.34, 0.56),
    uv: optics(0.06, 0.2),
    solar: optics(0.36, 0.54),
    thickness: 0.3,
  },
  'combo-white': {
    ...BLANK,
    id: 'combo-white',
    role: 'lining',
    family: 'combination',
    name: 'Combination lining, white',
    content: COTTON,
    weight: 230,
    shade: 'white',
    visible: optics(0.22, 0.65),
    uv: optics(0.04, 0.25),
    solar: optics(0.24, 0.61),
    thickness: 0.9,
  },
  'dim-out': {
    ...BLANK,
    id: 'dim-out',
    role: 'lining',
    family: 'dim-out',
    name: 'Dim-out lining, white',
    content: POLYESTER,
    weight: 210,
    shade: 'white',
    visible: optics(0.1, 0.62),
    uv: optics(0.01, 0.25),
    solar: optics(0.12, 0.57),
    thickness: 0.5,
    needle: 'closes',
  },
  'blackout-3-pass': {
    ...BLANK,
    id: 'blackout-3-pass',
    role: 'lining',
    family: 'blackout-3-pass',
    name: 'Three-pass blackout, white',
    content: COATED,
    weight: 260,
    shade: 'white',
    visible: optics(0.0001, 0.75),
    uv: optics(0.00001, 0.3),
    solar: optics(0.0005, 0.7),
    thickness: 0.5,
    needle: 'punctures',
  },
  'soft-blackout': {
    ...BLANK,
    id: 'soft-blackout',
    role: 'lining',
    family: 'blackout-soft',
    name: 'Soft blackout, white',
    content: POLYESTER,
    weight: 230,
    shade: 'white',
    visible: optics(0.05, 0.68),
    uv: optics(0.005, 0.28),
    solar: optics(0.06, 0.63),
    thickness: 0.6,
    needle: 'closes',
  },
  'blackout-napped': {
    ...BLANK,
    id: 'blackout-napped',
    role: 'lining',
    family: 'blackout-napped',
    name: 'Blackout with a napped back, white',
    content: COATED,
    weight: 340,
    shade: 'white',
    visible: optics(0.0001, 0.72),
    uv: optics(0.00001, 0.3),
    solar: optics(0.0005, 0.67),
    thickness: 1.2,
    needle: 'punctures',
  },
  'black-sateen': {
    ...BLANK,
    id: 'black-sateen',
    role: 'lining',
    family: 'black-sateen',
    name: 'Black sateen',
    content: COTTON,
    weight: 150,
    shade: '#1b1b1d',
    visible: optics(0.01, 0.05),
    uv: optics(0.005, 0.05),
    solar: optics(0.08, 0.2),
    thickness: 0.3,
  },
  'inter-light': {
    ...BLANK,
    id: 'inter-light',
    role: 'interlining',
    family: 'light',
    name: 'Light interlining',
    content: COTTON,
    weight: 160,
    shade: OFF_WHITE,
    visible: optics(0.36, 0.54),
    uv: optics(0.12, 0.3),
    solar: optics(0.38, 0.52),
    thickness: 1,
    care: 'dry-clean',
  },
  'inter-med': {
    ...BLANK,
    id: 'inter-med',
    role: 'interlining',
    family: 'medium',
    name: 'Medium interlining',
    content: COTTON,
    weight: 210,
    shade: OFF_WHITE,
    visible: optics(0.25, 0.62),
    uv: optics(0.06, 0.3),
    solar: optics(0.27, 0.6),
    thickness: 2,
    care: 'dry-clean',
  },
  'inter-heavy': {
    ...BLANK,
    id: 'inter-heavy',
    role: 'interlining',
    family: 'heavy',
    name: 'Heavy interlining',
    content: COTTON,
    weight: 340,
    shade: OFF_WHITE,
    visible: optics(0.14, 0.7),
    uv: optics(0.03, 0.3),
    solar: optics(0.16, 0.68),
    thickness: 4,
    care: 'dry-clean',
  },
};

/** The values of a cloth that carry a provenance of their own. */
export const JUDGED_VALUES = [
  'content',
  'weight',
  'shade',
  'visible',
  'uv',
  'solar',
  'thickness',
  'needle',
  'care',
] as const;
export type JudgedValue = (typeof JUDGED_VALUES)[number];

const NEEDLE =
  'common practice: a coated blackout keeps the hole, a soft or woven one closes round the needle; sew a sample';
const EXAMPLE = 'typical, assumed: the worked example of the reference checks';

/** Where each shipped value comes from. None of them was measured, and none is a supplier's. */
export function provenanceOf(id: GenericClothId, value: JudgedValue): Provenance {
  if (value === 'visible' && (id === 'std-white' || id === 'inter-med' || id === 'blackout-3-pass')) return EXAMPLE;
  if (value === 'visible' && id === 'soft-blackout') return 'common practice: stops about 95 % of the light';
  if (value === 'needle' && STARTER_CLOTH[id].needle !== undefined) return NEEDLE;
  if (value === 'care' && STARTER_CLOTH[id].care !== undefined) return 'common practice: interlining is dry-cleaned';
  if (value === 'shade' && id.startsWith('inter-')) return 'common practice: off-white; the colour is typical, assumed';
  return TYPICAL;
}

export function isGenericId(id: string): id is GenericClothId {
  return (GENERIC_CLOTH_IDS as readonly string[]).includes(id);
}
