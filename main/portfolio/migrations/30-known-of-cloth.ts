/** What a decorator knows of a cloth beyond its label, in one column. Once released this text never changes. */
import type { Migration } from '../migrate.ts';

export const knownOfCloth: Migration = {
  version: 30,
  run: (db) => void db.exec('ALTER TABLE cloths ADD COLUMN known TEXT CHECK (known IS NULL OR json_valid(known))'),
};
