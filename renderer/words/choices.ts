/** What the closed lists of the trade are called on screen. */
import { ROOM_NAMES } from '#app/lining/say/say-why.ts';
import type { Currency } from '#shared/money.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type {
  Arrangement,
  Budget,
  Climate,
  ClothRole,
  FaceFamily,
  Facing,
  Glazing,
  Heading,
  InterliningFamily,
  LineKind,
  LiningFamily,
  Match,
  MountPlace,
  Privacy,
  RoomUse,
} from '#shared/words.ts';

export const USE_WORDS: Readonly<Record<RoomUse, string>> = { ...ROOM_NAMES, public: 'public or commercial' };

/** A name to start from when a room of that use is added. */
export const USE_NAMES: Readonly<Record<RoomUse, string>> = {
  living: 'Living room',
  dining: 'Dining room',
  bedroom: 'Bedroom',
  nursery: 'Nursery',
  child: "Child's room",
  bath: 'Bathroom',
  kitchen: 'Kitchen',
  study: 'Study',
  media: 'Media room',
  hall: 'Hall',
  sunroom: 'Sunroom',
  public: 'Public room',
};

export const FACING_WORDS: Readonly<Record<Facing, string>> = {
  N: 'north',
  NE: 'north-east',
  E: 'east',
  SE: 'south-east',
  S: 'south',
  SW: 'south-west',
  W: 'west',
  NW: 'north-west',
};

/** The four points stand before the corners, so that typing "south" into the list finds south and not south-east. */
const FACINGS_TYPED: readonly Facing[] = ['N', 'E', 'S', 'W', 'NE', 'SE', 'SW', 'NW'];
export const FACING_CHOICES: readonly { readonly value: Facing | ''; readonly name: string }[] = [
  { value: '', name: 'not known' },
  ...FACINGS_TYPED.map((value) => ({ value, name: FACING_WORDS[value] })),
];

export const CLIMATE_WORDS: Readonly<Record<Climate, string>> = { cold: 'cold', mixed: 'mixed', warm: 'warm' };

export const PRIVACY_CHOICES: readonly { readonly value: Privacy | ''; readonly name: string }[] = [
  { value: '', name: 'not asked' },
  { value: 'day', name: 'by day' },
  { value: 'night', name: 'by night' },
  { value: 'always', name: 'day and night' },
];

export const BUDGET_CHOICES: readonly { readonly value: Budget | ''; readonly name: string }[] = [
  { value: '', name: 'as usual' },
  { value: 'careful', name: 'kept modest' },
  { value: 'generous', name: 'a step up' },
];

export const GLAZING_WORDS: Readonly<Record<Glazing, string>> = {
  single: 'single',
  double: 'double',
  'double-low-e': 'double, low-e',
  triple: 'triple',
};

export const HEADING_WORDS: Readonly<Record<Heading, string>> = {
  'pinch-pleat': 'pinch pleat',
  goblet: 'goblet',
  'box-pleat': 'box pleat',
  'pencil-pleat': 'pencil pleat',
  'rod-pocket': 'rod pocket',
  tab: 'tab top',
  grommet: 'grommet',
  wave: 'wave',
  flat: 'flat',
};

export const ARRANGEMENT_WORDS: Readonly<Record<Arrangement, string>> = {
  pair: 'a pair that draws',
  'one-way': 'one way draw',
  single: 'one still panel',
  'pair-stationary': 'a still pair',
};

export const MOUNT_WORDS: Readonly<Record<MountPlace, string>> = {
  wall: 'on the wall',
  ceiling: 'from the ceiling',
  inside: 'inside the frame',
};

export const ROLE_WORDS: Readonly<Record<ClothRole, string>> = {
  face: 'face cloth',
  lining: 'lining',
  interlining: 'interlining',
};

