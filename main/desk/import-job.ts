import { readJobText } from '#shared/job-file/read-job.ts';
import { wireJob } from '#shared/job-file/wire-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import { clients } from '#main/portfolio/clients.ts';
import { cloths } from '#main/portfolio/cloths.ts';
import type { WriteConnection } from '#main/portfolio/connection.ts';
import { cuttings } from '#main/portfolio/cuttings.ts';
import { addHistory } from '#main/portfolio/history.ts';
import { openings } from '#main/portfolio/openings.ts';
import { projects } from '#main/portfolio/projects.ts';
import { remnants } from '#main/portfolio/remnants.ts';
import { rooms } from '#main/portfolio/rooms.ts';
import { treatments } from '#main/portfolio/treatments.ts';
import { readSettings } from './default-settings.ts';
import { badInput } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import { findUnkept } from './find-unkept.ts';
import { recordJob } from './record-job.ts';

export interface ImportedJob {
  readonly clientId: string;
  readonly projectId: string;
}

/** The job file as its schema knows it. Throws BAD_INPUT with every fault. */
export function readWireText(text: string): WireJob {
  const read = readJobText(text);
  if (!read.ok) throw badInput(read.faults);
  return wireJob.parse(JSON.parse(text.replace(/^\ufeff/, '')));
}

/** Writes a job file's client, project, rooms, openings, treatments and cloth, told in the history as one import. */
export function importJob(
  writing: WriteConnection,
  wire: WireJob,
  { now, makeId }: DeskParts,
  as: { readonly projectName: string; readonly sample: boolean; readonly notes: string },
): ImportedJob {
  const at = now();
  const birth = () => ({ id: makeId(), at });
  const settings = readSettings(writing);
  const recorded = recordJob(wire, { birth, settings, ...as });
  const document = {
    ...recorded,
    rooms: [...recorded.rooms],
    cloth: [...recorded.cloth],
    remnants: [...recorded.remnants],
    cuttings: [...recorded.cuttings],
    settings,
  };
  // The sample follows the decorator's practice, so that it may well come out other than it went in.
  const faults = [...recorded.faults, ...(as.sample ? [] : findUnkept(wire, document))];
  if (faults.length > 0) throw badInput(faults);
  const client = as.notes === '' ? recorded.client : { ...recorded.client, notes: as.notes };
  clients.insert(writing, client);
  projects.insert(writing, recorded.project);
  for (const cloth of recorded.cloth) cloths.insert(writing, cloth);
  for (const remnant of recorded.remnants) remnants.insert(writing, remnant);
  for (const cutting of recorded.cuttings) cuttings.insert(writing, cutting);
  let openingCount = 0;
  for (const { openings: ofRoom, ...room } of recorded.rooms) {
    rooms.insert(writing, room);
    for (const { treatments: ofOpening, ...opening } of ofRoom) {
      openingCount += 1;
      openings.insert(writing, opening);
      for (const treatment of ofOpening) treatments.insert(writing, treatment);
    }
  }
  const place = { projectId: recorded.project.id, clientId: client.id };
  addHistory(writing, {
    ...place,
    at,
    entity: 'project',
    entityId: place.projectId,
    verb: 'imported',
    changes: {
      client: { before: null, after: client.name },
      rooms: { before: null, after: recorded.rooms.length },
      openings: { before: null, after: openingCount },
      cloth: { before: null, after: recorded.cloth.length },
    },
  });
  return place;
}
