import { THIN_FACE } from '../cloth/thin-face.ts';
import { IDEAL_BODY, STIFF, stiffest } from '../body.ts';
import type { MakeKind } from '../body.ts';
import { KIND_NAMES } from '../place-of-kind.ts';
import type { RoomUse } from '#shared/words.ts';
import type { Rule } from './rule.ts';
import { ANYWHERE, AT_GLASS, COMMON } from './rule.ts';

/** Kilograms a metre of rod above which a light pole and its fixings want a second look (assumed; guidance only). */
const HEAVY_PER_METRE = 4.5;
/** And in all, however long the rod. */
const HEAVY_IN_ALL = 10;
/** Grams a square metre of a stack that makes bulky pleats (assumed). */
const BULKY = 650;
const HEAVY_FACE = 300;
const LIMP_FLAT = 2.2;
/** Rooms that daylight should come into (common practice). */
const LIGHT_ROOMS: readonly RoomUse[] = ['bath', 'kitchen', 'sunroom'];
const BADLY: Readonly<Record<MakeKind, string>> = {
  gathered: 'gathers badly',
  pleated: 'pleats and gathers badly',
  waved: 'makes poor waves',
  flat: 'hangs badly',
  swagged: 'swags badly',
  folded: 'folds badly',
};

/** How it gathers, folds and hangs. */
export const MAKE_RULES: readonly Rule[] = [
  {
    id: 'stiff-blackout-gathers-badly',
    cause: 'stiffness',
    level: 'caution',
    where: ANYWHERE,
    when: (f) => f.blackout && f.make !== 'flat' && stiffest(f.r.layers) >= STIFF,
    says: (f) => `This blackout is stiff: it ${BADLY[f.make]}. A soft blackout folds like cloth.`,
    rests: `${COMMON}: three-pass blackout suits flat things; in pleats it is a caution, not a stop`,
  },
  {
    id: 'blackout-suits-flat',
    cause: 'stiffness',
    level: 'praise',
    where: AT_GLASS,
    when: (f) => f.threePass && f.make === 'flat' && f.shade === null,
    says: (f) =>
      f.r.place === 'top'
        ? 'A stiff blackout suits a flat board: few stitches, and it lies smooth.'
        : 'A stiff blackout suits a flat heading: few stitches, and it hangs smooth.',
    rests: `${COMMON}: tab and grommet panels, tailored valances on a board, flat things`,
  },
  {
    id: 'soft-blackout-folds',
    cause: 'stiffness',
    level: 'praise',
    where: AT_GLASS,
    when: (f) => f.softBlackout && (f.make !== 'flat' || f.shade !== null),
    says: (f) =>
      f.shade === null
        ? 'A soft blackout drapes well and folds like cloth.'
        : 'A soft blackout suits a shade: it folds like cloth and closes round the needle.',
    rests: COMMON,
  },
  {
    id: 'bulky-heading',
    cause: 'stiffness',
    level: 'note',
    to: 'client',
    when: (f) =>
      (f.heavyInterlining || f.r.layers.length > 3 || f.r.gsm >= BULKY) && f.make !== 'flat' && f.shade === null,
    says: () => 'So thick a stack makes bulky pleats and draws back wider: allow more wall beside the window.',
    rests: `${COMMON}: bulk at the heading and at the stackback`,
  },
  {
    id: 'bulky-shade',
    cause: 'stiffness',
    level: 'caution',
    costs: 0.25,
    when: (f) => f.shade !== null && (f.heavyInterlining || f.r.layers.length > 3),
    says: () => 'So thick a stack folds up badly in a shade and hangs deep over the glass when raised.',
    rests: `${COMMON}: a Roman shade takes a light interlining`,
  },
  {
    id: 'limp-for-flat',
    cause: 'stiffness',
    level: 'note',
    where: AT_GLASS,
    when: (f) => f.make === 'flat' && (f.shade !== null || f.r.place === 'top') && f.r.readings.body < LIMP_FLAT,
    says: () => 'Thin for a flat make: a firmer lining or an interlining keeps it from rippling.',
    rests: `${COMMON}: what hangs flat wants firm cloth`,
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
    where: AT_GLASS,
    when: (f) => f.r.face.weight < THIN_FACE && !f.overThick && (f.interlined || f.combination || f.firmLining),
    says: (f) =>
      f.strongSun && !f.nearlyDark
        ? 'The layers behind lend body to a thin face and keep it from paling in strong sun.'
        : 'The layers behind lend body to a thin face.',
    rests: COMMON,
  },
  {
    id: 'thick-for-thin-face',
    cause: 'body',
    level: 'note',
    to: 'client',
    costs: 0.13,
    where: AT_GLASS,
    when: (f) => f.overThick,
    says: () => 'So much flannel hides the fall of a thin face: a very light one is enough to give it body.',
    rests: `${COMMON}: interlining runs from very light, body for thin silk, to very thick`,
  },
  {
    id: 'light-lining-suits-heavy-face',
    cause: 'body',
    level: 'praise',
    where: AT_GLASS,
    when: (f) => f.r.face.weight >= HEAVY_FACE && f.lightLining,
    says: () => 'A light lining suits a heavy face.',
    rests: COMMON,
  },
  {
    id: 'light-lining-suits-make',
    cause: 'body',
    level: 'praise',
    where: ['away'],
    when: (f) => f.lightLining,
    says: (f) =>
      `A light lining is right for a ${KIND_NAMES[f.r.input.treatment.kind]}: no light comes from behind it.`,
    rests: COMMON,
  },
  {
    id: 'lining-helps-make',
    cause: 'body',
    level: 'note',
    costs: 0.1,
    where: ['board', 'away'],
    when: (f) => f.unlined && f.r.input.treatment.liner !== true,
    says: (f) =>
      f.r.place === 'board'
        ? 'A light lining finishes the box inside, where it is seen from below.'
        : 'A light lining would help it hang and hide its hems.',
    rests: `${COMMON}: a light lining where light does not matter`,
  },
  {
    id: 'more-than-it-needs',
    cause: 'body',
    level: 'note',
    costs: 0.3,
    where: ['board', 'away'],
    when: (f) => (f.interlined && f.r.place === 'away') || f.blackout || f.dimOut || f.combination,
    says: (f) => `More than a ${KIND_NAMES[f.r.input.treatment.kind]} needs: no light comes from behind it.`,
    rests: `${COMMON}: a light lining where light does not matter`,
  },
  {
    id: 'light-lining-lets-light',
    cause: 'body',
    level: 'praise',
    when: (f) => f.lightLining && LIGHT_ROOMS.includes(f.use) && f.draws,
    says: () => 'A light lining lets the daylight through, as this room wants.',
    rests: `${COMMON}: a light lining where light should come through`,
  },
  {
    id: 'thin-face-pales',
    cause: 'body',
    level: 'note',
    to: 'client',
    when: (f) =>
      f.strongSun && f.lightLining && f.r.face.weight < THIN_FACE && !f.nearlyDark && f.r.input.face.family !== 'sheer',
    says: () => 'In strong sun a thin face pales with the light behind it: a heavier lining keeps its colour.',
    rests: COMMON,
  },
  {
    id: 'heavy-hang',
    cause: 'hang-weight',
    level: 'caution',
    when: (f) => f.r.hangKgPerMetre >= HEAVY_PER_METRE || f.r.hangKg >= HEAVY_IN_ALL,
    says: () =>
      "Heavy on the rod: the rod maker's rating and a competent installer decide rod, brackets and fixing into structure.",
    rests: (f) => `computed: ${f.r.say.weight(f.r.hangKg)} of cloth as it hangs; guidance only`,
  },
];
