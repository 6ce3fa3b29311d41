/** Refuses a placed pattern that this cloth cannot show on this make, with field, fault and remedy. */
import type { FaceCloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Fault } from '#shared/fault.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { isOnBias, rowOf } from './swags/measure-swags.ts';

type Tell = (field: string, wrong: string, right: string) => void;

export function checkPlacement(treatment: Treatment, face: FaceCloth): Fault[] {
  const { pattern } = treatment;
  const faults: Fault[] = [];
  const tell: Tell = (field, wrong, right) => {
    faults.push({ path: at(at(treatment.key, 'pattern'), field), wrong, right });
  };
  if (pattern === null) return [];
  if (face.repeat === null)
    tell('place', `is given, but ${face.name} has no repeat`, 'give the repeat of the cloth, or leave "pattern" out');
  if (treatment.kind === 'swags') checkSwags(treatment, tell);
  return faults;
}

/** Folds hide all but the middle of a swag; on the bias the pattern turns with the cloth (common practice). */
function checkSwags(swags: Extract<Treatment, { kind: 'swags' }>, tell: Tell): void {
  if (swags.pattern?.place !== 'middle')
    tell(
      'place',
      `is ${swags.pattern?.place ?? ''} on swags, whose folds take the pattern up`,
      'give "middle": a motif in the middle of each swag, or leave "pattern" out',
    );
  if (isOnBias(swags, rowOf(swags).width))
    tell(
      'place',
      'is given for swags on the bias, where the pattern turns by 45 degrees',
      'give "onBias": false, or leave "pattern" out',
    );
}
