/** One valance, cornice or row of swags from a few wire fields, read by the program's own readers, and its take-off. */
import { checkCornice } from '#app/estimating/cornice/check-cornice.ts';
import { estimateCornice } from '#app/estimating/cornice/estimate-cornice.ts';
import type { CorniceSheet } from '#app/estimating/cornice/estimate-cornice.ts';
import type { EstimateGiven } from '#app/estimating/estimate.ts';
import { speaker } from '#app/estimating/say.ts';
import { checkSwags } from '#app/estimating/swags/check-swags.ts';
import { estimateSwags } from '#app/estimating/swags/estimate-swags.ts';
import type { SwagsSheet } from '#app/estimating/swags/estimate-swags.ts';
import type { TopEstimate } from '#app/estimating/top-treatment/top-estimate.ts';
import { checkValance } from '#app/estimating/valance/check-valance.ts';
import { estimateValance } from '#app/estimating/valance/estimate-valance.ts';
import type { ValanceSheet } from '#app/estimating/valance/sheet-valance.ts';
import { resolveCloth, weightOf } from '#app/lining/cloth/resolve-cloth.ts';
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Fault } from '#shared/fault.ts';
import { sayFault } from '#shared/fault.ts';
import { toCloth } from '#shared/job-file/read-cloth.ts';
import { readPractice } from '#shared/job-file/read-practice.ts';
import { readCornice, readCornicePractice, wireCornice, wireCornicePractice } from '#shared/job-file/wire-cornice.ts';
import { wireName } from '#shared/job-file/wire-fields.ts';
import { wireCloth } from '#shared/job-file/wire-job.ts';
import { wirePractice } from '#shared/job-file/wire-practice.ts';
import { wireQuantity } from '#shared/job-file/wire-stacks.ts';
import { readSwags, readSwagsPractice, wireSwags, wireSwagsPractice } from '#shared/job-file/wire-swags.ts';
import { readValance, readValancePractice, wireValance, wireValancePractice } from '#shared/job-file/wire-valance.ts';
import { lengthFrom, lengthIn } from '#shared/length.ts';
import type { LengthUnit } from '#shared/length.ts';
import { defaultPractice } from '#shared/practice-defaults.ts';
import { defaultCornicePractice } from '#shared/treatments/cornice-practice.ts';
import { defaultSwagsPractice } from '#shared/treatments/swags-practice.ts';
import { defaultValancePractice } from '#shared/treatments/valance-practice.ts';

type Loose = Readonly<Record<string, unknown>>;

export interface TopCase {
  readonly units?: LengthUnit;
  /** Fields of the treatment, over a plain one of 60 in. */
  readonly fields?: Loose;
  readonly cloth?: Loose;
  /** Own cloth besides, with an id each. */
  readonly others?: readonly Loose[];
  readonly behind?: readonly string[];
  /** The general practice, and the kind's own section. */
  readonly practice?: Loose;
  readonly making?: Loose;
}

export interface Made<Sheet> extends TopEstimate<Sheet> {
  /** A length of the estimate in the case's units. */
  readonly in: (length: number) => number;
  readonly yards: (length: number) => number;
}

interface Setting {
  readonly units: LengthUnit;
  readonly face: FaceCloth;
  readonly behind: readonly BackCloth[];
  readonly given: EstimateGiven;
  readonly base: {
    readonly name: string;
    readonly key: string;
    readonly quantity: number;
    readonly practice: ReturnType<typeof defaultPractice>;
    readonly stacks: Record<string, never>;
    readonly face: string;
    readonly pattern: null;
  };
}

const baseShape = { name: wireName, face: wireName, quantity: wireQuantity.optional() };

function setUp(given: TopCase): Setting {
  const units = given.units ?? 'in';
  const own: Cloth[] = [{ id: 'face', role: 'face', width: 54, ...given.cloth }, ...(given.others ?? [])].map((cloth) =>
    toCloth(wireCloth.parse(cloth), units),
  );
  const clothOf = (id: string): Cloth | null => resolveCloth(id, own);
  const face = clothOf('face');
  if (face?.role !== 'face') throw new Error('the case has no face');
  const behind = (given.behind ?? []).map((id) => {
    const cloth = clothOf(id);
    if (!cloth || cloth.role === 'face') throw new Error(`no lining ${id}`);
    return cloth;
  });
  const quantity = typeof given.fields?.['quantity'] === 'number' ? given.fields['quantity'] : 1;
  const practice = readPractice(wirePractice.parse(given.practice ?? {}), defaultPractice(units), units);
  return {
    units,
    face,
    behind,
    given: {
      massOf: (cloth) => weightOf(cloth).gramsPerM2,
      clothOf,
      say: speaker(units, 'en-US'),
      billableWidth: lengthFrom(54, 'in'),
    },
    base: { name: 'Top', key: 'top', quantity, practice, stacks: {}, face: 'face', pattern: null },
  };
}

