/** The working of a shower curtain: every step with its figures and the setting or source that it rests on. */
import type { Cloth } from '#shared/cloth.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { ShowerCurtainTreatment } from '#shared/treatments/shower-curtain.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import { sayCut, workGrams, workOrder, workRows } from '../work-rows.ts';
import { countShowerWidths, curtainPieces } from './count-shower-widths.ts';
import type { ShowerCurtainSheet } from './estimate-shower-curtain.ts';
import type { LaidShower, ShowerCloth, ShowerPart } from './lay-shower.ts';

export function workShowerCurtain(
  curtain: ShowerCurtainTreatment,
  made: {
    readonly cloths: readonly ShowerCloth[];
    readonly laid: readonly LaidShower[];
    readonly sheet: ShowerCurtainSheet;
  },
  massOf: (cloth: Cloth) => number,
  say: Say,
): WorkingStep[] {
  return [
    ...made.cloths.flatMap((each, index) => {
      const laid = made.laid[index];
      return laid ? workCloth(curtain, each, laid, say) : [];
    }),
    ...workEyelets(curtain, made.sheet, say),
    workGrams(
      made.cloths.map((each) => each.cloth),
      made.laid.map((each) => each.line),
      massOf,
      say,
    ),
  ];
}

function workCloth(curtain: ShowerCurtainTreatment, given: ShowerCloth, laid: LaidShower, say: Say): WorkingStep[] {
  const { cloth, layer, parts } = given;
  const key = layer === 0 ? '' : `layer-${layer}-`;
  const steps = parts.flatMap((part, index) =>
    workPart(index === 0 ? key : `${key}${part.name}-`, curtain, cloth, part, laid, say),
  );
  if (laid.rows) return [...steps, ...workRows(key, cloth, laid.rows, laid.line, curtain.practice, say)];
  const many = curtain.quantity > 1 ? `${curtain.quantity} × ` : '';
  return [
    ...steps,
    step(
      `${key}laid-out`,
      `${cloth.name}, run sideways`,
      `${many}${say.length(laid.line.cutLength)}`,
      say.cloth(laid.line.plan),
      'the cut length fits across the cloth: no seams, and no more cloth than upright',
    ),
    workOrder(key, cloth, laid.line, curtain.practice, say),
  ];
}

function workPart(
  key: string,
  curtain: ShowerCurtainTreatment,
  cloth: Cloth,
  part: ShowerPart,
  laid: LaidShower,
  say: Say,
): WorkingStep[] {
  const own = curtain.practice.showerCurtain;
  const pieces = curtainPieces(curtain);
  const hemmed = part.name === 'curtain' || part.name === 'liner';
  const steps = [
    step(
      `${key}cut-width`,
      `${cloth.name}, ${part.name}, cut width`,
      hemmed
        ? `${say.length(curtain.finishedWidth)} + ${2 * pieces} × ${say.length(own.sideHem)}`
        : say.length(curtain.finishedWidth),
      say.length(part.width),
      hemmed ? 'practice: side hem of each edge' : 'edge to edge, inside the side hems of the face',
    ),
    workLength(key, curtain, cloth, part, say),
  ];
  if (laid.widths === null) return steps;
  const widths = countShowerWidths(pieces, part.width, cloth.usableWidth, curtain.practice.seam);
  return [
    ...steps,
    step(
      `${key}widths`,
      `${cloth.name}, ${part.name}, widths`,
      `${say.length(part.width)} ÷ ${say.length(cloth.usableWidth)} = ${say.number(part.width / cloth.usableWidth)}, up`,
      String(widths),
      curtain.practice.seam > 0 ? 'whole widths, joins counted' : 'whole widths',
    ),
  ];
}

function workLength(
  key: string,
  curtain: ShowerCurtainTreatment,
  cloth: Cloth,
  part: ShowerPart,
  say: Say,
): WorkingStep {
  const own = curtain.practice.showerCurtain;
  const base = [say.length(curtain.finishedLength), say.length(own.topHem)];
  const id = `${key}plain-cut`;
  const label = `${cloth.name}, ${part.name}, cut before repeat`;
  const plain = say.length(part.plain);
  switch (part.name) {
    case 'curtain':
      return step(
        id,
        label,
        sayCut([...base, say.length(own.bottomHem)], curtain.practice.shrinkage, say),
        plain,
        `practice: top and bottom hem${curtain.practice.shrinkage > 0 ? ', shrinkage before rounding' : ''}`,
      );
    case 'liner':
      return step(
        id,
        label,
        `${base.join(' + ')} + ${say.length(own.bottomHem)} − ${say.length(own.linerShorter)}`,
        plain,
        'practice: hems as the curtain, how much shorter the liner hangs',
      );
    case 'lining':
      return step(
        id,
        label,
        `${base.join(' + ')} + ${say.length(own.liningHem)} − ${say.length(own.liningShorter)}`,
        plain,
        'practice: lining hem, how much shorter it hangs',
      );
    case 'interlining':
      return step(id, label, base.join(' + '), plain, 'practice: top hem, no hem of its own');
  }
}

function workEyelets(curtain: ShowerCurtainTreatment, sheet: ShowerCurtainSheet, say: Say): WorkingStep[] {
  const own = curtain.practice.showerCurtain;
  const count = sheet.eyelets.places.length;
  const width = say.length(sheet.finished.width);
  return [
    step(
      'eyelets',
      'eyelets of one piece',
      curtain.eyelets === null ? `${width} ÷ ${say.length(own.eyeletSpacing)}, up` : `${curtain.eyelets}`,
      String(count),
      curtain.eyelets === null ? 'practice: one for each spacing; one more where that keeps them off a seam' : 'given',
    ),
    step(
      'eyelet-spacing',
      'between eyelets',
      `(${width} − 2 × ${say.length(own.eyeletInset)}) ÷ ${count - 1}`,
      say.length(sheet.eyelets.spacing),
      'practice: outer eyelets from the edge',
    ),
  ];
}
