/** The first form of the portfolio. Once released this text never changes; what comes after is a migration of its own. */
import type { Migration } from '../migrate.ts';

const kept = `
  created_at TEXT NOT NULL,
  updated_at TEXT NOT NULL,
  removed_at TEXT`;

const json = (column: string): string => `${column} TEXT NOT NULL CHECK (json_valid(${column}))`;
const maybeJson = (column: string): string => `${column} TEXT CHECK (${column} IS NULL OR json_valid(${column}))`;
const flag = (column: string): string => `${column} INTEGER NOT NULL CHECK (${column} IN (0, 1))`;
const ticks = (column: string): string => `${column} INTEGER CHECK (${column} >= 0)`;

const tables = `
CREATE TABLE clients (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  email TEXT NOT NULL,
  phone TEXT NOT NULL,
  address TEXT NOT NULL,
  notes TEXT NOT NULL,
  ${flag('sample')},
  ${kept}
) STRICT;

CREATE TABLE projects (
  id TEXT PRIMARY KEY,
  client_id TEXT NOT NULL REFERENCES clients (id),
  name TEXT NOT NULL,
  units TEXT NOT NULL,
  currency TEXT NOT NULL,
  locale TEXT NOT NULL,
  ${maybeJson('practice')},
  ${maybeJson('price_book')},
  ${kept}
) STRICT;
CREATE INDEX projects_of_client ON projects (client_id);

CREATE TABLE rooms (
  id TEXT PRIMARY KEY,
  project_id TEXT NOT NULL REFERENCES projects (id),
  position INTEGER NOT NULL,
  name TEXT NOT NULL,
  "use" TEXT NOT NULL,
  facing TEXT,
  climate TEXT NOT NULL,
  ${ticks('ceiling')},
  ${json('drafts')},
  ${kept}
) STRICT;
CREATE INDEX rooms_of_project ON rooms (project_id);

CREATE TABLE openings (
  id TEXT PRIMARY KEY,
  room_id TEXT NOT NULL REFERENCES rooms (id),
  position INTEGER NOT NULL,
  name TEXT NOT NULL,
  ${ticks('width')},
  ${ticks('height')},
  ${ticks('sill')},
  ${ticks('at')},
  glazing TEXT NOT NULL,
  ${flag('heat_source_below')},
  measured TEXT NOT NULL,
  notes TEXT NOT NULL,
  ${json('drafts')},
  ${kept}
) STRICT;
CREATE INDEX openings_of_room ON openings (room_id);

CREATE TABLE treatments (
  id TEXT PRIMARY KEY,
  opening_id TEXT NOT NULL REFERENCES openings (id),
  position INTEGER NOT NULL,
  name TEXT NOT NULL,
  quantity INTEGER NOT NULL CHECK (quantity > 0),
  face TEXT,
  kind TEXT NOT NULL,
  ${json('make')},
  ${json('stacks')},
  ${maybeJson('practice')},
  ${json('drafts')},
  ${kept}
) STRICT;
CREATE INDEX treatments_of_opening ON treatments (opening_id);

CREATE TABLE cloths (
  id TEXT PRIMARY KEY,
  project_id TEXT REFERENCES projects (id),
  code TEXT NOT NULL,
  name TEXT NOT NULL,
  role TEXT NOT NULL,
  family TEXT NOT NULL,
  ${ticks('width')},
  ${ticks('usable_width')},
  "match" TEXT NOT NULL,
  ${ticks('repeat_vertical')},
  ${ticks('repeat_horizontal')},
  ${flag('cut_on_repeat')},
  ${flag('one_way')},
  ${ticks('bolt')},
  ${ticks('order_step')},
  ${ticks('least_order')},
  ${flag('railroad')},
  ${maybeJson('content')},
  weight TEXT,
  colour TEXT,
  shade TEXT,
  ${maybeJson('visible')},
  ${maybeJson('uv')},
  ${maybeJson('solar')},
  price TEXT,
  supplier TEXT NOT NULL,
  notes TEXT NOT NULL,
  ${json('drafts')},
  ${kept}
) STRICT;
CREATE UNIQUE INDEX cloth_codes ON cloths (ifnull(project_id, ''), code) WHERE removed_at IS NULL;

CREATE TABLE settings (
  key TEXT PRIMARY KEY,
  ${json('value')},
  updated_at TEXT NOT NULL
) STRICT;

CREATE TABLE proposals (
  id TEXT PRIMARY KEY,
  project_id TEXT NOT NULL REFERENCES projects (id),
  number TEXT NOT NULL,
  year INTEGER NOT NULL,
  ordinal INTEGER NOT NULL,
  revision INTEGER NOT NULL CHECK (revision > 0),
  state TEXT NOT NULL,
  date TEXT NOT NULL,
  valid_until TEXT NOT NULL,
  created_at TEXT NOT NULL,
  program_version TEXT NOT NULL,
  currency TEXT NOT NULL,
  locale TEXT NOT NULL,
  total_good INTEGER NOT NULL,
  total_better INTEGER NOT NULL,
  total_best INTEGER NOT NULL,
  pages INTEGER NOT NULL CHECK (pages > 0),
  ${flag('sample')},
  UNIQUE (number, revision),
  UNIQUE (year, ordinal, revision),
  UNIQUE (project_id, revision)
) STRICT;

CREATE TABLE proposal_files (
  proposal_id TEXT PRIMARY KEY REFERENCES proposals (id),
  pdf BLOB NOT NULL,
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64),
  ${json('job_file')},
  ${json('result')},
  ${json('paper')}
) STRICT;

CREATE TABLE paper_places (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  proposal_id TEXT NOT NULL REFERENCES proposals (id),
  path TEXT NOT NULL,
  at TEXT NOT NULL
) STRICT;
CREATE INDEX paper_places_of_proposal ON paper_places (proposal_id);

CREATE TABLE mail_drafts (
  id TEXT PRIMARY KEY,
  proposal_id TEXT NOT NULL REFERENCES proposals (id),
  recipient TEXT NOT NULL,
  subject TEXT NOT NULL,
  body TEXT NOT NULL,
  created_at TEXT NOT NULL
) STRICT;
CREATE INDEX mail_drafts_of_proposal ON mail_drafts (proposal_id);

CREATE TABLE history (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  at TEXT NOT NULL,
  project_id TEXT,
  client_id TEXT,
  entity TEXT NOT NULL,
  entity_id TEXT NOT NULL,
  verb TEXT NOT NULL,
  ${json('changes')}
) STRICT;
CREATE INDEX history_of_project ON history (project_id, id);
CREATE INDEX history_of_client ON history (client_id, id);
`;

