/** Words round a proposal. */
import type { ProposalRecord } from '#shared/records/records.ts';

export const STATE_WORDS: Readonly<Record<ProposalRecord['state'], string>> = {
  made: 'made',
  sent: 'sent',
  accepted: 'accepted',
  declined: 'declined',
};

export function sayRevision(record: Pick<ProposalRecord, 'number' | 'revision'>): string {
  return record.revision > 1 ? `${record.number}, revision ${record.revision}` : record.number;
}

/** The letter that goes along: hers to change before anything is written. */
export function writeLetter(given: {
  readonly clientName: string;
  readonly decorator: string;
  readonly validUntil: string;
}): string {
  const first = given.clientName.trim().split(/\s+/)[0] ?? '';
  return [
    `Dear ${first === '' ? 'client' : first},`,
    '',
    'here is my proposal for your windows. For each there are three ways to make it; the pages show how each looks, what it does by day and by night, and what it costs.',
    '',
    `It holds until ${given.validUntil}. Tick one box for each window, sign on the last page, and send it back; or call me with anything you would like changed.`,
    '',
    'With kind regards',
    given.decorator,
  ].join('\n');
}
