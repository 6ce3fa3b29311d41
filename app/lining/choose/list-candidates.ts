/** The stacks that a decorator would think of for a face, each with the effort it takes; her own white cloth first. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { exhaustive } from '#shared/fault.ts';
import type { InterliningFamily, LiningFamily } from '#shared/words.ts';
import { makeOf } from '../body.ts';
import type { JudgedTreatment } from '../judge-input.ts';
import { isThin } from '../cloth/thin-face.ts';
import { placeOf } from '../place-of-kind.ts';
import { NOT_INTERLINED } from '../rules/interlining.ts';
import { STARTER_CLOTH } from '../cloth/starter-cloth.ts';

/** Cloth and labour together, on a scale of our own: a standard lining is 1 (common practice; not a price). */
const LINING_EFFORT: Readonly<Record<LiningFamily, number>> = {
  standard: 1,
  sheer: 0.8,
  contrast: 1.2,
  'black-sateen': 1.4,
  thermal: 1.5,
  'dim-out': 1.5,
  combination: 1.8,
  'blackout-3-pass': 1.6,
  'blackout-napped': 2.4,
  'blackout-soft': 2.2,
};
const INTERLINING_EFFORT: Readonly<Record<InterliningFamily, number>> = { light: 2, medium: 2.3, heavy: 2.8 };

export function effortOf(behind: readonly BackCloth[]): number {
  const sum = behind.reduce(
    (total, cloth) =>
      total + (cloth.role === 'lining' ? LINING_EFFORT[cloth.family] : INTERLINING_EFFORT[cloth.family]),
    0,
  );
  return Number(sum.toFixed(6));
}

export interface Candidate {
  readonly behind: readonly BackCloth[];
  readonly effort: number;
}

/** Finds a cloth of a family: her own white one, else the program's. */
interface Shelf {
  readonly lining: (family: LiningFamily) => BackCloth;
  readonly inter: (family: InterliningFamily) => BackCloth;
  /** A sheer lining of hers; the program has none. */
  readonly sheer: BackCloth | null;
}

/**
 * Room to street. Of coated blackouts only the plain one is thought of where it has to fold, as the cheapest. Ivory and
 * coloured linings have to be asked for, so none is among them (common practice).
 */
export function listCandidates(
  face: FaceCloth,
  treatment: Pick<JudgedTreatment, 'kind' | 'heading' | 'make'>,
  ownCloth: readonly Cloth[],
): readonly Candidate[] {
  const shelf: Shelf = {
    lining: (family) => liningOf(family, ownCloth),
    inter: (family) => interliningOf(family, ownCloth),
    sheer: ownLining('sheer', ownCloth),
  };
  return stacksFor(face, treatment, shelf).map((behind) => ({ behind, effort: effortOf(behind) }));
}

type Stacks = readonly (readonly BackCloth[])[];

function stacksFor(
  face: FaceCloth,
  treatment: Pick<JudgedTreatment, 'kind' | 'heading' | 'make'>,
  shelf: Shelf,
): Stacks {
  const place = placeOf(treatment.kind);
  switch (place) {
    case 'window':
      return windowStacks(face, treatment, shelf);
    case 'top':
      return topStacks(face, treatment, shelf);
    case 'board':
      return boardStacks(face, shelf);
    case 'away':
      return awayStacks(treatment, shelf);
    default:
      return exhaustive(place);
  }
}

function windowStacks(
  face: FaceCloth,
  treatment: Pick<JudgedTreatment, 'kind' | 'heading' | 'make'>,
  shelf: Shelf,
): Stacks {
  const { lining, inter } = shelf;
  // Rings and tapes are stitched through the body of a shade: a coated blackout has to be asked for.
  const shade = treatment.kind === 'roman-shade';
  const standard = lining('standard');
  const black = lining('black-sateen');
  // Without an interlining to hide it, black cloth is only for what cannot be interlined.
  const blackBehind = [
    [black, standard],
    [black, lining('blackout-soft')],
  ];
  const plain: Stacks = [
    [standard],
    [lining('dim-out')],
    [lining('combination')],
    // A wave runs on carriers and takes nothing stiff.
    ...(shade || treatment.heading === 'wave' ? [] : [[lining('blackout-3-pass')]]),
    [lining('blackout-soft')],
    ...(face.family === 'sheer' || NOT_INTERLINED.includes(treatment.heading) ? blackBehind : []),
  ];
  if (face.family === 'sheer') {
    // A nap behind a sheer shows, and warms nothing.
    const smooth = plain.filter((stack) => !stack.some((cloth) => cloth.family === 'combination'));
    return [[], ...(shelf.sheer === null ? [] : [[shelf.sheer]]), ...smooth];
  }
  return [
    ...plain,
    ...(makeOf(treatment) === 'flat' && !shade ? [[lining('blackout-napped')]] : []),
    [inter('light'), standard],
    [inter('medium'), standard],
    // A thick interlining is for a face that can carry it.
    ...(isThin(face) ? [] : [[inter('heavy'), standard]]),
    [inter('medium'), black, standard],
    [inter('medium'), lining('blackout-soft')],
  ];
}

