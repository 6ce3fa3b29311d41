/** What the rules look at: the figures of a stack, and plain yes-or-no facts drawn from them once. */
import type { Cloth, Content, FaceCloth } from '#shared/cloth.ts';
import { isBlackout } from '#shared/cloth.ts';
import { TICKS_PER_INCH } from '#shared/length.ts';
import { piecesOf } from '#shared/treatments/panels.ts';
import type { Facing, FaceFamily, Heading, RoomUse } from '#shared/words.ts';
import { makeOf } from '../body.ts';
import type { MakeKind } from '../body.ts';
import { draws, hangsBeforeHeat } from '../light-and-heat/closing.ts';
import type { JudgedShade } from '../judge-input.ts';
import { nameLiningWeight } from '../cloth/lining-weight.ts';
import type { LiningWeight } from '../cloth/lining-weight.ts';
import { asks } from '../choose/privacy-asked.ts';
import { isCoated, showsNeedleHoles } from '../reckon-stack.ts';
import type { Reckoned } from '../reckon-stack.ts';
import { THIN_FACE } from '../cloth/thin-face.ts';
import { DARK, isDarkening, lightTakenFor, NEARLY_DARK, SEEN_THROUGH, SHADOWS_SHOW } from '../say/say-readings.ts';

export interface RuleFacts {
  readonly r: Reckoned;
  readonly use: RoomUse;
  readonly heading: Heading;
  readonly make: MakeKind;
  readonly unlined: boolean;
  readonly interlined: boolean;
  readonly heavyInterlining: boolean;
  readonly blackout: boolean;
  /** A coated blackout: stiff, and apt to crack. */
  readonly coated: boolean;
  /** A needle leaves a point of daylight in it. */
  readonly holes: boolean;
  readonly threePass: boolean;
  readonly softBlackout: boolean;
  readonly dimOut: boolean;
  /** One lining alone, and of little weight; or one of weight. */
  readonly lightLining: boolean;
  readonly firmLining: boolean;
  readonly blackCloth: boolean;
  readonly combination: boolean;
  readonly nappedBlackout: boolean;
  /** An interlining, or a nap that is half of one. */
  readonly napped: boolean;
  readonly contrast: boolean;
  /** A bathroom, or a shower. */
  readonly damp: boolean;
  readonly washedFace: boolean;
  /** The first cloth that may only be dry-cleaned, by name; null when none, or when nobody said. */
  readonly dryCleanOnly: string | null;
  /** The layer whose shrinkage is not the face's, by name, and by how much (share). */
  readonly shrinkageClash: { readonly name: string; readonly by: number } | null;
  /** The first cloth whose certificate is under a rule for clothing, by name. */
  readonly clothingRule: string | null;
  /** Every layer has a flame certificate of its own. */
  readonly allCertified: boolean;
  /** Names of the layers without one. */
  readonly untested: readonly string[];
  /** It hangs before a heat source below the window. */
  readonly beforeHeat: boolean;
  readonly sheer: boolean;
  /** A lining behind the face that is no sheer. */
  readonly denseLining: boolean;
  readonly wantsDark: boolean;
  /** A lining behind is joined from several widths. */
  readonly liningJoins: boolean;
  /** More interlining than a thin face can carry. */
  readonly overThick: boolean;
  /** By the light through the cloth alone. */
  readonly dark: boolean;
  readonly nearlyDark: boolean;
  /** Some layer is made to keep light out. */
  readonly darkening: boolean;
  readonly stationary: boolean;
  /** Closes over the whole window when it is drawn or let down. */
  readonly draws: boolean;
  /** A Roman shade. */
  readonly shade: JudgedShade | null;
  readonly cordInReach: boolean;
  readonly shower: boolean;
  /** Cascades or jabots, whose lining shows. */
  readonly tails: boolean;
  /** Part of it hangs before the wall above the glass, part before the glass. */
  readonly overGlassAndWall: boolean;
  /** Hangs inside the frame, so that a gap stays at each side. */
  readonly insideFrame: boolean;
  /** The room asks not to be seen into by day, and by night with its lamps on. */
  readonly privateByDay: boolean;
  readonly privateByNight: boolean;
  /** By night silhouettes show through it, or the shadow of who stands close. */
  readonly seenThrough: boolean;
  readonly shadowsShow: boolean;
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
/** Rooms that are darkened for sleep or pictures (common practice). */
const DARK_ROOMS: readonly RoomUse[] = ['bedroom', 'nursery', 'child', 'media'];
const CHILD_ROOMS: readonly RoomUse[] = ['nursery', 'child'];
/** Cotton enough to rot in the sun, in per cent; and enough of one fibre to want the same behind it. */
const MOSTLY_COTTON = 50;
const ALL_OF_ONE = 95;
/** Of each fibre, in per cent, to call a cloth a cotton and polyester blend. */
const BLEND = 15;
const FIRM: readonly LiningWeight[] = ['firm', 'luxury'];
/** Layers that lose this much more or less than the face pucker its hem (from memory). */
const SHRINKAGE_APART = 0.02;
/** Faces that steam spoils (common practice). */
export const DAMP_FACES: readonly FaceFamily[] = ['silk', 'velvet'];
const PALE_REFLECTANCE = 0.45;
const DEEP_REFLECTANCE = 0.2;

export function gatherFacts(r: Reckoned): RuleFacts {
  const { input, behind, face, layers } = r;
  const { treatment } = input;
  const { use, facing } = input.room;
  const linings = behind.flatMap((layer) => (layer.cloth.role === 'lining' ? [{ ...layer, cloth: layer.cloth }] : []));
  const interlinings = behind.flatMap((layer) => (layer.cloth.role === 'interlining' ? [layer.cloth] : []));
  const has = (family: string): boolean => linings.some((layer) => layer.cloth.family === family);
  const flatPiece = (input.made.finishedWidth * input.made.fullnessMade) / piecesOf(treatment.arrangement);
  const widths = behind.map((layer) => (layer.cloth.usableWidth - face.cloth.usableWidth) / TICKS_PER_INCH);
  return {
    r,
    use,
    heading: input.treatment.heading,
    make: makeOf(treatment),
    unlined: behind.length === 0,
    interlined: interlinings.length > 0,
    heavyInterlining: interlinings.some((cloth) => cloth.family === 'heavy'),
    blackout: behind.some((layer) => isBlackout(layer.cloth)),
    coated: behind.some((layer) => isCoated(layer.cloth)),
    holes: behind.some(showsNeedleHoles),
    threePass: has('blackout-3-pass'),
    softBlackout: has('blackout-soft'),
    dimOut: has('dim-out'),
    lightLining: behind.length === 1 && linings.some((layer) => nameLiningWeight(layer.weight) === 'light'),
    firmLining: linings.some((layer) => FIRM.includes(nameLiningWeight(layer.weight))),
    blackCloth: has('black-sateen'),
    combination: has('combination'),
    nappedBlackout: has('blackout-napped'),
    napped: has('combination') || has('blackout-napped'),
    contrast: has('contrast'),
    damp: use === 'bath' || treatment.kind === 'shower-curtain',
    washedFace: face.cloth.care !== undefined && face.cloth.care !== 'dry-clean',
    dryCleanOnly: layers.find((layer) => layer.cloth.care === 'dry-clean')?.cloth.name ?? null,
    shrinkageClash: findShrinkageClash(
      input.face,
      layers.slice(1).map((layer) => layer.cloth),
    ),
    clothingRule: layers.find((layer) => /\b1610\b/.test(layer.cloth.flame?.test ?? ''))?.cloth.name ?? null,
    allCertified: layers.every((layer) => layer.cloth.flame !== undefined),
    untested: layers.filter((layer) => layer.cloth.flame === undefined).map((layer) => layer.cloth.name),
    beforeHeat: hangsBeforeHeat(input.opening, treatment),
    sheer: input.face.family === 'sheer',
    denseLining: linings.some((layer) => layer.cloth.family !== 'sheer'),
    wantsDark: DARK_ROOMS.includes(use),
    liningJoins: linings.some((layer) => !layer.cloth.railroad && layer.cloth.usableWidth < flatPiece),
    overThick: face.weight < THIN_FACE && interlinings.some((cloth) => cloth.family !== 'light'),
    dark: lightTakenFor(r) < DARK,
    nearlyDark: r.readings.light < NEARLY_DARK,
    darkening: layers.some(isDarkening),
    stationary: r.closing.class === 'stationary',
    draws: draws(r.closing.class),
    shade: treatment.shade ?? null,
    cordInReach: treatment.shade?.lift === 'cords',
    shower: treatment.kind === 'shower-curtain',
    tails: treatment.tails !== undefined,
    overGlassAndWall:
      treatment.mount.where !== 'inside' &&
      treatment.mount.above > 0 &&
      treatment.finishedLength > treatment.mount.above,
    insideFrame: treatment.mount.where === 'inside',
    privateByDay: asks(input.room.privacy ?? null, 'day'),
    privateByNight: asks(input.room.privacy ?? null, 'night'),
    seenThrough: r.readings.light >= SEEN_THROUGH,
    shadowsShow: r.readings.light >= SHADOWS_SHOW,
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
    hasJoins: (input.made.halfWidths ?? 0) > 2 * piecesOf(treatment.arrangement),
  };
}

/** Per cent of a fibre, by its plain name in any letters. */
function share(content: Content | null, fibre: string): number {
  if (content === null) return 0;
  const found = Object.entries(content).find(([name]) => name.trim().toLowerCase() === fibre);
  return found === undefined ? 0 : found[1];
}

/** Difference in shrinkage, more than content, makes a hem pucker; null where nobody measured both. */
function findShrinkageClash(face: FaceCloth, behind: readonly Cloth[]): RuleFacts['shrinkageClash'] {
  const own = face.shrinkage;
  if (own === undefined) return null;
  for (const { name, shrinkage } of behind) {
    if (shrinkage === undefined) continue;
    const by = Math.max(Math.abs(shrinkage.length - own.length), Math.abs(shrinkage.width - own.width));
    if (by >= SHRINKAGE_APART) return { name, by };
  }
  return null;
}

/**
 * An all-cotton face wants cotton behind it, a cotton and polyester face a blend, and what is all polyester hardly shrinks
 * where cotton does (from memory); of other faces the trade says nothing.
 */
function clashes(face: Cloth, lining: Cloth): boolean {
  if (face.content === null || lining.content === null) return false;
  // Where both were measured their shrinkage tells more than their content.
  if (face.shrinkage !== undefined && lining.shrinkage !== undefined) return false;
  if (share(face.content, 'cotton') >= ALL_OF_ONE) return share(lining.content, 'cotton') < ALL_OF_ONE;
  const blend = (c: Content): boolean => share(c, 'cotton') >= BLEND && share(c, 'polyester') >= BLEND;
  if (share(face.content, 'polyester') >= ALL_OF_ONE) return share(lining.content, 'cotton') >= ALL_OF_ONE;
  return blend(face.content) && !blend(lining.content);
}
