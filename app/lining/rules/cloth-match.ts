import type { Rule } from './rule.ts';
import { COMMON } from './rule.ts';

/** A few inches narrower is right; beyond this seams stop lining up, or cloth is wasted. */
const FEW_INCHES = 4;

/** How the layers go together: content, shrinkage, width, sides. */
export const MATCH_RULES: readonly Rule[] = [
  {
    id: 'match-content',
    cause: 'move-together',
    level: 'note',
    when: (f) => f.contentClash !== null,
    says: (f) =>
      `${f.contentClash ?? 'The lining'} is of other fibres than the face: layers that shrink differently pucker at the hem, so both are tested or cleaned dry.`,
    rests: `${COMMON}: a cotton face wants cotton behind it, a blend a blend; difference in shrinkage puckers a hem`,
  },
  {
    id: 'lining-narrower',
    cause: 'width',
    level: 'caution',
    when: (f) => f.narrowerBy > FEW_INCHES && f.hasJoins,
    says: (f) =>
      `A layer behind is ${f.narrowerBy.toFixed(0)} in narrower than the face: its seams will not lie behind those of the face.`,
    rests: `${COMMON}: a lining as wide as the face, or a few inches narrower`,
  },
  {
    id: 'lining-wider',
    cause: 'width',
    level: 'note',
    when: (f) => f.widerBy > FEW_INCHES,
    says: (f) => `A layer behind is ${f.widerBy.toFixed(0)} in wider than the face: what is over is waste.`,
    rests: `${COMMON}: a lining as wide as the face, or a few inches narrower`,
  },
  {
    id: 'seams-apart',
    cause: 'width',
    level: 'note',
    when: (f) => !f.unlined && !f.r.input.made.liningMatchesFace && f.hasJoins && f.narrowerBy <= FEW_INCHES,
    says: () => 'The lining is cut in other widths than the face: its seams will not lie behind those of the face.',
    rests: COMMON,
  },
  {
    id: 'coated-side',
    cause: 'side',
    level: 'note',
    when: (f) => f.coated || f.softBlackout,
    says: () => 'Which side of a coated lining faces the glass differs by maker: it is noted on the work order.',
    rests: COMMON,
  },
  {
    id: 'finish-to-glass',
    cause: 'side',
    level: 'note',
    when: (f) =>
      !f.unlined && !f.coated && !f.softBlackout && f.r.behind.some((layer) => layer.cloth.role === 'lining'),
    says: () => 'The lustrous, water-shedding side of the lining faces the glass.',
    rests: COMMON,
  },
];
