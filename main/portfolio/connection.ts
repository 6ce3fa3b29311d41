/**
 * What queries get to see of the open file. A read connection cannot write, by its type; a write connection exists only
 * inside `Portfolio.write`, so that every write is one transaction.
 */
import type Database from 'better-sqlite3';
import type { CompiledQuery } from 'kysely';

declare const reading: unique symbol;
declare const writing: unique symbol;

export interface ReadConnection {
  readonly [reading]: true;
  /** Every row, in the query's order. */
  all<Row>(query: CompiledQuery<Row>): Row[];
  /** The first row, or null. */
  first<Row>(query: CompiledQuery<Row>): Row | null;
  /** Rows one by one, for a reader that may stop early. */
  each<Row>(query: CompiledQuery<Row>): IterableIterator<Row>;
}

export interface WriteConnection extends ReadConnection {
  readonly [writing]: true;
  /** Runs a change and returns how many rows it changed. */
  run(query: CompiledQuery): number;
  /** Runs the query that adds to the history. Without one, a transaction that changed something is taken back. */
  runHistory(query: CompiledQuery): void;
}

/** What happened on a write connection. */
export interface Tally {
  changed: number;
  told: number;
}

type Statement = Database.Statement;

/** Makes connections on one open database; prepared statements are kept by their text. */
export function makeConnections(db: Database.Database): {
  readonly reading: ReadConnection;
  writing(tally: Tally): WriteConnection;
} {
  const statements = new Map<string, Statement>();
  const prepare = (query: CompiledQuery): Statement => {
    const known = statements.get(query.sql);
    if (known) return known;
    const made = db.prepare(query.sql);
    statements.set(query.sql, made);
    return made;
  };
  const read = {
    all: <Row>(query: CompiledQuery<Row>) => prepare(query).all(...query.parameters) as Row[],
    first: <Row>(query: CompiledQuery<Row>) => (prepare(query).get(...query.parameters) as Row | undefined) ?? null,
    // A statement of its own: one that is being stepped through cannot be used for a second question.
    each: <Row>(query: CompiledQuery<Row>) =>
      db.prepare(query.sql).iterate(...query.parameters) as IterableIterator<Row>,
  };
  return {
    reading: read as ReadConnection,
    writing: (tally) =>
      ({
        ...read,
        run(query: CompiledQuery): number {
          const { changes } = prepare(query).run(...query.parameters);
          tally.changed += changes;
          return changes;
        },
        runHistory(query: CompiledQuery): void {
          prepare(query).run(...query.parameters);
          tally.told += 1;
        },
      }) as WriteConnection,
  };
}
