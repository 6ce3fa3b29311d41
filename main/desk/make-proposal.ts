/** Makes a proposal: prices the project, draws the PDF, freezes both in one transaction, then writes the PDF out. */
import { createHash } from 'node:crypto';
import { assembleProposal } from '#app/proposal/assemble-proposal.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { writeJob } from '#shared/job-file/write-job.ts';
import type { ProjectDocument, ProposalRecord } from '#shared/records/records.ts';
import type { ReadConnection } from '#main/portfolio/connection.ts';
import { addProposal, nextOrdinal, readLastProposal } from '#main/portfolio/proposals.ts';
import type { LastProposal } from '#main/portfolio/proposals.ts';
import { addDays, localDate } from './calendar.ts';
import { badInput } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import { drawProposalPaper } from './draw-papers.ts';
import { findUnfinished, toDocumentPath } from './find-unfinished.ts';
import { priceRead } from './price-text.ts';
import { readDocument } from './read-document.ts';
import { writePaperOut } from './write-paper-out.ts';

export interface ProposalAsked {
  readonly projectId: string;
  readonly terms?: string | undefined;
  readonly cancellation?: string | undefined;
  readonly tierNames?: { readonly good: string; readonly better: string; readonly best: string } | undefined;
}

interface Numbering {
  readonly date: string;
  readonly validUntil: string;
  readonly year: number;
  readonly ordinal: number;
  readonly number: string;
  readonly revision: number;
  readonly last: LastProposal | null;
}

/**
 * Asked again with nothing changed since, it hands back the newest one instead of a twin. Throws BAD_INPUT with every
 * fault; FILE_TROUBLE when the PDF could not be written out, with the proposal stored.
 */
export async function makeProposal(parts: DeskParts, asked: ProposalAsked): Promise<ProposalRecord> {
  const { document, numbering } = parts.door.read((reading) => {
    const found = readDocument(reading, asked.projectId);
    return { document: found, numbering: countUp(reading, found, parts.clock()) };
  });
  const { number, date, validUntil, revision } = numbering;
  const { terms, cancellation, tierNames } = asked;
  const written = writeJob(document, { number, date, validUntil, terms, cancellation, tierNames });
  const unfinished = findUnfinished(document, written);
  if (unfinished.length > 0) throw badInput(unfinished);
  const jobFile = JSON.stringify(written.wire, null, 2);
  if (numbering.last?.jobFile === jobFile) return writePaperOut(parts, numbering.last.id);
  const { job, result, wire } = priceRead(readJob(written.wire), toDocumentPath(document, written));
  const paper = assembleProposal(job, result, { number, revision, date, validUntil, audience: 'client' });
  const id = parts.makeId();
  const drawn = await drawProposalPaper(parts, id, paper, job);
  const record: ProposalRecord = {
    id,
    projectId: document.project.id,
    number,
    revision,
    state: 'made',
    date,
    validUntil,
    createdAt: parts.now(),
    programVersion: parts.programVersion,
    currency: job.currency,
    locale: job.locale,
    totals: { good: wire.totals.good.total, better: wire.totals.better.total, best: wire.totals.best.total },
    file: null,
    pages: drawn.pages,
  };
  parts.door.write((writing) => {
    addProposal(writing, {
      record,
      year: numbering.year,
      ordinal: numbering.ordinal,
      sample: document.client.sample,
      files: {
        pdf: drawn.bytes,
        sha256: createHash('sha256').update(drawn.bytes).digest('hex'),
        jobFile,
        result: wire,
        paper,
      },
    });
  });
  return writePaperOut(parts, id);
}

/** `2026-014`: counted over the year by its first revision; a project keeps its number, and its revisions count up. */
function countUp(reading: ReadConnection, document: ProjectDocument, moment: Date): Numbering {
  const date = localDate(moment);
  const year = Number(date.slice(0, 4));
  const last = readLastProposal(reading, document.project.id);
  const ordinal = last?.ordinal ?? nextOrdinal(reading, year);
  return {
    date,
    validUntil: addDays(date, document.settings.holdsDays),
    year: last?.year ?? year,
    ordinal,
    number: last?.number ?? `${date.slice(0, 4)}-${String(ordinal).padStart(3, '0')}`,
    revision: (last?.revision ?? 0) + 1,
    last,
  };
}
