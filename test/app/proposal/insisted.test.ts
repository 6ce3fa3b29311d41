/** A stop becomes an option only by the decorator's own hand; then the result marks it and the proposal says it before the options. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { writeResult } from '#app/pricing/write-result.ts';
import { assembleProposal } from '#app/proposal/assemble-proposal.ts';
import { readJobText } from '#shared/job-file/read-job.ts';
import { wireResult } from '#shared/job-file/wire-result.ts';
import { TIERS } from '#shared/words.ts';

const text = readFileSync(new URL('../../reference/rooms/14-hotel-and-flat.json', import.meta.url), 'utf8');
const read = readJobText(text);
if (!read.ok) throw new Error('the room cannot be read');
const { job } = read;
const result = priceJob(job);
const written = wireResult.parse(writeResult(job, result));

describe('silk in a bath, interlined by hand', () => {
  const bath = written.treatments.find(({ path }) => path.endsWith('Silk in the bath'));
  const stopsOf = (tier: (typeof TIERS)[number]) => bath?.tiers[tier].advice.filter(({ level }) => level === 'stop');

  it('is marked in the result as insisted on, and nothing else is', () => {
    expect(stopsOf('best')).toMatchObject([{ rule: 'interlining-damp', insisted: true }]);
    for (const { tiers } of written.treatments)
      for (const tier of TIERS)
        for (const { level, insisted } of tiers[tier].advice) expect(insisted === true).toBe(level === 'stop');
  });
  it('stands on the proposal as not advised, before the options', () => {
    const given = { number: '1', revision: 1, date: '2026-11-25', validUntil: null, audience: 'client' } as const;
    const window = assembleProposal(job, result, given).windows.find(({ opening }) => opening.includes('Bath window'));
    const stops = window?.notes.filter(({ level }) => level === 'stop') ?? [];
    expect(stops.map(({ about }) => about)).toEqual(['Best']);
    expect(stops[0]?.says).toMatch(/not for a bathroom.*It is offered because it was asked for\.$/);
  });
  it('is never chosen where it is left to the program', () => {
    const left = text.replaceAll(/"stacks":\s*\{(?:[^{}]|\{[^{}]*\})*\}/gu, '"stacks": {}');
    const again = readJobText(left);
    if (!again.ok) throw new Error('the room cannot be read');
    const free = writeResult(again.job, priceJob(again.job));
    for (const { tiers } of free.treatments)
      for (const tier of TIERS) {
        expect(tiers[tier].chosen).not.toBeNull();
        const rules = tiers[tier].advice.filter(({ level }) => level === 'stop').map(({ rule }) => rule);
        expect(rules.filter((rule) => !rule.startsWith('cord'))).toEqual([]);
      }
  });
});
