import type { ProjectDocument } from '#shared/records/records.ts';
import type { ReadConnection } from '#main/portfolio/connection.ts';
import { readStoredDocument } from '#main/portfolio/project-document.ts';
import { readSettings } from './default-settings.ts';
import { mustFind } from './desk-errors.ts';

/** A whole project with the settings in force. Throws NOT_FOUND. */
export function readDocument(reading: ReadConnection, projectId: string): ProjectDocument {
  const stored = mustFind(readStoredDocument(reading, projectId), 'project', projectId);
  return { ...stored, settings: readSettings(reading) };
}
