import { IDEAL_BODY, STIFF, stiffest } from '../body.ts';
import type { Rule } from './rule.ts';
import { COMMON } from './rule.ts';

/** Kilograms a metre of rod above which a light pole and its fixings want a second look (assumed; guidance only). */
const HEAVY_PER_METRE = 4.5;
const THIN_FACE = 160;
const HEAVY_FACE = 300;
const LIGHT_LINING = 170;

/** How it gathers, folds and hangs. */
export const MAKE_RULES: readonly Rule[] = [
  {
    id: 'stiff-blackout-gathers-badly',
    cause: 'stiffness',
    level: 'caution',
    when: (f) => f.coated && f.make !== 'flat' && stiffest(f.r.layers) >= STIFF,
    says: () => 'This blackout is stiff: it pleats and gathers badly. A soft blackout folds like cloth.',
    rests: `${COMMON}: three-pass blackout suits flat things; in pleats it is a caution, not a stop`,
  },
  {
    id: 'blackout-suits-flat',
    cause: 'stiffness',
    level: 'praise',
    when: (f) => f.threePass && f.make === 'flat',
    says: () => 'A stiff blackout suits a flat heading: few stitches, and it hangs smooth.',
    rests: `${COMMON}: tab and grommet panels, flat things`,
  },
  {
    id: 'soft-blackout-folds',
    cause: 'stiffness',
    level: 'praise',
    when: (f) => f.softBlackout && f.make !== 'flat',
    says: () => 'A soft blackout drapes well and folds like cloth.',
    rests: COMMON,
  },
  {
    id: 'bulky-heading',
    cause: 'stiffness',
    level: 'note',
    when: (f) => (f.heavyInterlining || f.r.layers.length > 3) && f.make !== 'flat',
    says: () => 'So thick a stack makes bulky pleats and draws back wider: allow more wall beside the window.',
    rests: `${COMMON}: bulk at the heading and at the stackback`,
  },
  {
    id: 'limp-for-heading',
    cause: 'stiffness',
    level: 'note',
    when: (f) => f.make === 'pleated' && f.r.readings.body < IDEAL_BODY.pleated - 1.6,
    says: () => 'Thin for pleats: a heavier lining or interlining would let them stand.',
    rests: `${COMMON}: a heavy lining lends body to a thin face`,
  },
  {
    id: 'body-lent',
    cause: 'body',
    level: 'praise',
    when: (f) => f.r.face.weight < THIN_FACE && (f.interlined || f.combination),
    says: () => 'The layers behind lend body to a thin face.',
    rests: COMMON,
  },
  {
    id: 'light-lining-suits-heavy-face',
    cause: 'body',
    level: 'praise',
    when: (f) =>
      f.r.face.weight >= HEAVY_FACE &&
      f.r.behind.length === 1 &&
      (f.r.behind[0]?.weight ?? LIGHT_LINING) < LIGHT_LINING,
    says: () => 'A light lining suits a heavy face.',
    rests: COMMON,
  },
  {
    id: 'heavy-hang',
    cause: 'hang-weight',
    level: 'caution',
    when: (f) => f.r.hangKgPerMetre >= HEAVY_PER_METRE,
    says: (f) =>
      `Heavy: about ${f.r.hangKg.toFixed(0)} kg on the rod. The rod maker's rating and a competent installer decide rod, brackets and fixing.`,
    rests: 'computed weight of the cloth as it hangs; guidance only',
  },
];
