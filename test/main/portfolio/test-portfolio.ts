import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { ClientRecord, ProjectRecord } from '#shared/records/records.ts';
import { DEFAULT_SETTINGS } from '#main/desk/default-settings.ts';
import { newClient, newProject } from '#main/desk/new-records.ts';
import { openPortfolio } from '#main/portfolio/open-portfolio.ts';
import type { Portfolio, PortfolioPlace } from '#main/portfolio/open-portfolio.ts';

export const NOON = '2026-11-25T12:00:00.000Z';

export interface TestFolder {
  readonly folder: string;
  readonly file: string;
  open(place?: Partial<PortfolioPlace>): Portfolio;
  remove(): void;
}

/** A folder of the test's own with a portfolio that is not made yet. */
export function makeTestFolder(): TestFolder {
  const folder = mkdtempSync(path.join(tmpdir(), 'linenfold-portfolio-'));
  const file = path.join(folder, 'portfolio.sqlite');
  return {
    folder,
    file,
    open: (place = {}) => openPortfolio({ file, now: () => NOON, busyTimeout: 100, ...place }),
    remove: () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }),
  };
}

export function testClient(id: string, name = 'Ada Fenn', sample = false): ClientRecord {
  return { ...newClient({ id, at: NOON }), name, sample };
}

export function testProject(id: string, clientId: string): ProjectRecord {
  return newProject({ id, at: NOON }, clientId, DEFAULT_SETTINGS);
}
