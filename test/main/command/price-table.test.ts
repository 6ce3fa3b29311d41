import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { writeResult } from '#app/pricing/write-result.ts';
import { tellPrices } from '#main/command/price-table.ts';
import { readJobText } from '#shared/job-file/read-job.ts';

it('an option that is the same as one before it says so, with its reason once', () => {
  const file = new URL('../../reference/rooms/04-sheer-linen-north.json', import.meta.url);
  const read = readJobText(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error('the room cannot be read');
  const table = tellPrices(writeResult(read.job, priceJob(read.job)), read.job.locale);
  expect(table).toMatch(/Unlined sheer +the same as good +the same as good/);
  expect(table.match(/Nothing more is offered\./g)).toHaveLength(1);
  expect(table).toContain(
    '  better, best: Nothing more is offered. A lining takes the light that a sheer is there for',
  );
});
