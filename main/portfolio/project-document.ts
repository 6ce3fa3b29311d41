import type { CuttingRecord, RemnantRecord } from '#shared/records/cutting-records.ts';
import type { ClientRecord, ClothRecord, ProjectRecord, RoomDocument } from '#shared/records/records.ts';
import { clients } from './clients.ts';
import { listCloths } from './cloths.ts';
import type { ReadConnection } from './connection.ts';
import { listCuttings } from './cuttings.ts';
import { listOpenings } from './openings.ts';
import { projects } from './projects.ts';
import { listRemnants } from './remnants.ts';
import { listRooms } from './rooms.ts';
import { listTreatments } from './treatments.ts';

export interface StoredDocument {
  readonly client: ClientRecord;
  readonly project: ProjectRecord;
  readonly rooms: RoomDocument[];
  readonly cloth: ClothRecord[];
  readonly remnants: RemnantRecord[];
  readonly cuttings: CuttingRecord[];
}

/** A whole project, or null when it or its client is not there or was taken away. */
export function readStoredDocument(reading: ReadConnection, projectId: string): StoredDocument | null {
  const project = projects.read(reading, projectId);
  const client = project === null ? null : clients.read(reading, project.clientId);
  if (project === null || client === null) return null;
  const rooms = listRooms(reading, projectId).map((room) => ({
    ...room,
    openings: listOpenings(reading, room.id).map((opening) => ({
      ...opening,
      treatments: listTreatments(reading, opening.id),
    })),
  }));
  return {
    client,
    project,
    rooms,
    cloth: listCloths(reading, projectId),
    remnants: listRemnants(reading, projectId),
    cuttings: listCuttings(reading, projectId),
  };
}
