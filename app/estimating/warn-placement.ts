/** What has to be told of a placed pattern that comes to nothing here, or not to what was written. */
import type { FaceCloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import type { Estimate } from './estimate.ts';
import { intoRepeat } from './into-repeat.ts';
import { hungCloth } from './panels/hung-cloth.ts';
import { placePattern } from './place-pattern.ts';
import { toNearestTick } from './round.ts';
import type { Say } from './say.ts';
import { isFace } from './with-placement.ts';

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
  const first = placed === null ? 0 : intoRepeat(placed.below, hangs);
  if (pattern.place === 'level' && first > hung.length)
    warnings.push({
      path: at(path, 'level'),
      says: `At this level no middle of a motif falls on what hangs: one stands ${length(toNearestTick(first - hung.length))} below its hem, the next above its top.`,
    });
  return warnings;
}
