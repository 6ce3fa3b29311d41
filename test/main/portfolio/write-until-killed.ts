/** Adds clients one after the other and prints each id when its write was acknowledged. Run by `crash.test.ts`. */
import { writeSync } from 'node:fs';
import { newClient } from '#main/desk/new-records.ts';
import { clients } from '#main/portfolio/clients.ts';
import { openPortfolio } from '#main/portfolio/open-portfolio.ts';

const [file = '', prefix = ''] = process.argv.slice(2);
const portfolio = openPortfolio({ file, now: () => new Date(0).toISOString() });
for (let count = 1; ; count += 1) {
  const id = `${prefix}-${count}`;
  portfolio.write((writing) =>
    clients.add(writing, { ...newClient({ id, at: '2026-11-25T12:00:00.000Z' }), name: `Client ${id}` }),
  );
  // Straight to the pipe: what is printed was acknowledged, and nothing waits in a buffer.
  writeSync(1, `${id}\n`);
}
