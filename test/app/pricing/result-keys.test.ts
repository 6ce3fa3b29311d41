/** What `price --json` promises of every option: readings with their ranges, words, advice and the why, each key of the format. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { writeResult } from '#app/pricing/write-result.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { TIERS } from '#shared/words.ts';

const wire: unknown = JSON.parse(readFileSync(new URL('../../reference/every-kind.job.json', import.meta.url), 'utf8'));
const read = readJob(wire);
if (!read.ok) throw new Error('the house of every kind cannot be read');
const result = writeResult(read.job, priceJob(read.job));

it.each(result.treatments.map((each) => [each.path, each] as const))('%s', (_, treatment) => {
  expect(treatment.advised.why).toMatch(/ answers .*\.$/u);
  for (const tier of TIERS) {
    const option = treatment.tiers[tier];
    expect(Object.keys(option.readings).sort()).toEqual(
      ['body', 'colourShift', 'fade', 'light', 'lightInRoom', 'lightWithGlass', 'warmth'].sort(),
    );
    for (const [low, high] of Object.values(option.ranges)) expect(low).toBeLessThanOrEqual(high);
    expect(option.ranges['warmth']).toHaveLength(2);
    for (const { rule, level, says, rests } of option.advice)
      for (const text of [rule, level, says, rests]) expect(text).not.toBe('');
    for (const { label, value } of option.working) for (const text of [label, value]) expect(text).not.toBe('');
    expect(option.chosen === null || option.chosen.why.endsWith('.')).toBe(true);
    expect(option.weight.grams).toBeGreaterThan(0);
    expect(option.price.lines.reduce((sum, { amount }) => sum + amount, 0)).toBe(option.price.total);
  }
});
