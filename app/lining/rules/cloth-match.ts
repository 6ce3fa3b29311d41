import { lower } from '../say/say-number.ts';
import type { Rule } from './rule.ts';
import { ANYWHERE, AT_GLASS, COMMON } from './rule.ts';

/** A few inches narrower is right; beyond this seams stop lining up, or cloth is wasted. */
const FEW_INCHES = 4;

/** How the layers go together: content, shrinkage, width, sides. */
export const MATCH_RULES: readonly Rule[] = [
  {
    id: 'shrinkage-differs',
    cause: 'move-together',
    level: 'caution',
    where: ANYWHERE,
    when: (f) => f.shrinkageClash !== null,
    says: (f) =>
      `The lining (${lower(f.shrinkageClash?.name ?? '')}) shrinks otherwise than the face, by ${f.r.say.percent(f.shrinkageClash?.by ?? 0)}: the hem will pucker. Wash both before cutting, or clean it dry.`,
    rests: `${COMMON}: difference in shrinkage, more than content, makes a hem pucker; from the shrinkage given`,
  },
  {
    id: 'match-content',
    cause: 'move-together',
    level: 'note',
    where: ANYWHERE,
    when: (f) => f.contentClash !== null,
    says: (f) =>
      `The lining (${lower(f.contentClash ?? '')}) is of other fibres than the face: layers that shrink differently pucker at the hem, so wash or steam a sample of both before cutting.`,
    rests: `${COMMON}: a cotton face wants cotton behind it, a blend a blend, and polyester hardly shrinks where cotton does; difference in shrinkage puckers a hem`,
  },
  {
    id: 'seams-in-sheer',
    cause: 'width',
    level: 'caution',
    when: (f) => f.sheer && f.liningJoins,
    says: () =>
      'Seams of the lining stand as dark lines in a sheer: take a lining wide enough to run sideways, or hang it apart.',
    rests: `${COMMON}: daylight shows a seam through a sheer; a sheer as wide as its drop has none of its own`,
  },
  {
    id: 'lining-narrower',
    cause: 'width',
    level: 'caution',
    where: ANYWHERE,
    when: (f) => f.narrowerBy > FEW_INCHES && f.hasJoins,
    says: (f) =>
      `A layer behind is ${f.r.say.inches(f.narrowerBy)} narrower than the face: its seams will not lie behind those of the face.`,
    rests: `${COMMON}: a lining as wide as the face, or a few inches narrower`,
  },
  {
    id: 'lining-wider',
    cause: 'width',
    level: 'note',
    where: ANYWHERE,
    when: (f) => f.widerBy > FEW_INCHES,
    says: (f) => `A layer behind is ${f.r.say.inches(f.widerBy)} wider than the face: what is over is waste.`,
    rests: `${COMMON}: a lining as wide as the face, or a few inches narrower`,
  },
  {
    id: 'seams-apart',
    cause: 'width',
    level: 'note',
    where: ANYWHERE,
    when: (f) =>
      !f.unlined && !f.r.input.made.liningMatchesFace && f.hasJoins && f.narrowerBy <= FEW_INCHES && !f.sheer,
    says: () => 'The lining is cut in other widths than the face: its seams will not lie behind those of the face.',
    rests: COMMON,
  },
  {
    id: 'coated-side',
    cause: 'side',
    level: 'note',
    where: AT_GLASS,
    when: (f) => f.coated || f.softBlackout,
    says: () => 'Which side of a coated lining faces the glass differs by maker: it is noted on the work order.',
    rests: COMMON,
  },
  {
    id: 'finish-to-glass',
    cause: 'side',
    level: 'note',
    where: AT_GLASS,
    when: (f) =>
      !f.unlined && !f.coated && !f.softBlackout && f.r.behind.some((layer) => layer.cloth.role === 'lining'),
    says: () => 'The lustrous, water-shedding side of the lining faces the glass.',
    rests: COMMON,
  },
];
