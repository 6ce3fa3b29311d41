/** The cut plan of a project, or of the accepted work of all, as a paper: from the portfolio as it is now. */
import type { DrawnDocument } from '#app/documents/document-given.ts';
import type { NamedJob } from '#app/pricing/plan-together.ts';
import { workToOrder } from '#app/pricing/plan-work.ts';
import type { Job } from '#shared/job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { writeJob } from '#shared/job-file/write-job.ts';
import type { ProjectDocument } from '#shared/records/records.ts';
import { makeFileName } from '#main/files/make-file-name.ts';
import { listAcceptedProjects } from '#main/portfolio/projects.ts';
import { badInput, notFound } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import { drawCutPaper, drawCutPaperTogether } from './draw-papers.ts';
import { freeName } from './new-records.ts';
import { readDocument } from './read-document.ts';

/** What the plan over all accepted work goes by, where a project has its id. */
export const ALL_ACCEPTED = 'accepted';

/** Under which its drawing is watched and left. */
export function nameCutPaper(id: string): string {
  return `${id}-cut`;
}

export interface CutPlanDrawn {
  readonly name: string;
  readonly drawn: DrawnDocument;
}

/**
 * Over the accepted work of the project, else over what is likely. Prices are not asked for. Null: it was left before it
 * was done. Throws NOT_FOUND, and BAD_INPUT where the project holds what cannot be read.
 */
export function drawCutPlan(parts: DeskParts, id: string): Promise<CutPlanDrawn | null> {
  return id === ALL_ACCEPTED ? drawAccepted(parts) : drawProject(parts, id);
}

async function drawProject(parts: DeskParts, id: string): Promise<CutPlanDrawn | null> {
  const document = parts.door.read((reading) => readDocument(reading, id));
  const job = readWhole(document);
  const drawn = await drawCutPaper(parts, nameCutPaper(id), job, workToOrder(job));
  return named(makeFileName(`${document.client.name} cut plans`, 'Cut plans', '.pdf'), drawn);
}

async function drawAccepted(parts: DeskParts): Promise<CutPlanDrawn | null> {
  const documents = parts.door.read((reading) =>
    listAcceptedProjects(reading).map((project) => readDocument(reading, project)),
  );
  const taken: string[] = [];
  const [first, ...others] = documents.map((document): NamedJob => {
    const name = freeName(document.client.name.trim() === '' ? document.project.name : document.client.name, taken);
    taken.push(name);
    return { name, job: readWhole(document) };
  });
  if (first === undefined) throw notFound('project', ALL_ACCEPTED);
  const drawn = await drawCutPaperTogether(parts, nameCutPaper(ALL_ACCEPTED), [first, ...others]);
  return named('Cut plans of accepted work.pdf', drawn);
}

function readWhole(document: ProjectDocument): Job {
  const read = readJob(writeJob(document).wire);
  if (!read.ok) throw badInput(read.faults);
  return read.job;
}

function named(name: string, drawn: DrawnDocument | null): CutPlanDrawn | null {
  return drawn === null ? null : { name, drawn };
}
