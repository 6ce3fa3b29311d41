/**
 * What lies flat on a board has to come out to the length: where the practice leaves seams out, as gathered widths may,
 * its joins still lose theirs.
 */
import type { Ticks } from '../length.ts';
import type { CorniceTreatment } from '../treatments/cornice.ts';
import { isFull } from '../treatments/valance.ts';
import type { ValanceTreatment } from '../treatments/valance.ts';

export function seamValance(valance: ValanceTreatment): ValanceTreatment {
  if (isFull(valance) || valance.practice.seam > 0) return valance;
  return { ...valance, practice: { ...valance.practice, seam: valance.practice.valance.joinSeam } };
}

export function seamCornice(cornice: CorniceTreatment): CorniceTreatment {
  const seam: Ticks = cornice.practice.seam > 0 ? cornice.practice.seam : cornice.practice.cornice.joinSeam;
  return { ...cornice, practice: { ...cornice.practice, seam } };
}
