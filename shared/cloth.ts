/** Cloth as the engines see it: lengths in ticks, weights in grams a square metre, optics as shares of one. */
import type { LengthRate } from './rate.ts';
import type { Ticks } from './length.ts';
import type { FaceFamily, InterliningFamily, LiningFamily, Match } from './words.ts';

/** Transmittance and reflectance of one band, both sides alike; their sum is at most 1. */
export interface Optics {
  readonly transmittance: number;
  readonly reflectance: number;
}

/** Bands in which light is passed and sent back: seen, ultraviolet, and all of the sun's heat. */
export const LIGHT_BANDS = ['visible', 'uv', 'solar'] as const;
export type LightBand = (typeof LIGHT_BANDS)[number];

export interface Repeat {
  /** Along the length of the bolt; above zero. */
  readonly vertical: Ticks;
  /** Across the width; null when not given. */
  readonly horizontal: Ticks | null;
  readonly match: Exclude<Match, 'none'>;
  /** The supplier cuts at our place in the repeat, so that no extra repeat is needed. */
  readonly cutOnRepeat: boolean;
}

/** How a supplier sells it; null where nobody said. */
export interface Supply {
  /** Nap or a pattern that runs one way: no cut may be turned. */
  readonly oneWay: boolean;
  /** Length of a whole piece. */
  readonly bolt: Ticks | null;
  readonly orderStep: Ticks | null;
  readonly leastOrder: Ticks | null;
}

export type Content = Readonly<Record<string, number>>;

/** What a needle leaves in a cloth: nothing, holes that show, or a coating that is pierced. */
export const NEEDLE_WAYS = ['closes', 'shows', 'punctures'] as const;
export type NeedleWay = (typeof NEEDLE_WAYS)[number];

export const CARE_WAYS = ['wash', 'hand-wash', 'wipe', 'dry-clean'] as const;
export type CareWay = (typeof CARE_WAYS)[number];

/** How it hangs by itself, limp to stiff. */
export const HANDS = ['limp', 'soft', 'medium', 'firm', 'stiff'] as const;
export type Hand = (typeof HANDS)[number];

/** Where a value comes from; what is assumed widens the range of what is reckoned with it. */
export const VALUE_SOURCES = ['measured', 'measured-at-home', 'supplier', 'second-hand', 'assumed'] as const;
export type ValueSource = (typeof VALUE_SOURCES)[number];
/** `uv` and `solar` are of both shares; `reflectance`, where it is not said, comes from where the transmittance does. */
export const SOURCED_VALUES = [
  'transmittance',
  'reflectance',
  'uv',
  'solar',
  'spectra',
  'weight',
  'thickness',
  'shrinkage',
  'content',
  'needle',
  'care',
  'hand',
] as const;
export type SourcedValue = (typeof SOURCED_VALUES)[number];

/** Shares of one in 16 bands, 400 to 700 nm by 20 nm. */
export interface ClothSpectra {
  readonly transmittance: readonly number[];
  readonly reflectance: readonly number[];
}

/** What a decorator may know of a cloth beyond its label; each is optional. */
export interface KnownOfCloth {
  /** One share of a pair whose other nobody gave: that one is then typical of the family. */
  readonly lone?: Readonly<Partial<Record<LightBand, Partial<Optics>>>>;
  /** Reflectance towards the street, where it is not that towards the room. */
  readonly streetReflectance?: Readonly<Partial<Record<LightBand, number>>>;
  readonly spectra?: ClothSpectra;
  /** The visible transmittance is within this, more or less: a home measurement tells it. */
  readonly transmittanceWithin?: number;
  /** Millimetres, lying loose. */
  readonly thickness?: number;
  /** Share lost in cleaning, along the length and across. */
  readonly shrinkage?: { readonly length: number; readonly width: number };
  readonly needle?: NeedleWay;
  readonly care?: CareWay;
  /** A named certificate and the test that it was given under. */
  readonly flame?: { readonly test: string; readonly certificate: string };
  readonly hand?: Hand;
  /** Where her own values come from; not said, they are hers. */
  readonly sources?: Readonly<Partial<Record<SourcedValue, ValueSource>>>;
}

interface ClothBase extends KnownOfCloth {
  readonly id: string;
  readonly name: string;
  readonly width: Ticks;
  readonly usableWidth: Ticks;
  /** Null for plain cloth. */
  readonly repeat: Repeat | null;
  /** The cloth may be used sideways. */
  readonly railroad: boolean;
  /** Fibre shares in per cent, summing to 100; null when unknown. */
  readonly content: Content | null;
  /** Grams a square metre; null when unknown (a typical value is then assumed, and said). */
  readonly weight: number | null;
  /** `#rrggbb`, the colour towards the room. */
  readonly colour: string | null;
  /** `white`, `ivory` or `#rrggbb`: of linings and interlinings. */
  readonly shade: string | null;
  readonly visible: Optics | null;
  readonly uv: Optics | null;
  readonly solar: Optics | null;
  readonly supply?: Supply;
  /** What it costs the decorator. Null: look in the price book. */
  readonly price: LengthRate | null;
}

export interface FaceCloth extends ClothBase {
  readonly role: 'face';
  readonly family: FaceFamily;
}
export interface LiningCloth extends ClothBase {
  readonly role: 'lining';
  readonly family: LiningFamily;
}
export interface InterliningCloth extends ClothBase {
  readonly role: 'interlining';
  readonly family: InterliningFamily;
}
export type Cloth = FaceCloth | LiningCloth | InterliningCloth;
/** What may stand behind the face. */
export type BackCloth = LiningCloth | InterliningCloth;

/** Families that promise darkness: they are priced and judged as blackout. */
export const BLACKOUT_FAMILIES: readonly LiningFamily[] = ['blackout-3-pass', 'blackout-soft', 'blackout-napped'];

export function isBlackout(cloth: Cloth): boolean {
  return cloth.role === 'lining' && BLACKOUT_FAMILIES.includes(cloth.family);
}
