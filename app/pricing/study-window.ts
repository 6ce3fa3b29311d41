/**
 * What the lining engine knows of a treatment that is priced already, for whoever asks after it: the readings of any
 * stack, why not another, and all that hangs at the opening together. Each is worked out when it is asked.
 */
import type { FaceCloth } from '#shared/cloth.ts';
import type { Job, Opening, Room } from '#shared/job.ts';
import type { TreatmentResult } from '#shared/result.ts';
import type { StackIds } from '#shared/treatments/treatment-base.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';
import type { ChooseInput, ChosenStack, ChosenStacks } from '#app/lining/choose/choose-stacks.ts';
import { explainStack } from '#app/lining/choose/explain-stack.ts';
import type { Explained } from '#app/lining/choose/explain-stack.ts';
import { judgeOpening } from '#app/lining/judge-opening.ts';
import type { HungTreatment, OpeningJudgement } from '#app/lining/judge-opening.ts';
import { stopOf } from '#app/lining/choose/left-out.ts';
import { listAskable } from '#app/lining/choose/list-askable.ts';
import { placeOf } from '#app/lining/place-of-kind.ts';
import { listReadings } from '#app/lining/say/list-readings.ts';
import type { ToldReading } from '#app/lining/say/list-readings.ts';
import { askStacks } from './ask-stacks.ts';
import { behindOf, faceOf, startPricing } from './job-pricing.ts';
import type { JobPricing } from './job-pricing.ts';
import { studyStacks } from './study-stacks.ts';
import type { StudyStack } from './study-stacks.ts';

interface Studied {
  readonly room: Room;
  readonly opening: Opening;
  readonly treatment: Treatment;
  readonly face: FaceCloth;
  readonly pricing: JobPricing;
  readonly study: StudyStack;
}

/** Throws when the job has no such treatment or no cloth for it: only what is priced can be asked after. */
function studyAt(job: Job, key: string): Studied {
  const pricing = startPricing(job);
  for (const room of job.rooms)
    for (const opening of room.openings)
      for (const treatment of opening.treatments) {
        const face = treatment.key === key ? faceOf(pricing, treatment.face) : null;
        if (face !== null)
          return { room, opening, treatment, face, pricing, study: studyStacks(room, opening, treatment, pricing) };
      }
  throw new Error(`nothing that is priced stands at "${key}"`);
}

/** Every reading of a stack at its window, with range, what it rests on and its step. */
export function readStack(job: Job, key: string, stack: StackIds): readonly ToldReading[] {
  const { pricing, face, study } = studyAt(job, key);
  return listReadings(study(faceOf(pricing, stack.face) ?? face, behindOf(pricing, stack.behind)).input);
}

/** "Why not this here?" for every stack that somebody might ask after, against the three on the table. */
export function explainStacks(job: Job, result: TreatmentResult): readonly Explained[] {
  const studied = studyAt(job, result.key);
  const [input, table] = [choiceOf(studied), tableOf(result)];
  return listAskable(job.cloth).map((behind) => explainStack(input, table, behind));
}

/** The same for one combination, by cloth id, room to street. */
export function explainBehind(job: Job, result: TreatmentResult, behind: readonly string[]): Explained {
  const studied = studyAt(job, result.key);
  return explainStack(choiceOf(studied), tableOf(result), behindOf(studied.pricing, behind));
}

function choiceOf({ room, opening, treatment, pricing, study, face }: Studied): ChooseInput {
  return askStacks(room, opening, treatment, pricing, study, face);
}

/** The three as they stand, whoever chose them; a stop that was insisted on stays the first thing said. */
function tableOf(result: TreatmentResult): ChosenStacks {
  const stackOf = (tier: Tier): ChosenStack => {
    const { stack, chosen, judgement, says } = result.tiers[tier];
    const why = chosen?.why ?? stopOf(judgement)?.says ?? `Chosen by hand. ${says}`;
    return { behind: stack.behind, why };
  };
  const [good, better, best] = TIERS.map(stackOf);
  if (good === undefined || better === undefined || best === undefined) throw new Error('there are three options');
  return { stacks: { good, better, best }, advised: result.advised, notChosen: result.notChosen };
}

/** Room to street (common practice): what dresses the head hangs before drapery, drapery before sheers, shades at the glass. */
function depthOf({ treatment, face }: Studied): number {
  if (placeOf(treatment.kind) === 'top') return 0;
  if (treatment.kind === 'roman-shade') return treatment.mount.where === 'inside' ? 4 : 3;
  return face.family === 'sheer' ? 2 : 1;
}

export interface HungStack {
  readonly key: string;
  readonly stack: StackIds;
  readonly drawn: boolean;
}

/** All that hangs at one opening together; null where nothing hangs before its glass. */
export function judgeTogether(job: Job, hung: readonly HungStack[]): OpeningJudgement | null {
  const found = hung.map(({ key, stack, drawn }) => {
    const studied = studyAt(job, key);
    const { pricing, face, study, treatment } = studied;
    const { input } = study(faceOf(pricing, stack.face) ?? face, behindOf(pricing, stack.behind));
    const each: HungTreatment = { name: treatment.name, input, drawn };
    return { ...studied, each };
  });
  const all = [...found]
    .filter(({ treatment }) => placeOf(treatment.kind) !== 'away')
    .sort((a, b) => depthOf(a) - depthOf(b));
  const [first] = all;
  if (first === undefined) return null;
  return judgeOpening(
    first.each.input.room,
    first.each.input.opening,
    all.map(({ each }) => each),
  );
}
