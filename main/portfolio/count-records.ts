import { sql } from './compile.ts';
import type { ReadConnection } from './connection.ts';

/** True while nobody has put anything in: no client, kept or taken away, and no cloth. */
export function isEmpty(reading: ReadConnection): boolean {
  return (
    reading.first(sql.selectFrom('clients').select('id').limit(1).compile()) === null &&
    reading.first(sql.selectFrom('cloths').select('id').limit(1).compile()) === null
  );
}
