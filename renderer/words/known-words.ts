/** Words of what a cloth does: light, hand, care, and where each value comes from. */
import type { PageValue } from '#app/lining/cloth/starter-book.ts';
import type { CareWay, Hand, LightBand, NeedleWay, SourcedValue, ValueSource } from '#shared/cloth.ts';

export const BAND_WORDS: Readonly<Record<LightBand, string>> = {
  visible: 'Daylight',
  uv: 'Ultraviolet',
  solar: "The sun's heat",
};
export const SIDE_WORDS = {
  transmittance: 'passes',
  reflectance: 'sends back, room side',
  street: 'sends back, street side',
} as const;
export type ShareSide = keyof typeof SIDE_WORDS;

/** Lines that are not fields of the record, by the name under which their text is kept. */
export const KNOWN_LINES: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    (['visible', 'uv', 'solar'] as const).flatMap((band) =>
      (['transmittance', 'reflectance', 'street'] as const).map((side) => [
        `${band}.${side}`,
        `${BAND_WORDS[band].toLowerCase()}, ${SIDE_WORDS[side]}`,
      ]),
    ),
  ),
  visible: 'daylight',
  uv: 'ultraviolet',
  solar: "the sun's heat",
  transmittanceWithin: 'give or take',
  'spectra.transmittance': 'spectrum, passes',
  'spectra.reflectance': 'spectrum, sends back',
  thickness: 'thickness',
  'shrinkage.length': 'shrinks along',
  'shrinkage.width': 'shrinks across',
};

export const SOURCE_WORDS: Readonly<Record<ValueSource, string>> = {
  measured: 'measured',
  'measured-at-home': 'measured, at home',
  supplier: "supplier's",
  'second-hand': 'second-hand',
  assumed: 'typical, assumed',
};
/** Said by a value that nobody gave. */
export const TYPICAL_WORDS = 'typical, assumed';
export const SOURCE_CHOICES: readonly { readonly value: ValueSource | ''; readonly name: string }[] = [
  { value: '', name: 'not said' },
  ...(Object.keys(SOURCE_WORDS) as ValueSource[]).map((value) => ({ value, name: SOURCE_WORDS[value] })),
];
export const SOURCED_WORDS: Readonly<Record<SourcedValue, string>> = {
  transmittance: 'daylight passed',
  reflectance: 'daylight sent back',
  uv: 'ultraviolet',
  solar: "the sun's heat",
  spectra: 'spectra',
  weight: 'weight',
  thickness: 'thickness',
  shrinkage: 'shrinkage',
  content: 'content',
  needle: 'needle',
  care: 'care',
  hand: 'hand',
};

export const NEEDLE_WORDS: Readonly<Record<NeedleWay, string>> = {
  closes: 'closes after it',
  shows: 'holes show',
  punctures: 'pierces a coat',
};
export const CARE_WORDS: Readonly<Record<CareWay, string>> = {
  wash: 'machine wash',
  'hand-wash': 'hand wash',
  wipe: 'wipe clean',
  'dry-clean': 'dry clean',
};
export const HAND_WORDS: Readonly<Record<Hand, string>> = {
  limp: 'limp',
  soft: 'soft',
  medium: 'medium',
  firm: 'firm',
  stiff: 'stiff',
};

export const PAGE_WORDS: Readonly<Record<PageValue, string>> = {
  visible: 'daylight',
  uv: 'ultraviolet',
  solar: "the sun's heat",
  weight: 'weight',
  thickness: 'thickness',
  content: 'content',
  shade: 'shade',
  needle: 'a needle',
  care: 'care',
  hand: 'hand',
};

export const FLAME_CAUTION =
  'A certificate is of this cloth alone. Sewn together, layers burn otherwise: the whole made-up treatment has to comply, and the local authority decides. A clothing test (16 CFR 1610) says nothing of drapery.';
