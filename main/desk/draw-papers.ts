/** Draws papers with what the desk has and the documents lack: fonts, a lasting name, the page of the place. */
import type { DocumentGiven, DrawnDocument, PageSize } from '#app/documents/document-given.ts';
import { drawMeasureSheet } from '#app/documents/draw-measure-sheet.ts';
import { drawProposal } from '#app/documents/draw-proposal.ts';
import { drawWorkPages } from '#app/documents/draw-work-pages.ts';
import { MissingLetter } from '#app/documents/missing-letter.ts';
import type { NamedJob } from '#app/pricing/plan-together.ts';
import type { WorkLaid } from '#app/pricing/plan-work.ts';
import type { WorkPaper } from '#app/proposal/work-paper.ts';
import type { ProposalPaper } from '#app/proposal/proposal-paper.ts';
import type { Job } from '#shared/job.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { Locale } from '#shared/locale.ts';
import type { ProjectDocument, SettingsRecord } from '#shared/records/records.ts';
import { localDate } from './calendar.ts';
import { badInput } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';

/** Letter paper where it is what shops sell and lengths are inches; ISO 216 elsewhere. */
function pageOf(locale: Locale, units: LengthUnit): PageSize {
  return units === 'in' && (locale === 'en-US' || locale === 'en-CA') ? 'letter' : 'a4';
}

/** The PDF of a proposal. The same id and paper give the same bytes. Throws BAD_INPUT when no typeface has a letter. */
export async function drawProposalPaper(
  parts: DeskParts,
  id: string,
  paper: ProposalPaper,
  place: Pick<Job, 'locale' | 'units'>,
): Promise<DrawnDocument> {
  const given = await documentGiven(parts, id, place);
  return tellMissingLetter(() => drawProposal(paper, given));
}

/** The work sheets of a job, for the workroom. */
export async function drawWorkPaper(
  parts: DeskParts,
  id: string,
  paper: WorkPaper,
  place: Pick<Job, 'locale' | 'units'>,
): Promise<DrawnDocument> {
  const given = await documentGiven(parts, id, place);
  return tellMissingLetter(() => drawWorkPages(paper, given));
}

/**
 * The cut plans of a job, drawn off this thread. The same id, job, work and day give the same bytes. Null: it was left
 * before it was done (`parts.cutPapers.leave`).
 */
export async function drawCutPaper(
  parts: DeskParts,
  id: string,
  job: Job,
  of: WorkLaid,
): Promise<DrawnDocument | null> {
  const given = await documentGiven(parts, id, job);
  const date = localDate(parts.clock());
  return tellMissingLetter(() => parts.cutPapers.draw(id, { work: { is: 'one job', job, of }, date, given }));
}

/** The cut plans of the accepted work of several jobs together; words and units of the first. */
export async function drawCutPaperTogether(
  parts: DeskParts,
  id: string,
  jobs: readonly [NamedJob, ...NamedJob[]],
): Promise<DrawnDocument | null> {
  const given = await documentGiven(parts, id, jobs[0].job);
  const date = localDate(parts.clock());
  return tellMissingLetter(() => parts.cutPapers.draw(id, { work: { is: 'several jobs', jobs }, date, given }));
}

/** A sheet to measure with: of a project's rooms and windows, or blank. */
export async function drawMeasurePaper(
  parts: DeskParts,
  settings: SettingsRecord,
  document: ProjectDocument | null,
): Promise<DrawnDocument> {
  const locale = document?.project.locale ?? settings.locale;
  const rooms = (document?.rooms ?? []).map((room) => ({
    name: room.name,
    windows: room.openings.map((opening) => opening.name),
  }));
  const units = document?.project.units ?? settings.units;
  const given = await documentGiven(parts, document?.project.id ?? 'blank', { locale, units });
  return tellMissingLetter(() =>
    drawMeasureSheet({
      ...given,
      letterhead: { name: settings.letterhead.name, lines: settings.letterhead.lines },
      client: document?.client.name ?? null,
      date: localDate(parts.clock()),
      units,
      rooms,
    }),
  );
}

async function documentGiven(
  parts: DeskParts,
  id: string,
  { locale, units }: Pick<Job, 'locale' | 'units'>,
): Promise<DocumentGiven> {
  return { fonts: await parts.readFonts(), id, programVersion: parts.programVersion, page: pageOf(locale, units) };
}

async function tellMissingLetter<Drawn>(draw: () => Promise<Drawn>): Promise<Drawn> {
  try {
    return await draw();
  } catch (error) {
    if (!(error instanceof MissingLetter)) throw error;
    throw badInput([
      {
        path: error.field,
        wrong: `"${error.letter}" is in none of the paper's typefaces`,
        right: 'write it in Latin letters',
      },
    ]);
  }
}