/** Promises that hold whatever code is written later. The invented household alone may be taken away whole. */
const promises = `
CREATE TRIGGER clients_keep_sample BEFORE UPDATE OF sample ON clients WHEN OLD.sample IS NOT NEW.sample
BEGIN SELECT RAISE(ABORT, 'a client cannot become or cease to be a sample'); END;

CREATE TRIGGER proposals_true_sample BEFORE INSERT ON proposals
WHEN NEW.sample IS NOT (
  SELECT clients.sample FROM projects JOIN clients ON clients.id = projects.client_id WHERE projects.id = NEW.project_id
)
BEGIN SELECT RAISE(ABORT, 'a proposal is a sample only when its client is one'); END;

CREATE TRIGGER proposals_frozen BEFORE UPDATE OF
  id, project_id, number, year, ordinal, revision, date, valid_until, created_at, program_version, currency, locale,
  total_good, total_better, total_best, pages, sample
ON proposals
BEGIN SELECT RAISE(ABORT, 'a proposal is frozen: only its state may change'); END;

CREATE TRIGGER proposals_stay BEFORE DELETE ON proposals WHEN OLD.sample = 0
BEGIN SELECT RAISE(ABORT, 'a proposal is never deleted'); END;

CREATE TRIGGER proposal_files_frozen BEFORE UPDATE ON proposal_files
BEGIN SELECT RAISE(ABORT, 'the files of a proposal are frozen'); END;

CREATE TRIGGER proposal_files_stay BEFORE DELETE ON proposal_files
WHEN (SELECT sample FROM proposals WHERE id = OLD.proposal_id) IS NOT 1
BEGIN SELECT RAISE(ABORT, 'the files of a proposal are never deleted'); END;

CREATE TRIGGER history_frozen BEFORE UPDATE ON history
BEGIN SELECT RAISE(ABORT, 'history is only ever added to'); END;

CREATE TRIGGER history_stays BEFORE DELETE ON history
BEGIN SELECT RAISE(ABORT, 'history is only ever added to'); END;
`;

export const first: Migration = { version: 10, run: (db) => void db.exec(tables + promises) };
