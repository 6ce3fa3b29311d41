/** The treatments of a job in the order of its rooms, each beside its result. */
import type { Job, Opening, Room } from '#shared/job.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import type { JobResult, TreatmentResult } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import { hangsAtWindow } from './hangs-at-window.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';

export interface ListedWindow {
  readonly room: Room;
  readonly opening: Opening;
  readonly treatment: Treatment;
  readonly result: TreatmentResult;
  /** The opening's name, with the treatment's behind it where the opening has several. */
  readonly name: string;
}

/** Treatments without a result (no cloth could make them) are left out: the desk has told their faults. */
export function listWindows(job: Job, result: JobResult): readonly ListedWindow[] {
  const byKey = new Map(result.treatments.map((treatment) => [treatment.key, treatment]));
  return job.rooms.flatMap((room) =>
    room.openings.flatMap((opening) =>
      opening.treatments.flatMap((treatment) => {
        const found = byKey.get(treatment.key);
        if (found === undefined) return [];
        const name = opening.treatments.length === 1 ? opening.name : `${opening.name}, ${treatment.name}`;
        return [{ room, opening, treatment, result: found, name }];
      }),
    ),
  );
}

/** The face cloth's name when all options are of one; null when they are of several. */
export function nameCloth(job: Job, window: ListedWindow): string | null {
  const faces = [...new Set(TIERS.map((tier) => window.result.tiers[tier].stack.face))];
  const only = faces.length === 1 ? faces[0] : undefined;
  return only === undefined ? null : (resolveCloth(only, job.cloth)?.name ?? only);
}

/** What the list is counted in: windows, or pieces where a bed or a bath is among them, or a window has several. */
export function pieceWord(windows: readonly ListedWindow[]): 'window' | 'piece' {
  const places = new Set(windows.map(({ opening }) => opening));
  const each = places.size === windows.length && windows.every(({ treatment }) => hangsAtWindow(treatment));
  return each ? 'window' : 'piece';
}
