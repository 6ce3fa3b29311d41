/** The finished size of a Roman shade: what was given, or the readings of the frame with the workroom's deductions. */
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';

export interface ShadeSize {
  readonly width: Ticks;
  readonly length: Ticks;
}

/** Narrowest reading less the deduction; the longest length, or the shortest less its own: a setting. */
export function sizeShade(shade: RomanShadeTreatment): ShadeSize {
  const { size } = shade;
  const practice = shade.practice.romanShade;
  if (size.basis === 'finished') return { width: size.width, length: size.length };
  const width = Math.min(...size.widths) - deductionOf(shade);
  const length =
    practice.insideLength === 'longest'
      ? Math.max(...size.lengths)
      : Math.min(...size.lengths) - practice.lengthDeduction;
  return { width: ticks(width), length: ticks(length) };
}

/** Off the narrowest reading inside a frame. */
export function deductionOf(shade: RomanShadeTreatment): Ticks {
  const { thickDeduction, insideDeduction } = shade.practice.romanShade;
  return shade.thick ? thickDeduction : insideDeduction;
}

export function workSize(shade: RomanShadeTreatment, made: ShadeSize, say: Say): WorkingStep[] {
  const { size } = shade;
  const practice = shade.practice.romanShade;
  if (size.basis === 'finished') {
    const rests = shade.mount.where === 'inside' ? 'size basis: finished, deductions taken' : 'size basis: finished';
    return [
      step('finished-width', 'finished width', say.length(size.width), say.length(made.width), rests),
      step('finished-length', 'finished length', say.length(size.length), say.length(made.length), rests),
    ];
  }
  const list = (values: readonly Ticks[]): string => values.map(say.length).join(', ');
  const longest = practice.insideLength === 'longest';
  return [
    step(
      'finished-width',
      'finished width',
      `narrowest of ${list(size.widths)} − ${say.length(deductionOf(shade))}`,
      say.length(made.width),
      `size basis: opening, the workroom deducts; practice: ${shade.thick ? 'deduction for thick cloth' : 'deduction inside a frame'}`,
    ),
    step(
      'finished-length',
      'finished length',
      longest
        ? `longest of ${list(size.lengths)}`
        : `shortest of ${list(size.lengths)} − ${say.length(practice.lengthDeduction)}`,
      say.length(made.length),
      `size basis: opening; practice: ${longest ? 'the longest length' : 'the shortest length less its deduction'}`,
    ),
  ];
}
