/** The proposal tells options apart from their readings: what one has said the next does not say again. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { assembleProposal } from '#app/proposal/assemble-proposal.ts';
import type { PaperWindow } from '#app/proposal/proposal-paper.ts';
import { readJobText } from '#shared/job-file/read-job.ts';

const FOLDER = new URL('../../reference/rooms/', import.meta.url);
const WINDOWS: readonly PaperWindow[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.json'))
  .flatMap((name) => {
    const read = readJobText(readFileSync(new URL(name, FOLDER), 'utf8'));
    if (!read.ok) throw new Error(`${name} cannot be read`);
    const given = { number: '1', revision: 1, date: '2026-11-25', validUntil: null, audience: 'client' } as const;
    return assembleProposal(read.job, priceJob(read.job), given).windows;
  });

/** What is said after the layers, clause by clause; a step that goes on (`fuller`, `a little more`) may well come twice. */
function clausesOf(says: string): readonly string[] {
  const told = says.replace(/^[^.]*\. /u, '').replace(/^Against [^:]*: /u, '');
  return told
    .replace(/\.$/u, '')
    .split(/, | and /u)
    .map((clause) => clause.toLowerCase())
    .filter((clause) => !/^(fuller|firmer|softer|a little) /u.test(clause));
}

describe('the options of a window', () => {
  it('are different texts, none repeats a clause of the one before it, and what is the same says so', () => {
    for (const { words, options } of WINDOWS) {
      const own = options.filter(({ title }) => !title.startsWith('The same as '));
      for (const { says, readings, litWindow } of options.filter((each) => !own.includes(each))) {
        expect(says, words).toMatch(/^Nothing more is offered\. /);
        expect([readings, litWindow], words).toEqual([[], null]);
      }
      expect(new Set(own.map(({ says }) => says)).size, words).toBe(own.length);
      const [good, better, best] = own.map(({ says }) => clausesOf(says));
      const again = [better?.filter((each) => good?.includes(each)), best?.filter((each) => better?.includes(each))];
      expect(
        again.flatMap((each) => each ?? []),
        words,
      ).toEqual([]);
    }
  });
  it('are short, whole sentences without figures that nobody reckoned', () => {
    for (const { options } of WINDOWS)
      for (const { says } of options) {
        expect(says).toMatch(/^[A-Z].*\.$/u);
        expect(says.length).toBeLessThan(290);
        expect(says).not.toMatch(/undefined|NaN|null/u);
      }
  });
});

it('rooms that differ read differently: hardly a text is printed twice in twelve rooms', () => {
  const texts = WINDOWS.flatMap(({ options }) =>
    options.filter(({ readings }) => readings.length > 0).map(({ says }) => says),
  );
  expect(new Set(texts).size).toBeGreaterThan(texts.length * 0.8);
});
