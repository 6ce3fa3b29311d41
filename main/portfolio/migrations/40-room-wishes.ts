import type { Migration } from '../migrate.ts';

/** What a room asks for besides its use: privacy, and what the purse wants. Rooms of before asked for neither. */
export const roomWishes: Migration = {
  version: 40,
  run: (db) => {
    db.exec('ALTER TABLE rooms ADD COLUMN privacy TEXT');
    db.exec('ALTER TABLE rooms ADD COLUMN budget TEXT');
  },
};
