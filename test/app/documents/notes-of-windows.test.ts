/** What a window asks its client to heed: the gravest beside its options, the rest at the end, and no page for a few lines. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { layOutProposal } from '#app/documents/lay-out-proposal.ts';
import { FRAMES } from '#app/documents/paper-style.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import { assembleProposal } from '#app/proposal/assemble-proposal.ts';
import { readJobText } from '#shared/job-file/read-job.ts';
import { fontSet, placedTexts } from './read-paper.ts';

const fonts = fontSet();

function paperOf(room: string) {
  const read = readJobText(readFileSync(new URL(`../../reference/rooms/${room}.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(`${room} cannot be read`);
  const given = { number: '1', revision: 1, date: '2026-11-25', validUntil: null, audience: 'client' } as const;
  return assembleProposal(read.job, priceJob(read.job), given);
}

const ROOMS = ['01-nursery-east', '08-roman-childs-room', '14-hotel-and-flat'];

describe.each(ROOMS)('%s', (room) => {
  const paper = paperOf(room);
  const pages = layOutProposal(paper, FRAMES.letter, fonts).map((page) =>
    placedTexts(page, fonts)
      .map(({ text }) => text)
      .join(' ')
      .replace(/\s+/gu, ' '),
  );

  it('no page holds a few lines alone', () => {
    // The page to sign is the shortest.
    for (const page of pages) expect(page.length, page).toBeGreaterThan(400);
  });
  it('every piece of every note is on the paper, once for each time that it is told', () => {
    const all = pages.join(' ');
    for (const window of paper.windows)
      for (const note of window.notes)
        for (const part of note.parts ?? [note.says]) expect(all).toContain(part.replace(/\s+/gu, ' '));
  });
  it('the first caution of a window stands on its own page, which says where the others are', () => {
    for (const window of paper.windows) {
      const own = pages.find((page) => page.includes(window.count) && page.includes('Our advice.')) ?? '';
      const [first] = window.notes.filter(({ level }) => level === 'caution');
      // A stop over the options can take the last room under them; then all stands at the end.
      if (first === undefined || own.includes('Not advised')) continue;
      expect(own, window.opening).toContain((first.parts?.[0] ?? first.says).replace(/\s+/gu, ' '));
      const left = window.notes.some((note) =>
        (note.parts ?? [note.says]).some((part) => !own.includes(part.replace(/\s+/gu, ' '))),
      );
      expect(own.includes('stands at the end, under its name'), window.opening).toBe(left);
    }
  });
});
