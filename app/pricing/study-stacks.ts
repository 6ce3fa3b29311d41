/** Take-off and judgement of any stack at one window; each is worked out once. */
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import type { Opening, Room } from '#shared/job.ts';
import type { Judgement } from '#shared/result.ts';
import { TICKS_PER_INCH } from '#shared/length.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { estimateTreatment } from '#app/estimating/estimate-treatment.ts';
import type { MadeTreatment } from '#app/estimating/estimate-treatment.ts';
import type { Estimate } from '#app/estimating/estimate.ts';
import { countStitches } from '#app/lining/light-and-heat/count-stitches.ts';
import { judgeStack } from '#app/lining/judge-stack.ts';
import type { JudgeInput } from '#app/lining/judge-stack.ts';
import { judgedOpening } from '#app/lining/judged-opening.ts';
import { isPelmet, judgedForm } from '#app/lining/judged-form.ts';
import { weightOf } from '#app/lining/cloth/resolve-cloth.ts';
import { clothOf } from './job-pricing.ts';
import type { JobPricing } from './job-pricing.ts';
import { roomFor } from './room-for.ts';

export interface Study {
  readonly made: MadeTreatment;
  /** What was judged: `judgeOpening` takes it too. */
  readonly input: JudgeInput;
  readonly judgement: Judgement;
}
export type StudyStack = (face: FaceCloth, behind: readonly BackCloth[]) => Study;

export function studyStacks(room: Room, opening: Opening, treatment: Treatment, pricing: JobPricing): StudyStack {
  const asked = roomFor(room, opening, treatment, pricing);
  const known = new Map<string, Study>();
  return (face, behind) => {
    const key = JSON.stringify([face.id, ...behind.map((layer) => layer.id)]);
    const found = known.get(key);
    if (found) return found;
    const made = estimateTreatment(treatment, face, behind, {
      massOf: (cloth) => weightOf(cloth).gramsPerM2,
      clothOf: (id) => clothOf(pricing, id),
      say: pricing.say,
      billableWidth: pricing.job.priceBook.labour.billableWidth,
      place: { opening: opening.width, use: room.use, heatSourceBelow: opening.heatSourceBelow },
    });
    const { estimate } = made;
    const input: JudgeInput = {
      face,
      behind,
      room: asked,
      opening: judgedOpening(opening, estimate.finished),
      treatment: judgedForm(treatment, { finished: estimate.finished, sheet: made.sheet }, (id) =>
        clothOf(pricing, id),
      ),
      pelmet: opening.treatments.some((other) => other.key !== treatment.key && isPelmet(other)),
      units: pricing.job.units,
      locale: pricing.job.locale,
      made: {
        fullnessMade: estimate.fullnessMade ?? 1,
        halfWidths: estimate.halfWidths,
        finishedWidth: estimate.finished.width,
        liningMatchesFace: estimate.seamsLineUp || hasSameWidths(estimate, face, behind),
        sewn: countStitches(treatment, estimate, made.sheet),
        grams: estimate.grams / treatment.quantity,
        brackets: bracketsOf(estimate, treatment.quantity),
      },
    };
    const study = { made, input, judgement: judgeStack(input) };
    known.set(key, study);
    return study;
  };
}

/** A few inches narrower is right as long as the lining is cut in as many widths: each seam then drifts by an inch or so. */
const FEW_INCHES = 4 * TICKS_PER_INCH;

function hasSameWidths({ takeoff }: Estimate, face: FaceCloth, behind: readonly BackCloth[]): boolean {
  const [first, ...others] = takeoff;
  const widths = first?.halfWidths ?? null;
  if (widths === null) return false;
  const near = behind.every((layer) => Math.abs(face.usableWidth - layer.usableWidth) <= FEW_INCHES);
  const lined = others.filter(({ role }) => role !== 'face');
  return near && lined.every((line) => line.halfWidths === widths);
}

/** Brackets of one treatment; undefined where it hangs from none. */
function bracketsOf(estimate: Estimate, quantity: number): number | undefined {
  const found = estimate.parts.find((each) => each.part === 'bracket');
  return found !== undefined && 'count' in found ? found.count / quantity : undefined;
}