/** What only dresses the head of a window: body, and that no line shows where the glass ends. */
function topStacks(face: FaceCloth, treatment: Pick<JudgedTreatment, 'heading' | 'make'>, shelf: Shelf): Stacks {
  const { lining, inter } = shelf;
  const standard = lining('standard');
  return [
    ...(face.family === 'sheer' ? [[]] : []),
    [standard],
    [lining('combination')],
    ...(makeOf(treatment) === 'flat'
      ? [[lining('blackout-3-pass')], [lining('blackout-napped')]]
      : [[lining('blackout-soft')]]),
    ...(face.family === 'sheer'
      ? []
      : [
          [inter('light'), standard],
          [inter('medium'), standard],
        ]),
  ];
}

/** What pads the face on its box, over the neat lining inside it; no light passes the board, so none is thought of for light. */
function boardStacks(face: FaceCloth, { lining, inter }: Shelf): Stacks {
  const standard = lining('standard');
  const thickest = isThin(face) ? inter('medium') : inter('heavy');
  return [[], [standard], [lining('dim-out')], [inter('light'), standard], [thickest, standard]];
}

/** Where light does not matter a light lining is enough; a shower curtain takes nothing napped, which would hold damp. */
function awayStacks(treatment: Pick<JudgedTreatment, 'kind'>, shelf: Shelf): Stacks {
  const third = treatment.kind === 'shower-curtain' ? 'dim-out' : 'combination';
  return [[], [shelf.lining('standard')], [shelf.lining(third)]];
}

/** Her own white lining of a family, else the program's. */
export function liningOf(family: LiningFamily, ownCloth: readonly Cloth[]): BackCloth {
  return ownLining(family, ownCloth) ?? starterLining(family);
}

/** Her own interlining of a family, else the program's. */
export function interliningOf(family: InterliningFamily, ownCloth: readonly Cloth[]): BackCloth {
  const mine = ownCloth.find((cloth): cloth is BackCloth => cloth.role === 'interlining' && cloth.family === family);
  return mine ?? starterInterlining(family);
}

function ownLining(family: LiningFamily, ownCloth: readonly Cloth[]): BackCloth | null {
  const mine = ownCloth.find(
    (cloth): cloth is BackCloth =>
      cloth.role === 'lining' &&
      cloth.family === family &&
      (cloth.shade === null || cloth.shade === 'white' || family === 'black-sateen'),
  );
  return mine ?? null;
}

function starterLining(family: LiningFamily): BackCloth {
  switch (family) {
    case 'standard':
    case 'sheer':
    case 'contrast':
    case 'thermal':
      return STARTER_CLOTH['std-white'];
    case 'combination':
      return STARTER_CLOTH['combo-white'];
    case 'dim-out':
      return STARTER_CLOTH['dim-out'];
    case 'blackout-3-pass':
      return STARTER_CLOTH['blackout-3-pass'];
    case 'blackout-soft':
      return STARTER_CLOTH['soft-blackout'];
    case 'blackout-napped':
      return STARTER_CLOTH['blackout-napped'];
    case 'black-sateen':
      return STARTER_CLOTH['black-sateen'];
    default:
      return exhaustive(family);
  }
}

function starterInterlining(family: InterliningFamily): BackCloth {
  const ids = { light: 'inter-light', medium: 'inter-med', heavy: 'inter-heavy' } as const;
  return STARTER_CLOTH[ids[family]];
}
