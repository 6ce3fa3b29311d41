import { spawn } from 'node:child_process';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { sql } from '#main/portfolio/compile.ts';
import { makeTestFolder } from './test-portfolio.ts';
import type { TestFolder } from './test-portfolio.ts';

let place: TestFolder;
beforeEach(() => {
  place = makeTestFolder();
});
afterEach(() => place.remove());

/** Runs the writer and kills it, without warning, once it has acknowledged so many writes. */
function writeAndKill(prefix: string, after: number): Promise<string[]> {
  const script = path.join(import.meta.dirname, 'write-until-killed.ts');
  const child = spawn(process.execPath, [script, place.file, prefix], { stdio: ['ignore', 'pipe', 'inherit'] });
  return new Promise((resolve, reject) => {
    let text = '';
    child.stdout.setEncoding('utf8');
    child.stdout.on('data', (part: string) => {
      text += part;
      if (text.split('\n').length > after) child.kill('SIGKILL');
    });
    child.on('error', reject);
    child.on('close', () => resolve(text.split('\n').slice(0, -1)));
  });
}

test('a process that is killed in the middle of writing loses nothing that it acknowledged', async () => {
  const acknowledged: string[] = [];
  for (const [prefix, after] of [
    ['a', 1],
    ['b', 17],
    ['c', 60],
  ] as const)
    acknowledged.push(...(await writeAndKill(prefix, after)));
  expect(acknowledged.length).toBeGreaterThanOrEqual(78);
  const portfolio = place.open();
  const kept = portfolio.read((reading) => reading.all(sql.selectFrom('clients').select('id').compile()));
  const told = portfolio.read((reading) => reading.all(sql.selectFrom('history').select('entity_id').compile()));
  portfolio.close();
  const ids = new Set(kept.map(({ id }) => id));
  expect(acknowledged.filter((id) => !ids.has(id))).toEqual([]);
  // A write and its history stand or fall together.
  expect(told.map((entry) => entry.entity_id).sort()).toEqual([...ids].sort());
});
