/** What a workroom and an installer have to heed of one treatment under one stack. */
import type { Job } from '#shared/job.ts';
import type { JobResult, TierResult } from '#shared/result.ts';
import { GRAMS_PER_OUNCE } from '#shared/weight.ts';
import { cordNote, weightNote } from './kind-notes.ts';
import type { ListedWindow } from './listed-window.ts';
import { NBSP, typeset } from './speak.ts';
import type { Speech } from './speak.ts';

export function workNotes(
  job: Job,
  result: JobResult,
  window: ListedWindow,
  made: TierResult,
  speech: Speech,
): readonly string[] {
  const { treatment, room } = window;
  const advice = made.judgement.advice.filter((each) => each.level === 'stop' || each.level === 'caution');
  const order = [
    ...advice.filter((each) => each.level === 'stop'),
    ...advice.filter((each) => each.level === 'caution'),
  ];
  const cords = cordNote(treatment, room);
  const said = order.some((each) => each.rule.includes('cord'));
  const unlikely = result.warnings.filter((warning) => warning.path.startsWith(treatment.key));
  const weight = weightNote(treatment);
  const heavy = order.some((each) => each.rule === 'heavy-hang');
  return [
    ...order.map((each) => `${each.level === 'stop' ? 'Stop: ' : ''}${each.says}`),
    ...(cords === null || said ? [] : [cords]),
    ...(weight === null ? [] : [sayWeight(job, made, speech) + (heavy ? '' : ` ${weight}`)]),
    ...unlikely.map((warning) => `Unlikely: ${warning.says}`),
  ].map(typeset);
}

function sayWeight(job: Job, made: TierResult, speech: Speech): string {
  const weight =
    job.units === 'in'
      ? `${speech.number(made.grams / (16 * GRAMS_PER_OUNCE), 1)}${NBSP}lb`
      : `${speech.number(made.grams / 1000, 1)}${NBSP}kg`;
  return `Cloth weighs ${weight}, without hardware.`;
}
