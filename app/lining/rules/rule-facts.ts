/** What the rules look at: the figures of a stack, and plain yes-or-no facts drawn from them once. */
import type { Cloth, Content } from '#shared/cloth.ts';
import { isBlackout } from '#shared/cloth.ts';
import { TICKS_PER_INCH } from '#shared/length.ts';
import type { Facing, Heading, RoomUse } from '#shared/words.ts';
import { MAKE_OF_HEADING } from '../body.ts';
import type { MakeKind } from '../body.ts';
import type { Reckoned } from '../reckon-stack.ts';
import { showsNeedleHoles } from '../reckon-stack.ts';
import { DARK, NEARLY_DARK } from '../say-readings.ts';

export interface RuleFacts {
  readonly r: Reckoned;
  readonly use: RoomUse;
  readonly heading: Heading;
  readonly make: MakeKind;
  readonly unlined: boolean;
  readonly interlined: boolean;
  readonly heavyInterlining: boolean;
  readonly blackout: boolean;
  /** A coated blackout: it keeps needle holes and does not gather. */
  readonly coated: boolean;
  readonly threePass: boolean;
  readonly softBlackout: boolean;
  readonly dimOut: boolean;
  readonly blackCloth: boolean;
  readonly combination: boolean;
  /** By the light through the cloth alone. */
  readonly dark: boolean;
  readonly nearlyDark: boolean;
  readonly stationary: boolean;
  /** Small children sleep or play here. */
  readonly childRoom: boolean;
  /** The glass faces the sun for hours; false when nobody knows. */
  readonly strongSun: boolean;
  readonly cotton: boolean;
  readonly silk: boolean;
  readonly paleFace: boolean;
  readonly deepLining: boolean;
  readonly ivoryLining: boolean;
  readonly colouredLining: boolean;
  /** The lining whose content does not go with the face's; null when none, or when nobody knows. */
  readonly contentClash: string | null;
  /** Inches by which the narrowest layer behind is narrower (or the widest wider) than the face; 0 when not. */
  readonly narrowerBy: number;
  readonly widerBy: number;
  /** There are joins in a piece, so that seams have to line up. */
  readonly hasJoins: boolean;
}

const STRONG_SUN: readonly Facing[] = ['E', 'SE', 'S', 'SW', 'W'];
const CHILD_ROOMS: readonly RoomUse[] = ['nursery', 'child'];
/** Cotton enough to rot in the sun, and to want cotton behind it, in per cent. */
const MOSTLY_COTTON = 50;
const ALL_COTTON = 95;
/** Of each fibre, in per cent, to call a cloth a cotton and polyester blend. */
const BLEND = 15;
const PALE_REFLECTANCE = 0.45;
const DEEP_REFLECTANCE = 0.2;

export function gatherFacts(r: Reckoned): RuleFacts {
  const { input, behind, face } = r;
  const { use, facing } = input.room;
  const linings = behind.flatMap((layer) => (layer.cloth.role === 'lining' ? [{ ...layer, cloth: layer.cloth }] : []));
  const interlinings = behind.flatMap((layer) => (layer.cloth.role === 'interlining' ? [layer.cloth] : []));
  const has = (family: string): boolean => linings.some((layer) => layer.cloth.family === family);
  const widths = behind.map((layer) => (layer.cloth.usableWidth - face.cloth.usableWidth) / TICKS_PER_INCH);
  return {
    r,
    use,
    heading: input.treatment.heading,
    make: MAKE_OF_HEADING[input.treatment.heading],
    unlined: behind.length === 0,
    interlined: interlinings.length > 0,
    heavyInterlining: interlinings.some((cloth) => cloth.family === 'heavy'),
    blackout: behind.some((layer) => isBlackout(layer.cloth)),
    coated: behind.some(showsNeedleHoles),
    threePass: has('blackout-3-pass'),
    softBlackout: has('blackout-soft'),
    dimOut: has('dim-out'),
    blackCloth: has('black-sateen'),
    combination: has('combination'),
    dark: r.readings.light < DARK,
    nearlyDark: r.readings.light < NEARLY_DARK,
    stationary: r.closing.class === 'stationary',
    childRoom: CHILD_ROOMS.includes(use),
    strongSun: facing === null ? use === 'sunroom' : STRONG_SUN.includes(facing),
    cotton: share(face.cloth.content, 'cotton') >= MOSTLY_COTTON,
    silk: input.face.family === 'silk' || share(face.cloth.content, 'silk') >= MOSTLY_COTTON,
    paleFace: face.visible.reflectance >= PALE_REFLECTANCE,
    deepLining: linings.some((layer) => layer.visible.reflectance < DEEP_REFLECTANCE),
    ivoryLining: linings.some((layer) => layer.shade === 'ivory'),
    colouredLining: linings.some(
      (layer) => layer.cloth.family !== 'black-sateen' && layer.shade.startsWith('#') && layer.shade !== '#ffffff',
    ),
    contentClash: linings.find((layer) => clashes(face.cloth, layer.cloth))?.cloth.name ?? null,
    narrowerBy: Math.max(0, ...widths.map((w) => -w)),
    widerBy: Math.max(0, ...widths),
    hasJoins: (input.made.halfWidths ?? 0) > 2 * (input.treatment.arrangement.startsWith('pair') ? 2 : 1),
  };
}

/** Per cent of a fibre, by its plain name in any letters. */
function share(content: Content | null, fibre: string): number {
  if (content === null) return 0;
  const found = Object.entries(content).find(([name]) => name.trim().toLowerCase() === fibre);
  return found === undefined ? 0 : found[1];
}

/** An all-cotton face wants cotton behind it, a cotton and polyester face a blend; of other faces the trade says nothing. */
function clashes(face: Cloth, lining: Cloth): boolean {
  if (face.content === null || lining.content === null) return false;
  if (share(face.content, 'cotton') >= ALL_COTTON) return share(lining.content, 'cotton') < ALL_COTTON;
  const blend = (c: Content): boolean => share(c, 'cotton') >= BLEND && share(c, 'polyester') >= BLEND;
  return blend(face.content) && !blend(lining.content);
}
