/** The stacks that a decorator would think of for a face, each with the effort it takes; her own white cloth first. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { exhaustive } from '#shared/fault.ts';
import type { Heading, InterliningFamily, LiningFamily } from '#shared/words.ts';
import { MAKE_OF_HEADING } from './body.ts';
import { NOT_INTERLINED } from './rules/interlining.ts';
import { STARTER_CLOTH } from './starter-cloth.ts';

/** Cloth and labour together, on a scale of our own: a standard lining is 1 (common practice; not a price). */
const LINING_EFFORT: Readonly<Record<LiningFamily, number>> = {
  standard: 1,
  sheer: 1,
  contrast: 1.2,
  'black-sateen': 1.2,
  thermal: 1.5,
  'dim-out': 1.5,
  combination: 1.8,
  'blackout-3-pass': 1.6,
  'blackout-napped': 3,
  'blackout-soft': 3.1,
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

/**
 * Room to street. Of coated blackouts only the plain one is thought of where it has to fold, as the cheapest. Ivory and coloured linings have to be asked for, so none is among them
 * (common practice).
 */
export function listCandidates(face: FaceCloth, heading: Heading, ownCloth: readonly Cloth[]): readonly Candidate[] {
  const lining = (family: LiningFamily): BackCloth => ownLining(family, ownCloth) ?? starterLining(family);
  const inter = (family: InterliningFamily): BackCloth =>
    ownCloth.find((cloth): cloth is BackCloth => cloth.role === 'interlining' && cloth.family === family) ??
    starterInterlining(family);
  const standard = lining('standard');
  const black = lining('black-sateen');
  // Without an interlining to hide it, black cloth is only for what cannot be interlined.
  const blackBehind = [
    [black, standard],
    [black, lining('blackout-soft')],
  ];
  const plain: readonly (readonly BackCloth[])[] = [
    [standard],
    [lining('dim-out')],
    [lining('combination')],
    [lining('blackout-3-pass')],
    [lining('blackout-soft')],
    ...(face.family === 'sheer' || NOT_INTERLINED.includes(heading) ? blackBehind : []),
  ];
  const sheerLining = ownLining('sheer', ownCloth);
  const stacks =
    face.family === 'sheer'
      ? [[], ...(sheerLining === null ? [] : [[sheerLining]]), ...plain]
      : [
          ...plain,
          ...(MAKE_OF_HEADING[heading] === 'flat' ? [[lining('blackout-napped')]] : []),
          [inter('light'), standard],
          [inter('medium'), standard],
          [inter('heavy'), standard],
          [inter('medium'), black, standard],
          [inter('medium'), lining('blackout-soft')],
        ];
  return stacks.map((behind) => ({ behind, effort: effortOf(behind) }));
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
