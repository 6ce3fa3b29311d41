/** Any treatment, whatever its kind: what no cloth could make, and the take-off with what the workroom makes it by. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { exhaustive } from '#shared/fault.ts';
import type { Fault, Warning } from '#shared/fault.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { Advice } from '#shared/result.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { adviseBlackoutSeams } from './panels/advise-blackout-seams.ts';
import { advisePanels } from './panels/advise-panels.ts';
import { checkBedSkirt } from './bed-skirt/check-bed-skirt.ts';
import { estimateBedSkirt } from './bed-skirt/estimate-bed-skirt.ts';
import { checkBands } from './panels/check-bands.ts';
import { checkBolts } from './check-bolts.ts';
import { checkPanels } from './panels/check-panels.ts';
import { checkPlacement } from './check-placement.ts';
import { checkCornice } from './cornice/check-cornice.ts';
import { estimateCornice } from './cornice/estimate-cornice.ts';
import type { CutGroup } from './cut-group.ts';
import { cutsOfPanels } from './panels/cuts-of-panels.ts';
import type { Estimate, EstimateGiven } from './estimate.ts';
import { estimatePanels } from './panels/estimate-panels.ts';
import { joinedFace } from './panels/join-repeats.ts';
import { checkRomanShade } from './roman-shade/check-roman-shade.ts';
import { adviseMotor } from './roman-shade/work-motor.ts';
import { estimateRomanShade } from './roman-shade/estimate-roman-shade.ts';
import { checkShowerCurtain } from './shower-curtain/check-shower-curtain.ts';
import { estimateShowerCurtain } from './shower-curtain/estimate-shower-curtain.ts';
import { checkSwags } from './swags/check-swags.ts';
import { estimateSwags } from './swags/estimate-swags.ts';
import { checkValance } from './valance/check-valance.ts';
import { estimateValance } from './valance/estimate-valance.ts';
import { warnPanels } from './panels/warn-panels.ts';
import { warnSeams } from './panels/warn-seams.ts';
import { warnSupply } from './warn-supply.ts';
import { warnPlacement } from './warn-placement.ts';
import { withPlacement } from './with-placement.ts';

/** A take-off with what only some kinds have: empty where a kind has nothing to say. */
export interface MadeTreatment {
  readonly estimate: Estimate;
  /** What a joint cut plan needs. */
  readonly cuts: readonly CutGroup[];
  /** Named measures for the work drawing, by kind; null where the working says it all. */
  readonly sheet: object | null;
  readonly advice: readonly Advice[];
  readonly warnings: readonly Warning[];
}

type ClothOf = (id: string) => Cloth | null;

/** Every fault of the treatment under this stack: with none, `estimateTreatment` may be asked. */
export function checkTreatment(
  treatment: Treatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  unit: LengthUnit,
  clothOf: ClothOf,
): Fault[] {
  const making = checkMaking(treatment, face, behind, unit, clothOf);
  const faults = making.length > 0 ? making : checkPlacement(treatment, face, behind.length > 0, unit);
  if (faults.length > 0) return faults;
  return checkBolts(treatment, face, behind, unit, clothOf, (given) =>
    estimateTreatment(treatment, face, behind, given),
  );
}

function checkMaking(
  treatment: Treatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  unit: LengthUnit,
  clothOf: ClothOf,
): Fault[] {
  switch (treatment.kind) {
    case 'panels': {
      const faults = checkPanels(treatment, face, behind, unit);
      return faults.length > 0 ? faults : checkBands(treatment, face, unit, clothOf);
    }
    case 'valance':
      return checkValance(treatment, face, behind, unit, clothOf);
    case 'cornice':
      return checkCornice(treatment, face, behind, unit, clothOf);
    case 'swags':
      return checkSwags(treatment, face, behind, unit, clothOf);
    case 'roman-shade':
      return checkRomanShade(treatment, face, behind, unit);
    case 'bed-skirt':
      return checkBedSkirt(treatment, face, behind, treatment.deck === null ? null : clothOf(treatment.deck), unit);
    case 'shower-curtain':
      return checkShowerCurtain(treatment, face, behind, linerOf(treatment, clothOf), unit);
    default:
      return exhaustive(treatment);
  }
}

function linerOf(curtain: Extract<Treatment, { kind: 'shower-curtain' }>, clothOf: ClothOf): Cloth | null {
  return curtain.liner.from === 'cloth' ? clothOf(curtain.liner.cloth) : null;
}

export function estimateTreatment(
  treatment: Treatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  given: EstimateGiven,
): MadeTreatment {
  const made = makeTreatment(treatment, face, behind, given);
  const clothOf = (id: string): Cloth | null => [face, ...behind].find((each) => each.id === id) ?? given.clothOf(id);
  return {
    ...made,
    estimate: withPlacement(treatment, made.estimate, face, behind.length > 0, given.say),
    warnings: [
      ...made.warnings,
      ...warnPlacement(treatment, made.estimate, face, behind.length > 0, given.say),
      ...warnSupply(treatment, made.estimate, clothOf, given.say),
    ],
  };
}

function makeTreatment(
  treatment: Treatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  given: EstimateGiven,
): MadeTreatment {
  const quiet = { advice: [], warnings: [] };
  switch (treatment.kind) {
    case 'panels': {
      const estimate = estimatePanels(treatment, face, behind, given);
      const warnings = [
        ...warnPanels(treatment, estimate, given.say),
        ...warnSeams(treatment, estimate, face, given.say),
      ];
      const advice = [
        ...advisePanels(treatment, given.place),
        ...adviseBlackoutSeams(treatment, face, behind, estimate.takeoff),
      ];
      const cuts = cutsOfPanels(treatment, estimate, joinedFace(treatment, face), behind);
      return { estimate, cuts, sheet: null, advice, warnings };
    }
    case 'valance': {
      const estimate = estimateValance(treatment, face, behind, given);
      return { estimate, cuts: estimate.cuts, sheet: estimate.sheet, advice: estimate.advice, warnings: [] };
    }
    case 'cornice': {
      const estimate = estimateCornice(treatment, face, behind, given);
      return { estimate, cuts: estimate.cuts, sheet: estimate.sheet, advice: estimate.advice, warnings: [] };
    }
    case 'swags': {
      const estimate = estimateSwags(treatment, face, behind, given);
      return { estimate, cuts: estimate.cuts, sheet: estimate.sheet, advice: estimate.advice, warnings: [] };
    }
    case 'roman-shade': {
      const estimate = estimateRomanShade(treatment, face, behind, given);
      const advice = adviseMotor(treatment);
      return { estimate, cuts: estimate.cuts, sheet: estimate.sheet, advice, warnings: estimate.sheet.warnings };
    }
    case 'bed-skirt': {
      const deck = treatment.deck === null ? null : given.clothOf(treatment.deck);
      const estimate = estimateBedSkirt(treatment, face, behind, { ...given, deck });
      return { estimate, cuts: estimate.cuts, sheet: estimate.sheet, ...quiet };
    }
    case 'shower-curtain': {
      const liner = linerOf(treatment, given.clothOf);
      const estimate = estimateShowerCurtain(treatment, face, behind, { ...given, liner });
      return { estimate, cuts: estimate.cuts, sheet: estimate.sheet, advice: [], warnings: estimate.sheet.warnings };
    }
    default:
      return exhaustive(treatment);
  }
}
