/** The working of a valance: every measure of the sheet with its formula in figures and what it rests on. */
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import type { WorkingStep } from '#shared/result.ts';
import { isFull } from '#shared/treatments/valance.ts';
import type { FullValance, ValanceTreatment } from '#shared/treatments/valance.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import { flatAskedOf } from '../top-treatment/gather-widths.ts';
import { nameAddends, sayAddends } from '../top-treatment/work-parcel.ts';
import type { Addend } from '../top-treatment/work-parcel.ts';
import { workWidths } from '../top-treatment/work-widths.ts';
import type { LaidValance } from './lay-valance.ts';
import { faceAddends, finishedWidthOf, flatAddends, gatheredPiece, layerAddends } from './measure-valance.ts';

export function workFace(
  valance: ValanceTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  laid: LaidValance,
  say: Say,
): WorkingStep[] {
  const { returns, over } = valance;
  const making = valance.practice.valance;
  const width: Addend[] = [
    { says: 'face', length: valance.width },
    { says: 'left return', length: returns.left },
    { says: 'right return', length: returns.right },
  ];
  return [
    ...(over === null
      ? []
      : [
          step(
            'return',
            'return',
            `${say.length(over)} + ${say.length(making.overClearance)}`,
            `${say.length(returns.left)}, ${say.length(returns.right)}`,
            'practice: return of the treatment underneath and the clearance, unless given',
          ),
        ]),
    step(
      'finished-width',
      'width with returns',
      sayAddends(width, say),
      say.length(finishedWidthOf(valance)),
      nameAddends(width),
    ),
    ...(isFull(valance) ? workGathers(valance, say) : [workFlat(valance, say)]),
    workWidths('widths', 'widths', face, laid.face.widths, valance.practice, say),
    ...(laid.fullnessMade === null ? [] : [workFullness(valance, face, laid, say)]),
    workPlain(valance, behind, laid, say),
  ];
}

function workFlat(valance: ValanceTreatment, say: Say): WorkingStep {
  const sum = flatAddends(valance);
  const total = sum.reduce((all, { length, times = 1 }) => all + times * length, 0);
  return step(
    'cut-width',
    'cut width',
    sayAddends(sum, say),
    say.length(total),
    `${nameAddends(sum)}; practice: hem and wrap`,
  );
}

function workGathers(valance: FullValance, say: Say): WorkingStep[] {
  const { fullnessOver } = valance.practice;
  const asked = flatAskedOf(gatheredPiece(valance), fullnessOver);
  const ratio = say.number(valance.fullness / 1000, 3);
  const returns = valance.returns.left + valance.returns.right;
  const formula =
    fullnessOver === 'face' && returns > 0
      ? `${say.length(valance.width)} × ${ratio} + ${say.length(returns)}`
      : `${say.length(finishedWidthOf(valance))} × ${ratio}`;
  const source = valance.fullnessGiven ? 'fullness as written' : `practice: fullness of ${valance.style}`;
  return [
    step('flat-width', 'flat width', formula, say.length(asked), `${source}; practice: fullness over ${fullnessOver}`),
  ];
}

function workFullness(valance: ValanceTreatment, face: FaceCloth, laid: LaidValance, say: Say): WorkingStep {
  const { practice, returns } = valance;
  const making = valance.practice.valance;
  const { widths } = laid.face;
  const gathered = widths.by === 'gathers' ? widths.gathered : null;
  const joins = gathered?.joins ?? 0;
  const lost = practice.seam > 0 && joins > 0 ? ` − ${joins} × 2 × ${say.length(practice.seam)}` : '';
  const flat = gathered
    ? `${say.widths(gathered.halves)} × ${say.length(face.usableWidth)}${lost} − 2 × ${say.length(making.sideHem)}`
    : say.length(laid.made2 / 2);
  const over = practice.fullnessOver === 'face' && returns.left + returns.right > 0;
  return step(
    'fullness-made',
    'fullness made',
    over
      ? `(${flat} − ${say.length(returns.left + returns.right)}) ÷ ${say.length(valance.width)}`
      : `(${flat}) ÷ ${say.length(finishedWidthOf(valance))}`,
    say.number(laid.fullnessMade ?? 0),
    'practice: side hems and seams taken off',
  );
}

function workPlain(valance: ValanceTreatment, behind: readonly BackCloth[], laid: LaidValance, say: Say): WorkingStep {
  const sum = faceAddends(valance, behind);
  const { shrinkage } = valance.practice;
  const formula = sayAddends(sum, say);
  return step(
    'plain-cut',
    'cut before repeat',
    shrinkage > 0 ? `(${formula}) ÷ (1 − ${say.number(shrinkage / 1e6, 6)})` : formula,
    say.length(laid.face.plain),
    `${nameAddends(sum)}; practice: turns, hems and seams${shrinkage > 0 ? ', shrinkage before rounding' : ''}`,
  );
}

export function workLayer(
  valance: ValanceTreatment,
  layer: BackCloth,
  behind: readonly BackCloth[],
  index: number,
  laid: LaidValance,
  say: Say,
): WorkingStep[] {
  const own = laid.layers[index];
  if (!own) return [];
  const key = `layer-${index + 1}`;
  const sum = layerAddends(valance, layer, behind);
  return [
    workWidths(`${key}-widths`, `${layer.name}, widths`, layer, own.widths, valance.practice, say),
    step(
      `${key}-cut`,
      `${layer.name}, cut`,
      sayAddends(sum, say),
      say.length(own.plain),
      `${nameAddends(sum)}; practice: turns, hems and how much shorter`,
    ),
  ];
}
