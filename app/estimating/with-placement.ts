/** A take-off with its placed pattern: on the line of the face, in the working, and a warning where it comes to nothing. */
import type { FaceCloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import type { TakeoffLine, WorkingStep } from '#shared/result.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { centreMotif } from './centre-motif.ts';
import type { CentredCloth } from './centre-motif.ts';
import type { Estimate } from './estimate.ts';
import { hungCloth } from './panels/hung-cloth.ts';
import { placePattern } from './place-pattern.ts';
import { placeOnOwnValance } from './roman-shade/cut-shade.ts';
import { toNearestTick } from './round.ts';
import type { Say } from './say.ts';
import { workAcross } from './work-across.ts';
import { workPattern, workStart } from './work-pattern.ts';

/** The face itself: neither a band, a welt nor a cover of the same layer. */
function isFace(line: TakeoffLine): boolean {
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

/**
 * Cloth that runs sideways has its repeat across what hangs: where a motif comes to stand is then nobody's choice. A motif
 * beyond the repeat is counted on by whole repeats; at a room's level a short piece may lie between two motifs.
 */
export function warnPlacement(
  treatment: Treatment,
  estimate: Estimate,
  face: FaceCloth,
  lined: boolean,
  say: Say,
): Warning[] {
  const { pattern } = treatment;
  const line = estimate.takeoff.find(isFace);
  if (pattern === null || face.repeat === null) return [];
  const path = at(treatment.key, 'pattern');
  if (line?.railroaded === true)
    return [
      {
        path,
        says: `${face.name} is used sideways, so its repeat runs across: no motif is placed. Where it has to stand, let the cloth run upright alone.`,
      },
    ];
  const { vertical } = face.repeat;
  const length = (value: number): string => `${say.length(value)} ${say.unit}`;
  const warnings: Warning[] = [];
  if (pattern.motif !== null && pattern.motif >= vertical)
    warnings.push({
      path: at(path, 'motif'),
      says: `${length(pattern.motif)} lies beyond the repeat of ${length(vertical)}: ${length(pattern.motif % vertical)} is taken, from the start of a repeat to the middle of its motif.`,
    });
  const placed = placePattern(treatment, face, lined);
  const hung = hungCloth(treatment, lined);
  const hangs = (vertical * 1000) / hung.fullness;
  const first = placed === null ? 0 : ((placed.below % hangs) + hangs) % hangs;
  if (pattern.place === 'level' && first > hung.length)
    warnings.push({
      path: at(path, 'level'),
      says: `At this level no middle of a motif falls on what hangs: one stands ${length(toNearestTick(first - hung.length))} below its hem, the next above its top.`,
    });
  return warnings;
}
