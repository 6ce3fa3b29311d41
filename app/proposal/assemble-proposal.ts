/** Puts together what a proposal prints. Pure: the same job, result and head always give the same paper. */
import type { Job } from '#shared/job.ts';
import type { JobResult } from '#shared/result.ts';
import { collectNotes } from './collect-notes.ts';
import { listWindows, pieceWord } from './listed-window.ts';
import type { ListedWindow } from './listed-window.ts';
import type { Audience, ProposalPaper } from './proposal-paper.ts';
import { showHouse } from './show-house.ts';
import { capital, sayCount, speechOf } from './speak.ts';
import { writeClosing } from './write-closing.ts';
import { writeSummary } from './write-summary.ts';
import { writeWindow } from './write-window.ts';
import { writeWorking } from './write-working.ts';

export interface ProposalGiven {
  /** `2026-014`; null prints "Proposal" alone. */
  readonly number: string | null;
  /** 1 is the first; it is printed from 2 on. */
  readonly revision: number;
  /** ISO dates. */
  readonly date: string;
  readonly validUntil: string | null;
  readonly audience: Audience;
}

/** Marks of a paper whose prices rest on the program's example rates. */
export const EXAMPLE_MARKS: Readonly<Record<Audience, string>> = {
  client: 'Draft: prices from example rates',
  decorator: 'Example rates: enter your own before you send this',
};

/**
 * The paper of a job and its result, which belong together. Treatments that have no result are left out. Lengths stand
 * in the job's units, money and dates in its locale.
 */
export function assembleProposal(job: Job, result: JobResult, given: ProposalGiven): ProposalPaper {
  const speech = speechOf(job);
  const windows = listWindows(job, result);
  const results = new Map(result.treatments.map((treatment) => [treatment.key, treatment]));
  const notes = collectNotes(job, windows);
  const reference = sayReference(given);
  return {
    form: 1,
    audience: given.audience,
    language: 'en',
    title: `${reference}, for ${job.client.name}${given.audience === 'decorator' ? ' (decorator’s copy)' : ''}`,
    date: given.date,
    letterhead: job.letterhead,
    reference,
    dated: speech.date(given.date),
    holds: given.validUntil === null ? null : `holds until ${speech.date(given.validUntil)}`,
    client: {
      name: job.client.name,
      lines: [...(job.client.address?.split('\n') ?? []), job.client.email ?? ''].filter((line) => line.trim() !== ''),
    },
    mark: result.exampleRates ? EXAMPLE_MARKS[given.audience] : null,
    opening: sayOpening(windows),
    overview: showHouse(job, results),
    summary: writeSummary(job, result, windows, speech),
    windows: windows.map((window, index) =>
      writeWindow({
        job,
        results,
        window,
        place: { index, count: windows.length, what: pieceWord(windows) },
        notes: notes.own,
        speech,
      }),
    ),
    notes: notes.shared,
    closing: writeClosing(job, result, windows, speech),
    working: given.audience === 'client' ? [] : windows.map((window) => writeWorking(job, result, window, speech)),
  };
}

function sayReference(given: ProposalGiven): string {
  const number = given.number === null || given.number.trim() === '' ? 'Proposal' : `Proposal ${given.number.trim()}`;
  return given.revision > 1 ? `${number}, revision ${given.revision}` : number;
}

function sayOpening(windows: readonly ListedWindow[]): string {
  const count = windows.length;
  const what = pieceWord(windows);
  const pieces = count === 1 ? `One ${what}` : `${capital(sayCount(count))} ${what}s`;
  const each = count === 1 ? 'worked out three ways' : 'each worked out three ways';
  return `${pieces}, ${each}. What hangs behind the cloth makes the difference; the pages that follow show what each does for the room.`;
}