export const FAMILY_WORDS: Readonly<Record<FaceFamily | LiningFamily | InterliningFamily, string>> = {
  plain: 'plain',
  print: 'print',
  woven: 'woven pattern',
  sheer: 'sheer',
  silk: 'silk',
  velvet: 'velvet',
  standard: 'standard woven',
  combination: 'combination, napped inside',
  'dim-out': 'dim-out',
  'blackout-3-pass': 'three-pass blackout',
  'blackout-soft': 'soft blackout',
  'blackout-napped': 'blackout with a napped back',
  'black-sateen': 'black sateen',
  thermal: 'thermal',
  contrast: 'contrast',
  light: 'light',
  medium: 'medium',
  heavy: 'heavy',
};

export const MATCH_WORDS: Readonly<Record<Match, string>> = {
  none: 'plain, no match',
  straight: 'straight across',
  'half-drop': 'half-drop',
};

export const LINE_KIND_WORDS: Readonly<Record<LineKind, string>> = {
  cloth: 'cloth',
  hardware: 'hardware',
  notions: 'notions',
  labour: 'labour',
  freight: 'freight',
};

export const UNIT_WORDS: Readonly<Record<LengthUnit, string>> = {
  in: 'inches',
  cm: 'centimetres',
  mm: 'millimetres',
};

export const CURRENCY_WORDS: Readonly<Record<Currency, string>> = {
  USD: 'US dollar',
  CAD: 'Canadian dollar',
  AUD: 'Australian dollar',
  NZD: 'New Zealand dollar',
  GBP: 'pound sterling',
  EUR: 'euro',
  CHF: 'Swiss franc',
  SEK: 'Swedish krona',
  NOK: 'Norwegian krone',
  DKK: 'Danish krone',
  PLN: 'Polish zloty',
  ZAR: 'South African rand',
  JPY: 'Japanese yen',
};

export const LOCALE_WORDS = {
  'en-US': 'English, United States',
  'en-CA': 'English, Canada',
  'en-GB': 'English, United Kingdom',
  'en-IE': 'English, Ireland',
  'en-AU': 'English, Australia',
  'en-NZ': 'English, New Zealand',
  'en-ZA': 'English, South Africa',
  'de-DE': 'numbers as in Germany',
  'fr-FR': 'numbers as in France',
  'sv-SE': 'numbers as in Sweden',
  'pl-PL': 'numbers as in Poland',
} as const;

export const WIDTH_ROUNDING_WORDS: Readonly<Record<Practice['widthRounding'], string>> = {
  up: 'up to whole widths, all pieces together',
  'half-up': 'up to half widths, each piece',
  'nearest-half': 'to the nearest half width, each piece',
};
export const REPEAT_RULE_WORDS: Readonly<Record<Practice['repeatRule'], string>> = {
  whole: 'cuts go up to whole repeats',
  'add-one': 'one repeat is added to each cut',
};
export const SEAM_MATCH_WORDS: Readonly<Record<Practice['seamMatch'], string>> = {
  usable: 'bring all that is usable',
  'whole-repeats': 'bring whole repeats across, so that seams match',
};
export const ORDER_FROM_WORDS: Readonly<Record<Practice['orderFrom'], string>> = {
  plan: 'the length as laid out',
  handbook: 'all cuts end to end',
};
export const ORDER_EXTRA_WORDS: Readonly<Record<Practice['orderExtra'], string>> = {
  none: 'nothing extra',
  'one-repeat': 'one repeat extra',
  'repeat-or-yard': 'a repeat or a yard extra, the greater',
};
export const FULLNESS_OVER_WORDS: Readonly<Record<Practice['fullnessOver'], string>> = {
  whole: 'face, overlap and returns',
  face: 'face and overlap, returns flat',
};
export const ROUNDING_WORDS = {
  'half-up': 'to the nearest, half up',
  'half-even': 'to the nearest, half to even',
  up: 'always up',
  down: 'always down',
} as const;

/** Said when another currency is chosen. */
export const NOT_CONVERTED =
  'Amounts in the price book and of cloth are not converted: they now count in the currency chosen. Look them through.';
