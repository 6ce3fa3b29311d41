/** Puts papers where the decorator finds them: a folder a client, in the papers folder of this computer. */
import path from 'node:path';
import type { ProposalRecord } from '#shared/records/records.ts';
import { makeFileName } from '#main/files/make-file-name.ts';
import { writeBeside } from '#main/files/write-file.ts';
import { placePaper, readProposal, readProposalPdf } from '#main/portfolio/proposals.ts';
import type { ListedProposal } from '#main/portfolio/proposals.ts';
import { mustFind } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';

export interface StoredPaper {
  readonly proposal: ListedProposal;
  readonly pdf: Uint8Array;
}

/** Throws NOT_FOUND. */
export function readStoredPaper(parts: DeskParts, id: string): StoredPaper {
  return parts.door.read((reading) => ({
    proposal: mustFind(readProposal(reading, id), 'proposal', id),
    pdf: mustFind(readProposalPdf(reading, id), 'proposal', id),
  }));
}

/**
 * Writes a proposal's PDF as `papers folder/Client/2026-014.pdf` unless it lies there already, notes where, and returns
 * the record as it is then. Throws FILE_TROUBLE; the stored proposal is not touched by it.
 */
export function writePaperOut(parts: DeskParts, id: string): ProposalRecord {
  const { proposal, pdf } = readStoredPaper(parts, id);
  const file = writeBeside(findClientFolder(parts, proposal.clientName), namePaper(proposal), pdf);
  return parts.door.write((writing) => {
    placePaper(writing, proposal, file, parts.now());
    const {
      clientName: _client,
      projectName: _project,
      ...record
    } = mustFind(readProposal(writing, id), 'proposal', id);
    return record;
  });
}

export function findClientFolder({ machine }: DeskParts, clientName: string): string {
  return path.join(machine.papersFolder(), makeFileName(clientName, 'Client'));
}

/** `2026-014.pdf`, `2026-014 revision 2.pdf`. */
export function namePaper(proposal: Pick<ProposalRecord, 'number' | 'revision'>): string {
  return makeFileName(sayNumber(proposal), 'Proposal', '.pdf');
}

/** What a client sees as the name of the file: `Ada Fenn 2026-014.pdf`. */
export function namePaperToSend(proposal: ListedProposal): string {
  return makeFileName(`${proposal.clientName} ${sayNumber(proposal)}`, 'Proposal', '.pdf');
}

function sayNumber({ number, revision }: Pick<ProposalRecord, 'number' | 'revision'>): string {
  return revision === 1 ? number : `${number} revision ${revision}`;
}
