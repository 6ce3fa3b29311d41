/** The working of a motif in the middle of the width: what one width of the cloth gives about it. */
import type { FaceCloth } from '#shared/cloth.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { CentredCloth } from './centre-motif.ts';
import { step } from './say.ts';
import type { Say } from './say.ts';

export function workAcross(centred: CentredCloth | null, face: FaceCloth, say: Say): WorkingStep[] {
  if (centred === null) return [];
  const { usable, across, motif, centre } = centred;
  const known = motif !== null;
  return [
    step(
      'motif-across',
      `${face.name}, one width about a motif`,
      known
        ? `motif ${say.length(motif)} from the left edge of ${say.length(usable)}: 2 × ${say.length(Math.min(motif, usable - motif))}`
        : `${say.length(usable)} − ${say.length(across)}`,
      say.length(centre),
      known
        ? 'a motif in the middle of the width, seams equally far from it (common practice)'
        : 'a motif in the middle of the width (common practice); where motifs lie across is not given, so half a repeat is given up at either side: measured, it may take less',
    ),
  ];
}
