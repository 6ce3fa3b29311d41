import type { JudgeInput } from './judge-input.ts';
import { placeOf } from './place-of-kind.ts';

/** By day drapery is drawn back, while a sheer stays drawn for the light and the privacy that it is there for (common practice). */
export function staysDrawn({ face, treatment }: Pick<JudgeInput, 'face' | 'treatment'>): boolean {
  return face.family === 'sheer' && placeOf(treatment.kind) === 'window';
}
