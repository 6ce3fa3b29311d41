import type { Cloth } from '#shared/cloth.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import { placeOf } from './place-of-kind.ts';

/** By day drapery is drawn back, while a sheer stays drawn for the light and the privacy that it is there for (common practice). */
export function staysDrawn(face: Pick<Cloth, 'family'>, kind: TreatmentKind): boolean {
  return face.family === 'sheer' && placeOf(kind) === 'window';
}
