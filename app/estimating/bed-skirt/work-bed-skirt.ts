/** The working of a bed skirt: every step with its figures and the setting or source that it rests on. */
import type { Cloth } from '#shared/cloth.ts';
import { exhaustive } from '#shared/fault.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { BedSkirtTreatment } from '#shared/treatments/bed-skirt.ts';
import { toNearestTick } from '../round.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import { sayCut, workGrams, workOrder, workRows } from '../work-rows.ts';
import type { DeckCut } from './cut-deck.ts';
import type { LaidSkirt, SkirtCloth } from './lay-skirt.ts';
import type { MeasuredSkirt } from './measure-skirt.ts';

export function workBedSkirt(
  skirt: BedSkirtTreatment,
  measured: MeasuredSkirt,
  made: {
    readonly cloths: readonly SkirtCloth[];
    readonly laid: readonly LaidSkirt[];
    readonly deck: { readonly cloth: Cloth; readonly cut: DeckCut } | null;
    readonly fullnessMade: number | null;
  },
  massOf: (cloth: Cloth) => number,
  say: Say,
): WorkingStep[] {
  return [
    step(
      'perimeter',
      'three sides',
      measured.sides.map((side) => say.length(side.finished)).join(' + '),
      say.length(measured.perimeter),
      skirt.against === 'head' ? 'both long sides and the foot' : 'both ends and one long side',
    ),
    ...workPleats(skirt, measured, say),
    workStrip(skirt, measured, say),
    ...made.cloths.flatMap((each, index) => {
      const laid = made.laid[index];
      return laid ? workCloth(skirt, measured, each, laid, made.fullnessMade, say) : [];
    }),
    ...(made.deck ? [workDeck(skirt, made.deck.cloth, made.deck.cut, say)] : []),
    workGrams(
      made.cloths.map((each) => each.cloth),
      made.laid.map((each) => each.line),
      massOf,
      say,
    ),
  ];
}

function workPleats(skirt: BedSkirtTreatment, measured: MeasuredSkirt, say: Say): WorkingStep[] {
  if (skirt.style !== 'box-pleated') return [];
  const asked = say.length(skirt.practice.bedSkirt.boxPleat);
  return measured.sides.map((side) =>
    step(
      `pleats-${side.name}`,
      `box pleats, ${side.name}`,
      `${say.length(side.finished)} ÷ ${asked}, nearest ${side.pleats}; ${say.length(side.finished)} ÷ ${side.pleats}`,
      `${side.pleats} of ${say.length(side.visible)}, ${say.length(side.takeUp)} folded behind each`,
      'practice: visible width of a box pleat; whole pleats, then re-spaced',
    ),
  );
}

function workStrip(skirt: BedSkirtTreatment, measured: MeasuredSkirt, say: Say): WorkingStep {
  const own = skirt.practice.bedSkirt;
  const ends = `${2 * measured.pieces.length} × ${say.length(own.endHem)}`;
  const open = skirt.splitCorners ? ', open corners' : '';
  const result = say.length(measured.strip);
  switch (skirt.style) {
    case 'gathered':
    case 'box-pleated': {
      const ratio = say.number(skirt.fullness / 1000, 3);
      return step(
        'strip',
        'strip, all pieces',
        `${say.length(measured.perimeter)} × ${ratio} + ${ends}`,
        result,
        `fullness of a ${skirt.style} skirt; practice: hems at the open ends${open}`,
      );
    }
    case 'tailored': {
      const sides = measured.sides.map((side) => say.length(side.flat)).join(' + ');
      const corners = measured.cornerPleats > 0 ? ` + ${measured.cornerPleats} × ${say.length(own.cornerPleat)}` : '';
      const middle = skirt.middlePleats > 0 ? ` + ${skirt.middlePleats} × ${say.length(own.middlePleat)}` : '';
      const underlays = skirt.splitCorners ? ` + ${measured.sides.length - 1} × ${say.length(own.underlay)}` : '';
      return step(
        'strip',
        'strip, all pieces',
        `${sides}${corners}${middle}${underlays} + ${ends}`,
        result,
        `practice: cloth in a pleat, hems at the open ends${skirt.splitCorners ? ', a piece behind each open corner' : ''}`,
      );
    }
    default:
      return exhaustive(skirt);
  }
}

