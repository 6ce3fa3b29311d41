/** The closed lists of the trade's words that job files, screens and engines share. Order is the order shown. */
export const ROOM_USES = [
  'living',
  'dining',
  'bedroom',
  'nursery',
  'child',
  'bath',
  'kitchen',
  'study',
  'media',
  'hall',
  'sunroom',
  'public',
] as const;
export type RoomUse = (typeof ROOM_USES)[number];

export const FACINGS = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const;
export type Facing = (typeof FACINGS)[number];

export const CLIMATES = ['cold', 'mixed', 'warm'] as const;
export type Climate = (typeof CLIMATES)[number];

/** When a room wants to be hidden from outside: by day, by night with its lamps on, or always. */
export const PRIVACIES = ['day', 'night', 'always'] as const;
export type Privacy = (typeof PRIVACIES)[number];

/** What the purse wants of the three options: kept modest, or a step up. */
export const BUDGETS = ['careful', 'generous'] as const;
export type Budget = (typeof BUDGETS)[number];

export const GLAZINGS = ['single', 'double', 'double-low-e', 'triple'] as const;
export type Glazing = (typeof GLAZINGS)[number];

export const HEADINGS = [
  'pinch-pleat',
  'goblet',
  'box-pleat',
  'pencil-pleat',
  'rod-pocket',
  'tab',
  'grommet',
  'wave',
  'flat',
] as const;
export type Heading = (typeof HEADINGS)[number];

export const ARRANGEMENTS = ['pair', 'one-way', 'single', 'pair-stationary'] as const;
export type Arrangement = (typeof ARRANGEMENTS)[number];

export const MOUNTS = ['wall', 'ceiling', 'inside'] as const;
export type MountPlace = (typeof MOUNTS)[number];

export const TIERS = ['good', 'better', 'best'] as const;
export type Tier = (typeof TIERS)[number];

export const CLOTH_ROLES = ['face', 'lining', 'interlining'] as const;
export type ClothRole = (typeof CLOTH_ROLES)[number];

export const FACE_FAMILIES = ['plain', 'print', 'woven', 'sheer', 'silk', 'velvet'] as const;
export type FaceFamily = (typeof FACE_FAMILIES)[number];

export const LINING_FAMILIES = [
  'standard',
  'combination',
  'dim-out',
  'blackout-3-pass',
  'blackout-soft',
  'blackout-napped',
  'black-sateen',
  'thermal',
  'sheer',
  'contrast',
] as const;
export type LiningFamily = (typeof LINING_FAMILIES)[number];

export const INTERLINING_FAMILIES = ['light', 'medium', 'heavy'] as const;
export type InterliningFamily = (typeof INTERLINING_FAMILIES)[number];

export const MATCHES = ['none', 'straight', 'half-drop'] as const;
export type Match = (typeof MATCHES)[number];

/** An order needs a final measure. */
export const MEASURE_STATES = ['rough', 'final'] as const;

export const LINE_KINDS = ['cloth', 'hardware', 'notions', 'labour', 'freight'] as const;
export type LineKind = (typeof LINE_KINDS)[number];

/** Cloth that the program knows without being told; a job file's own id wins over one of these. */
export const GENERIC_CLOTH_IDS = [
  'std-white',
  'std-ivory',
  'combo-white',
  'dim-out',
  'blackout-3-pass',
  'soft-blackout',
  'blackout-napped',
  'black-sateen',
  'inter-light',
  'inter-med',
  'inter-heavy',
] as const;
export type GenericClothId = (typeof GENERIC_CLOTH_IDS)[number];
