import type { RoomUse } from '#shared/words.ts';
import { nfpaMethod } from '../flame-method.ts';
import { lower, sayList } from '../say/say-number.ts';
import type { Rule } from './rule.ts';
import type { RuleFacts } from './rule-facts.ts';
import { ANYWHERE, COMMON } from './rule.ts';

const SLEEPING_ROOMS: readonly RoomUse[] = ['bedroom', 'nursery', 'child'];

/** Within this share of the limit between the two tests an assumed weight decides nothing. */
const NEAR = 0.1;
const TEST_1_TO = 700;

function nearLimit(gsm: number): string {
  return Math.abs(gsm - TEST_1_TO) <= NEAR * TEST_1_TO ? ', near the limit between the two tests: weigh the cloth' : '';
}

/** `; no certificate is known of larch print and standard lining, white`. */
function sayUntested(f: RuleFacts): string {
  return f.untested.length === 0 ? '' : `; no certificate is known of ${sayList(f.untested.map(lower))}`;
}

/** What is said always, and to whom. Local law and the makers decide, never the program. */
export const SAFETY_RULES: readonly Rule[] = [
  {
    id: 'heat-behind-cloth',
    cause: 'heat',
    level: 'caution',
    about: 'make',
    when: (f) => f.beforeHeat,
    says: (f) =>
      `It hangs before the heat below: end it at the sill, or hang a shade inside the frame. Before an electric heater it can burn; its maker decides (${f.r.say.clearances()}).`,
    rests: "the appliance maker's clearances decide; the figures are common home advice",
  },
  {
    id: 'heat-source-below',
    cause: 'heat',
    level: 'caution',
    where: ANYWHERE,
    about: 'make',
    when: (f) => f.r.input.opening.heatSourceBelow,
    says: (f) => `There is heat below this window: keep cloth clear of it, ${f.r.say.clearances()}.`,
    rests: "the appliance maker's clearances decide; the figures are common home advice",
  },
  {
    id: 'kitchen-flame',
    cause: 'stove',
    level: 'caution',
    where: ANYWHERE,
    about: 'make',
    when: (f) => f.use === 'kitchen',
    says: () => 'In a kitchen cloth keeps clear of stove, burners and open flames: beside them none is hung.',
    rests: `${COMMON}; the appliance maker's clearances decide`,
  },
  {
    id: 'flame-clothing-rule',
    cause: 'flame',
    level: 'caution',
    where: ANYWHERE,
    when: (f) => f.use === 'public' && f.clothingRule !== null,
    says: (f) =>
      `The certificate of ${f.clothingRule ?? 'a cloth'} is under a rule for clothing (16 CFR 1610) and proves nothing here: the whole stack is tested as local code and the authority having jurisdiction ask.`,
    rests:
      '16 CFR 1610 is about clothing; the whole stack has to comply, and the authority having jurisdiction decides',
  },
  {
    id: 'flame-test',
    cause: 'flame',
    level: 'caution',
    where: ANYWHERE,
    when: (f) => f.use === 'public',
    says: (f) => {
      const method = nfpaMethod(f.r.gsm, f.coated);
      return f.allCertified
        ? `Each cloth is certified, but layers that pass alone may fail together: have the stack tested (NFPA 701 test ${method} where that code holds).`
        : `The whole stack has to pass the flame test of local code and the authority having jurisdiction (often NFPA 701 test ${method}). Not each cloth here has a certificate of its own.`;
    },
    rests: (f) =>
      `about ${f.r.say.areaWeight(f.r.gsm)}${nearLimit(f.r.gsm)}; NFPA 701: test 1 to 700 g/m² (21 oz/yd²), test 2 above and for vinyl-coated blackout; BS 5867-2 types B and C in Britain; layers that pass alone may fail together (NISTIR 89-4138)${sayUntested(f)}; the authority having jurisdiction decides`,
  },
  {
    id: 'ways-out',
    cause: 'ways-out',
    level: 'note',
    where: ANYWHERE,
    about: 'make',
    when: (f) => f.use === 'public',
    says: () => 'Exits, escape windows and sprinklers stay free of cloth.',
    rests: COMMON,
  },
  {
    id: 'escape-window',
    cause: 'ways-out',
    level: 'note',
    about: 'make',
    when: (f) => f.draws && SLEEPING_ROOMS.includes(f.use),
    says: () => 'Where this window is the way out in a fire it has to open freely behind the cloth.',
    rests: COMMON,
  },
];
