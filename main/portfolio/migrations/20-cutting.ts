/** Remnants on the shelf, what is settled of the cloth of a project, and what the client accepted. */
import type { Migration } from '../migrate.ts';

const kept = `
  created_at TEXT NOT NULL,
  updated_at TEXT NOT NULL,
  removed_at TEXT`;

const json = (column: string): string => `${column} TEXT NOT NULL CHECK (json_valid(${column}))`;
const ticks = (column: string): string => `${column} INTEGER CHECK (${column} >= 0)`;

const tables = `
ALTER TABLE treatments ADD COLUMN decision TEXT CHECK (decision IN ('good', 'better', 'best', 'declined'));

CREATE TABLE remnants (
  id TEXT PRIMARY KEY,
  project_id TEXT REFERENCES projects (id),
  cloth TEXT NOT NULL,
  name TEXT NOT NULL,
  ${ticks('length')},
  ${ticks('width')},
  dye_lot TEXT NOT NULL,
  ${ticks('starts_at')},
  notes TEXT NOT NULL,
  ${json('drafts')},
  ${kept}
) STRICT;
CREATE INDEX remnants_of_cloth ON remnants (cloth);

CREATE TABLE cuttings (
  id TEXT PRIMARY KEY,
  project_id TEXT NOT NULL REFERENCES projects (id),
  cloth TEXT NOT NULL,
  ${json('bolts')},
  ${json('flaws')},
  ${json('fixed')},
  ${kept}
) STRICT;
CREATE UNIQUE INDEX cutting_of_cloth ON cuttings (project_id, cloth) WHERE removed_at IS NULL;
`;

export const cutting: Migration = { version: 20, run: (db) => void db.exec(tables) };