function workCloth(
  skirt: BedSkirtTreatment,
  measured: MeasuredSkirt,
  given: SkirtCloth,
  laid: LaidSkirt,
  fullnessMade: number | null,
  say: Say,
): WorkingStep[] {
  const { cloth, layer, drop } = given;
  const { practice } = skirt;
  const key = layer === 0 ? '' : `layer-${layer}-`;
  const steps: WorkingStep[] = [];
  if (drop) {
    steps.push(workDrop(skirt, given, say));
    if (laid.widths !== null) {
      const seams = practice.seam > 0 ? `, joins of ${say.length(2 * practice.seam)} counted` : '';
      steps.push(
        step(
          `${key}widths`,
          `${cloth.name}, widths`,
          `${say.length(given.strip)} ÷ ${say.length(cloth.usableWidth)} = ${say.number(given.strip / cloth.usableWidth)}, up${seams}`,
          String(laid.widths),
          'whole widths of one skirt',
        ),
      );
    }
    if (layer === 0 && fullnessMade !== null)
      steps.push(
        step(
          'fullness-made',
          'fullness made',
          `${say.length(toNearestTick(fullnessMade * measured.perimeter))} ÷ ${say.length(measured.perimeter)}`,
          say.number(fullnessMade),
          'flat cloth of the strip; practice: end hems and joins taken off',
        ),
      );
  }
  if (laid.rows) return [...steps, ...workRows(key, cloth, laid.rows, laid.line, practice, say)];
  return [...steps, workSideways(key, skirt, given, laid, say), workOrder(key, cloth, laid.line, practice, say)];
}

function workDrop(skirt: BedSkirtTreatment, given: SkirtCloth, say: Say): WorkingStep {
  const own = skirt.practice.bedSkirt;
  const { cloth, layer } = given;
  const plain = say.length(given.drop?.plain ?? 0);
  if (layer === 0)
    return step(
      'plain-cut',
      `${cloth.name}, cut drop`,
      sayCut([say.length(skirt.drop), say.length(own.hem), say.length(own.topSeam)], skirt.practice.shrinkage, say),
      plain,
      `practice: hem and top seam${skirt.practice.shrinkage > 0 ? ', shrinkage before rounding' : ''}`,
    );
  const lining =
    cloth.role === 'interlining' ? '' : ` + ${say.length(own.liningHem)} − ${say.length(own.liningShorter)}`;
  return step(
    `layer-${layer}-plain-cut`,
    `${cloth.name}, cut drop`,
    `${say.length(skirt.drop)} + ${say.length(own.topSeam)}${lining}`,
    plain,
    lining === ''
      ? 'practice: top seam, no hem of its own'
      : 'practice: top seam, lining hem, how much shorter it hangs',
  );
}

function workSideways(
  key: string,
  skirt: BedSkirtTreatment,
  given: SkirtCloth,
  laid: LaidSkirt,
  say: Say,
): WorkingStep {
  const strips = laid.sideways?.strips ?? 1;
  const { seam } = skirt.practice;
  const joins = seam > 0 && strips > 1 ? ` + ${strips - 1} × ${say.length(2 * seam)}` : '';
  const run = laid.sideways?.run ?? 0;
  const deck = given.deck ? ` + deck ${given.deck.cuts} × ${say.length(given.deck.length)}` : '';
  const many = skirt.quantity > 1 ? `${skirt.quantity} × ` : '';
  return step(
    `${key}laid-out`,
    `${given.cloth.name}, strips along the bolt`,
    `${many}((${say.length(given.strip)}${joins}) ÷ ${strips} side by side = ${say.length(run)}${deck})`,
    say.cloth(laid.line.plan),
    skirt.strips === 'sideways'
      ? 'sideways as asked: drops lie across the cloth, fewer seams'
      : 'drops lie across the cloth: fewer seams, and no more cloth than upright',
  );
}

function workDeck(skirt: BedSkirtTreatment, cloth: Cloth, deck: DeckCut, say: Say): WorkingStep {
  const own = skirt.practice.bedSkirt;
  const head = skirt.against === 'head';
  const both = `2 × ${say.length(own.deckSeam)}`;
  const open = `${say.length(own.deckSeam)} + ${say.length(own.deckHem)}`;
  const across = deck.lies === 'along' ? deck.wide : deck.long;
  return step(
    'deck',
    `${cloth.name}, deck`,
    `long: ${say.length(skirt.bed.length)} + ${head ? open : both} = ${say.length(deck.long)}; wide: ${say.length(skirt.bed.width)} + ${head ? both : open} = ${say.length(deck.wide)}; ${say.length(across)} in widths of ${say.length(cloth.usableWidth)}`,
    `${deck.cuts} × ${say.length(deck.length)}`,
    `the cloth lies ${deck.lies} the bed; practice: seams and hem of the deck`,
  );
}
