/** Papers by address, `/papers/<kind>/<id>`: what a page shows or offers for download. */
import { ORPCError } from '@orpc/server';
import { assembleProposal } from '#app/proposal/assemble-proposal.ts';
import { assembleWork } from '#app/proposal/assemble-work.ts';
import { readJob, readJobText } from '#shared/job-file/read-job.ts';
import { writeJob } from '#shared/job-file/write-job.ts';
import type { Tier } from '#shared/words.ts';
import type { Paper } from '#main/host/served-desk.ts';
import { writeDraft } from '#main/mail/write-draft.ts';
import { makeFileName } from '#main/files/make-file-name.ts';
import { readMailDraft } from '#main/portfolio/mail-drafts.ts';
import { readProposal, readProposalResult } from '#main/portfolio/proposals.ts';
import { PortfolioUnavailable } from '#main/portfolio/portfolio-trouble.ts';
import { localDate } from './calendar.ts';
import { DEFAULT_SETTINGS, readSettings } from './default-settings.ts';
import { mustFind } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import { drawCutPlan } from './draw-cut-plan.ts';
import { drawMeasurePaper, drawProposalPaper, drawWorkPaper } from './draw-papers.ts';
import { exportJob } from './jobs.ts';
import { priceRead } from './price-text.ts';
import { readDocument } from './read-document.ts';
import { namePaperToSend, readStoredPaper } from './write-paper-out.ts';

type Reader = (parts: DeskParts, id: string) => Promise<Paper | null>;

const READERS: Readonly<Record<string, Reader>> = {
  proposal: readProposalPaper,
  'decorator-copy': readDecoratorCopy,
  draft: readDraftPaper,
  'measure-sheet': readMeasureSheet,
  job: readJobPaper,
  'work-sheets': readWorkSheets,
  'cut-plan': readCutPlan,
};

/** The paper of that kind and id; null when there is none, or when the portfolio that would hold it cannot be opened. */
export async function readPaper(parts: DeskParts, kind: string, id: string): Promise<Paper | null> {
  const reader = Object.hasOwn(READERS, kind) ? READERS[kind] : undefined;
  if (reader === undefined) return null;
  try {
    return await reader(parts, id);
  } catch (error) {
    if (error instanceof PortfolioUnavailable) return null;
    if (error instanceof ORPCError && error.code === 'NOT_FOUND') return null;
    throw error;
  }
}

async function readProposalPaper(parts: DeskParts, id: string): Promise<Paper> {
  const { proposal, pdf } = readStoredPaper(parts, id);
  return { name: namePaperToSend(proposal), type: 'application/pdf', bytes: pdf };
}

/** The same proposal with take-off, working and price lines: drawn again from what was frozen, never from today's prices. */
async function readDecoratorCopy(parts: DeskParts, id: string): Promise<Paper> {
  const { proposal, jobFile } = parts.door.read((reading) => ({
    proposal: mustFind(readProposal(reading, id), 'proposal', id),
    jobFile: mustFind(readProposalResult(reading, id), 'proposal', id).jobFile,
  }));
  const { job, result } = priceRead(readJobText(jobFile));
  const { number, revision, date, validUntil } = proposal;
  const paper = assembleProposal(job, result, { number, revision, date, validUntil, audience: 'decorator' });
  const { bytes } = await drawProposalPaper(parts, `${id}-decorator`, paper, job);
  const name = makeFileName(`${proposal.clientName} ${number} decorator's copy`, 'Proposal', '.pdf');
  return { name, type: 'application/pdf', bytes };
}

async function readDraftPaper(parts: DeskParts, id: string): Promise<Paper> {
  const draft = mustFind(
    parts.door.read((reading) => readMailDraft(reading, id)),
    'proposal',
    id,
  );
  const { proposal, pdf } = readStoredPaper(parts, draft.proposalId);
  const attachment = { name: namePaperToSend(proposal), bytes: pdf };
  const bytes = await writeDraft({ ...draft, date: new Date(draft.createdAt), attachment });
  return {
    name: makeFileName(`${proposal.clientName} ${proposal.number}`, 'Proposal', '.eml'),
    type: 'message/rfc822',
    bytes,
  };
}

async function readMeasureSheet(parts: DeskParts, id: string): Promise<Paper> {
  if (id !== 'blank') {
    const document = parts.door.read((reading) => readDocument(reading, id));
    const { bytes } = await drawMeasurePaper(parts, document.settings, document);
    const name = makeFileName(`${document.client.name} measure sheet`, 'Measure sheet', '.pdf');
    return { name, type: 'application/pdf', bytes };
  }
  const { bytes } = await drawMeasurePaper(parts, readSettingsOrDefaults(parts), null);
  return { name: 'Measure sheet.pdf', type: 'application/pdf', bytes };
}

/** A blank sheet can be had even while the portfolio cannot. */
function readSettingsOrDefaults(parts: DeskParts): typeof DEFAULT_SETTINGS {
  try {
    return parts.door.read(readSettings);
  } catch (error) {
    if (error instanceof PortfolioUnavailable) return DEFAULT_SETTINGS;
    throw error;
  }
}

/** The work sheets of a project as it is now, a page a treatment, as accepted or else as advised; of declined work none. */
async function readWorkSheets(parts: DeskParts, id: string): Promise<Paper> {
  const document = parts.door.read((reading) => readDocument(reading, id));
  const { job, result } = priceRead(readJob(writeJob(document).wire));
  const decisions = new Map(
    job.rooms.flatMap(({ openings }) =>
      openings.flatMap(({ treatments }) => treatments.map(({ key, decision }) => [key, decision ?? null] as const)),
    ),
  );
  const treatments = result.treatments.filter(({ key }) => decisions.get(key) !== 'declined');
  const chosen = Object.fromEntries(
    treatments.flatMap(({ key, advised }): [string, Tier][] => {
      const decision = decisions.get(key) ?? advised.tier;
      return decision === 'declined' ? [] : [[key, decision]];
    }),
  );
  const work = assembleWork(job, { ...result, treatments }, { date: localDate(parts.clock()), number: null, chosen });
  const { bytes } = await drawWorkPaper(parts, `${id}-work`, work, job);
  const name = makeFileName(`${document.client.name} work sheets`, 'Work sheets', '.pdf');
  return { name, type: 'application/pdf', bytes };
}

/** Drawn by a request before, it is there at once; else it is drawn now, off this thread. */
async function readCutPlan(parts: DeskParts, id: string): Promise<Paper | null> {
  const plan = await drawCutPlan(parts, id);
  return plan === null ? null : { name: plan.name, type: 'application/pdf', bytes: plan.drawn.bytes };
}

async function readJobPaper(parts: DeskParts, id: string): Promise<Paper> {
  const { text, fileName } = exportJob(parts, id);
  return { name: fileName, type: 'application/json', bytes: Buffer.from(text, 'utf8') };
}
