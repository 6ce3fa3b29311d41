/** The last page: terms, the cancellation notice, and the lines on which a client accepts. */
import type { Job } from '#shared/job.ts';
import type { JobResult } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import { pieceWord } from './listed-window.ts';
import type { ListedWindow } from './listed-window.ts';
import type { PaperClosing } from './proposal-paper.ts';
import { sayList } from './speak.ts';
import type { Speech } from './speak.ts';
import { byTier, pricesOf } from './write-summary.ts';

/** Printed when the decorator has written no terms of her own: only what this paper itself rests on. */
const PLAIN_TERMS = [
  'Prices are for the windows, sizes and cloth named here, made, lined and hung. Work is made to your measure after final measuring; if a final measurement changes a price, you hear of it before any cloth is cut.',
];

/** Cancellation law is local: the default gives none of its own and takes none away. */
const DEFERRING_NOTICE = [
  'Where the law of the place of signing gives you time to change your mind, you may cancel within that time, in writing and without giving a reason. That law decides how long the time is, what is paid back and how work made to your measure is treated; nothing on this paper takes away a right that it gives you.',
];

export function writeClosing(
  job: Job,
  result: JobResult,
  windows: readonly ListedWindow[],
  speech: Speech,
): PaperClosing {
  const { terms, cancellation } = job.proposal;
  const own = cancellation?.trim() ?? '';
  const given = terms?.trim() ?? '';
  return {
    terms: given === '' ? PLAIN_TERMS : [given],
    cancellation:
      own === ''
        ? { says: DEFERRING_NOTICE, blanks: ['Cancel in writing to', 'no later than midnight of'] }
        : { says: [own], blanks: [] },
    acceptance: {
      says: [`Tick one option for each ${pieceWord(windows)}, or none where you would rather wait.`],
      tierNames: byTier((tier) => job.proposal.tierNames[tier]),
      lines: windows.map((window) => ({
        room: window.room.name,
        opening: window.name,
        prices: pricesOf(window, speech),
      })),
      deposit: sayDeposit(job, result, speech),
      blanks: ['Signature', 'Name in print', 'Date'],
    },
  };
}

function sayDeposit(job: Job, result: JobResult, speech: Speech): string {
  const share = speech.percent(job.priceBook.deposit.share);
  const rule = `With your signature a deposit of ${share} of the total with tax is due; work begins when it is here.`;
  const { totals } = result;
  if (totals === null) return rule;
  const each = TIERS.map((tier) => `${speech.money(totals[tier].deposit)} for ${job.proposal.tierNames[tier]}`);
  return `${rule} For one option throughout that is ${sayList(each)}.`;
}
