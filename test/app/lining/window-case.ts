/** A window to judge stacks at, for tests: 60 x 54 in, a pinch-pleated pair with returns, hem half an inch off the floor. */
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import { lengthFrom } from '#shared/length.ts';
import type { Judgement } from '#shared/result.ts';
import type { GenericClothId } from '#shared/words.ts';
import type { JudgedOpening, JudgedRoom, JudgedTreatment, JudgeInput, Made } from '#app/lining/judge-input.ts';
import { judgeStack } from '#app/lining/judge-stack.ts';
import { STARTER_CLOTH } from '#app/lining/cloth/starter-cloth.ts';

const WIDTH = lengthFrom(54, 'in');

/** An invented face, plain and of unknown values unless told. */
export function faceOf(told: Partial<FaceCloth> = {}): FaceCloth {
  return {
    id: 'face',
    role: 'face',
    family: 'print',
    name: 'Larch stripe',
    width: WIDTH,
    usableWidth: WIDTH,
    repeat: null,
    railroad: false,
    content: null,
    weight: null,
    colour: null,
    shade: null,
    visible: null,
    uv: null,
    solar: null,
    price: null,
    ...told,
  };
}

export function starters(...ids: readonly GenericClothId[]): BackCloth[] {
  return ids.map((id) => STARTER_CLOTH[id]);
}

/** A starter cloth with some values changed, under an id of its own. */
export function ownOf(id: GenericClothId, told: Partial<BackCloth>): BackCloth {
  return { ...STARTER_CLOTH[id], id: 'own', ...told } as BackCloth;
}

export interface Told {
  readonly face?: Partial<FaceCloth>;
  readonly room?: Partial<JudgedRoom>;
  readonly opening?: Partial<JudgedOpening>;
  readonly treatment?: Partial<JudgedTreatment>;
  readonly made?: Partial<Made>;
}

export function inputOf(behind: readonly BackCloth[], told: Told = {}): JudgeInput {
  return {
    face: faceOf(told.face),
    behind,
    room: { use: 'living', facing: 'N', climate: 'mixed', ...told.room },
    opening: {
      width: lengthFrom(60, 'in'),
      height: lengthFrom(54, 'in'),
      sill: lengthFrom(30, 'in'),
      glazing: 'double',
      heatSourceBelow: false,
      ...told.opening,
    },
    treatment: {
      kind: 'panels',
      heading: 'pinch-pleat',
      arrangement: 'pair',
      mount: { where: 'wall', above: lengthFrom(4, 'in') },
      rodWidth: lengthFrom(72, 'in'),
      finishedLength: lengthFrom(87.5, 'in'),
      returns: { left: lengthFrom(3.5, 'in'), right: lengthFrom(3.5, 'in') },
      overlap: lengthFrom(3.5, 'in'),
      ...told.treatment,
    },
    made: {
      fullnessMade: 2.47,
      halfWidths: 8,
      finishedWidth: lengthFrom(82.5, 'in'),
      liningMatchesFace: true,
      ...told.made,
    },
  };
}

export function judge(behind: readonly BackCloth[], told: Told = {}): Judgement {
  return judgeStack(inputOf(behind, told));
}

export function rulesOf(judgement: Judgement): string[] {
  return judgement.advice.map((advice) => advice.rule);
}

export function levelOf(judgement: Judgement, rule: string): string | undefined {
  return judgement.advice.find((advice) => advice.rule === rule)?.level;
}
