/** A take-off with its placed pattern: on the line of the face, and in the working. */
import type { FaceCloth } from '#shared/cloth.ts';
import type { TakeoffLine, WorkingStep } from '#shared/result.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { centreMotif } from './centre-motif.ts';
import type { CentredCloth } from './centre-motif.ts';
import type { Estimate } from './estimate.ts';
import { placePattern } from './place-pattern.ts';
import { placeOnOwnValance } from './roman-shade/cut-shade.ts';
import type { Say } from './say.ts';
import { workAcross } from './work-across.ts';
import { workPattern, workStart } from './work-pattern.ts';

/** The face itself: neither a band, a welt nor a cover of the same layer. */
export function isFace(line: TakeoffLine): boolean {
  return line.layer === 0 && line.role === 'face' && line.use === undefined;
}

export function withPlacement<Made extends Estimate>(
  treatment: Treatment,
  estimate: Made,
  face: FaceCloth,
  lined: boolean,
  say: Say,
): Made {
  const line = estimate.takeoff.find(isFace);
  const placed = placePattern(treatment, face, lined);
  if (line === undefined || line.railroaded || placed === null) return estimate;
  const pattern = {
    place: placed.place,
    level: treatment.pattern?.level ?? null,
    below: placed.below,
    starts: placed.phase,
    about: centreOf(treatment, face)?.centre ?? null,
  };
  return {
    ...estimate,
    takeoff: estimate.takeoff.map((each) => (each === line ? { ...each, pattern } : each)),
    working: treatment.kind === 'panels' ? estimate.working : workIn(treatment, estimate, face, lined, say),
  };
}

/** After the plain cut, whose length the place is reckoned in. Panels say theirs among their points. */
function workIn(treatment: Treatment, { working }: Estimate, face: FaceCloth, lined: boolean, say: Say): WorkingStep[] {
  const after = working.findIndex(({ id }) => id === 'plain-cut') + 1;
  const own = treatment.kind === 'roman-shade' ? placeOnOwnValance(treatment, face, lined) : null;
  return [
    ...working.slice(0, after),
    ...workPattern(treatment, face, lined, false, say),
    ...(own === null || face.repeat === null
      ? []
      : [
          workStart(
            'valance-pattern-start',
            'its own valance begins in the repeat at',
            own,
            face.repeat,
            treatment.practice.shrinkage,
            say,
          ),
        ]),
    ...workAcross(centreOf(treatment, face), face, say),
    ...working.slice(after),
  ];
}

function centreOf({ kind, pattern, practice }: Treatment, face: FaceCloth): CentredCloth | null {
  return centreMotif(pattern, face, kind === 'roman-shade' ? practice.romanShade.seam : practice.seam);
}