function finish<Sheet>(faults: readonly Fault[], { units }: Setting, estimate: () => TopEstimate<Sheet>): Made<Sheet> {
  if (faults.length > 0) throw new Error(faults.map(sayFault).join('\n'));
  return { ...estimate(), in: (length) => lengthIn(length, units), yards: (length) => lengthIn(length, 'yd') };
}

const VALANCE = { name: 'Top', face: 'face', kind: 'valance', style: 'tailored', width: 60, finishedLength: 16 };

function readValanceCase(given: TopCase, set: Setting) {
  const wire = wireValance(baseShape).parse({ ...VALANCE, ...given.fields });
  const section = wireValancePractice.parse(given.making ?? {});
  const making = readValancePractice(section, defaultValancePractice(set.units), set.units);
  return readValance(wire, set.base, making, set.units);
}

export function valanceFaults(given: TopCase): readonly Fault[] {
  const set = setUp(given);
  return checkValance(readValanceCase(given, set), set.face, set.behind, set.units, set.given.clothOf);
}

export function valanceCase(given: TopCase): Made<ValanceSheet> {
  const set = setUp(given);
  const valance = readValanceCase(given, set);
  return finish(valanceFaults(given), set, () => estimateValance(valance, set.face, set.behind, set.given));
}

const CORNICE = { name: 'Top', face: 'face', kind: 'cornice', width: 60, finishedLength: 14, return: 5.5 };

function readCorniceCase(given: TopCase, set: Setting) {
  const wire = wireCornice(baseShape).parse({ ...CORNICE, ...given.fields });
  const section = wireCornicePractice.parse(given.making ?? {});
  const making = readCornicePractice(section, defaultCornicePractice(set.units), set.units);
  return readCornice(wire, set.base, making, set.units);
}

export function corniceFaults(given: TopCase): readonly Fault[] {
  const set = setUp(given);
  return checkCornice(readCorniceCase(given, set), set.face, set.behind, set.units, set.given.clothOf);
}

export function corniceCase(given: TopCase): Made<CorniceSheet> {
  const set = setUp(given);
  const cornice = readCorniceCase(given, set);
  return finish(corniceFaults(given), set, () => estimateCornice(cornice, set.face, set.behind, set.given));
}

const SWAGS = { name: 'Top', face: 'face', kind: 'swags', style: 'overlapped', width: 88, finishedLength: 18 };

function readSwagsCase(given: TopCase, set: Setting) {
  const wire = wireSwags(baseShape).parse({ ...SWAGS, ...given.fields });
  const section = wireSwagsPractice.parse(given.making ?? {});
  const making = readSwagsPractice(section, defaultSwagsPractice(set.units), set.units);
  return readSwags(wire, set.base, making, set.units);
}

export function swagsFaults(given: TopCase): readonly Fault[] {
  const set = setUp(given);
  return checkSwags(readSwagsCase(given, set), set.face, set.behind, set.units, set.given.clothOf);
}

export function swagsCase(given: TopCase): Made<SwagsSheet> {
  const set = setUp(given);
  const swags = readSwagsCase(given, set);
  return finish(swagsFaults(given), set, () => estimateSwags(swags, set.face, set.behind, set.given));
}

/** The lines of the take-off by cloth; the first of a cloth that lies in several layers. */
export function lineOf(made: TopEstimate<unknown>, cloth = 'face'): TopEstimate<unknown>['takeoff'][number] {
  const line = made.takeoff.find((each) => each.cloth === cloth);
  if (!line) throw new Error(`no line of ${cloth}`);
  return line;
}

export function stepOf(made: TopEstimate<unknown>, id: string): { readonly formula: string; readonly value: string } {
  const found = made.working.find((each) => each.id === id);
  if (!found) throw new Error(`no step ${id} among ${made.working.map((each) => each.id).join(', ')}`);
  return { formula: found.formula, value: found.value };
}

/** A practice in which nothing is added: what stays is the treatment itself. */
export const BARE_VALANCE = {
  sideHem: 0,
  wrap: 0,
  boardTurn: 0,
  bottomHem: 0,
  facedSeam: 0,
  balloonTakeUp: 0,
  boardCover: 'none',
} as const;
