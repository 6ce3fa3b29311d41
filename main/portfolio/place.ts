/** Where a record belongs: the project and client under which the history tells of it. */
import { sql } from './compile.ts';
import type { ReadConnection } from './connection.ts';

export interface Place {
  readonly projectId: string | null;
  readonly clientId: string | null;
}

export const NOWHERE: Place = { projectId: null, clientId: null };

export function placeOfProject(reading: ReadConnection, projectId: string): Place {
  const found = reading.first(sql.selectFrom('projects').select('client_id').where('id', '=', projectId).compile());
  return { projectId, clientId: found?.client_id ?? null };
}

export function placeOfRoom(reading: ReadConnection, roomId: string): Place {
  const found = reading.first(sql.selectFrom('rooms').select('project_id').where('id', '=', roomId).compile());
  return found === null ? NOWHERE : placeOfProject(reading, found.project_id);
}

export function placeOfOpening(reading: ReadConnection, openingId: string): Place {
  const found = reading.first(sql.selectFrom('openings').select('room_id').where('id', '=', openingId).compile());
  return found === null ? NOWHERE : placeOfRoom(reading, found.room_id);
}
