import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { clients } from '#main/portfolio/clients.ts';
import { sql } from '#main/portfolio/compile.ts';
import { openPortfolio } from '#main/portfolio/open-portfolio.ts';
import { projects } from '#main/portfolio/projects.ts';
import { addProposal, markProposal, readProposal, readProposalPdf } from '#main/portfolio/proposals.ts';
import { removeSample } from '#main/portfolio/remove-sample.ts';
import type { ProposalRecord } from '#shared/records/records.ts';
import { makeTestFolder, NOON, testClient, testProject } from './test-portfolio.ts';
import type { TestFolder } from './test-portfolio.ts';

let place: TestFolder;
beforeEach(() => {
  place = makeTestFolder();
  const portfolio = place.open();
  portfolio.write((writing) => {
    for (const [key, sample] of [
      ['real', false],
      ['sample', true],
    ] as const) {
      clients.add(writing, testClient(`${key}-client`, key, sample));
      projects.add(writing, testProject(`${key}-project`, `${key}-client`));
      addProposal(writing, {
        record: testProposal(key),
        year: 2026,
        ordinal: sample ? 2 : 1,
        sample,
        files: {
          pdf: Buffer.from(`%PDF ${key}`),
          sha256: 'a'.repeat(64),
          jobFile: '{}',
          result: {} as never,
          paper: {},
        },
      });
    }
  });
  portfolio.close();
});
afterEach(() => place.remove());

function testProposal(key: string): ProposalRecord {
  return {
    id: `${key}-proposal`,
    projectId: `${key}-project`,
    number: `2026-${key}`,
    revision: 1,
    state: 'made',
    date: '2026-11-25',
    validUntil: '2026-12-25',
    createdAt: NOON,
    programVersion: '0',
    currency: 'USD',
    locale: 'en-US',
    totals: { good: 1, better: 2, best: 3 },
    file: null,
    pages: 1,
  };
}

/** Any code at all, with no courtesy of ours in between. */
function withRawDatabase<T>(use: (db: Database.Database) => T): T {
  const db = new Database(place.file);
  try {
    db.pragma('foreign_keys = ON');
    return use(db);
  } finally {
    db.close();
  }
}

describe('what was handed over', () => {
  test('can be changed in no column but its state', () => {
    withRawDatabase((db) => {
      const columns = db.prepare<[], string>(`SELECT name FROM pragma_table_info('proposals')`).pluck().all();
      expect(columns.length).toBeGreaterThan(15);
      for (const column of columns) {
        const change = () =>
          db.prepare(`UPDATE proposals SET "${column}" = "${column}" WHERE id = 'real-proposal'`).run();
        if (column === 'state') expect(change).not.toThrow();
        else expect(change, column).toThrow(/frozen/);
      }
      for (const column of db.prepare<[], string>(`SELECT name FROM pragma_table_info('proposal_files')`).pluck().all())
        expect(() => db.prepare(`UPDATE proposal_files SET "${column}" = "${column}"`).run(), column).toThrow(/frozen/);
    });
  });

  test.each([
    `DELETE FROM proposals WHERE id = 'real-proposal'`,
    `DELETE FROM proposal_files WHERE proposal_id = 'real-proposal'`,
    `DELETE FROM history`,
    `UPDATE history SET at = at`,
    `UPDATE clients SET sample = 1 WHERE id = 'real-client'`,
    `DELETE FROM clients WHERE id = 'real-client'`,
  ])('refuses: %s', (statement) => {
    withRawDatabase((db) => {
      expect(() => db.exec(statement)).toThrow(/frozen|deleted|added to|sample|FOREIGN KEY/);
    });
  });

  test('cannot be pushed out by a row of the same key', () => {
    const portfolio = openPortfolio({ file: place.file, now: () => NOON });
    const replace = sql
      .insertInto('history')
      .values({
        at: NOON,
        project_id: null,
        client_id: null,
        entity: 'x',
        entity_id: 'x',
        verb: 'added',
        changes: '{}',
      })
      .compile();
    expect(() =>
      portfolio.write((writing) => {
        writing.runHistory({
          ...replace,
          sql: `INSERT OR REPLACE INTO history SELECT * FROM history WHERE id = 1`,
          parameters: [],
        });
      }),
    ).toThrow(/added to/);
    portfolio.close();
  });

  test('a proposal cannot be passed off as a sample', () => {
    const portfolio = place.open();
    expect(() =>
      portfolio.write((writing) =>
        addProposal(writing, {
          record: { ...testProposal('real'), id: 'other', number: '2026-9', revision: 2 },
          year: 2026,
          ordinal: 9,
          sample: true,
          files: { pdf: Buffer.from(''), sha256: 'a'.repeat(64), jobFile: '{}', result: {} as never, paper: {} },
        }),
      ),
    ).toThrow(/sample/);
    portfolio.close();
  });

  test('its state moves on, and the history tells it', () => {
    const portfolio = place.open();
    const record = portfolio.read((reading) => readProposal(reading, 'real-proposal'));
    portfolio.write((writing) => markProposal(writing, record!, 'sent', NOON));
    expect(portfolio.read((reading) => readProposal(reading, 'real-proposal'))?.state).toBe('sent');
    portfolio.close();
  });
});

test('the sample household goes whole, and nothing else with it', () => {
  const portfolio = place.open();
  expect(portfolio.write((writing) => removeSample(writing, NOON))).toBe(1);
  expect(portfolio.write((writing) => removeSample(writing, NOON))).toBe(0);
  const left = portfolio.read((reading) => ({
    clients: reading.all(sql.selectFrom('clients').select('id').compile()),
    projects: reading.all(sql.selectFrom('projects').select('id').compile()),
    sample: readProposalPdf(reading, 'sample-proposal'),
    real: readProposalPdf(reading, 'real-proposal'),
  }));
  portfolio.close();
  expect(left.clients).toEqual([{ id: 'real-client' }]);
  expect(left.projects).toEqual([{ id: 'real-project' }]);
  expect(left.sample).toBeNull();
  expect(Buffer.from(left.real!).toString()).toBe('%PDF real');
});

describe('a write', () => {
  test('that adds nothing to the history is taken back', () => {
    const portfolio = place.open();
    expect(() =>
      portfolio.write((writing) => writing.run(sql.updateTable('clients').set({ name: 'Silent' }).compile())),
    ).toThrow(/history/);
    expect(portfolio.read((reading) => clients.read(reading, 'real-client'))?.name).toBe('real');
    portfolio.close();
  });

  test('that fails halfway leaves nothing', () => {
    const portfolio = place.open();
    expect(() =>
      portfolio.write((writing) => {
        clients.edit(writing, 'real-client', { name: 'Half' }, NOON);
        throw new Error('stopped');
      }),
    ).toThrow('stopped');
    expect(portfolio.read((reading) => clients.read(reading, 'real-client'))?.name).toBe('real');
    portfolio.close();
  });
});
