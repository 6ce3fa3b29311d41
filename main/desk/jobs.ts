import { createHash } from 'node:crypto';
import type { NamedJob } from '#app/pricing/plan-together.ts';
import { workToOrder } from '#app/pricing/plan-work.ts';
import { assembleProposal } from '#app/proposal/assemble-proposal.ts';
import type { Fault } from '#shared/fault.ts';
import { readJobText } from '#shared/job-file/read-job.ts';
import { writeJob } from '#shared/job-file/write-job.ts';
import { writeSchema } from '#shared/job-file/write-schema.ts';
import { makeFileName } from '#main/files/make-file-name.ts';
import { writeBeside, writeOver } from '#main/files/write-file.ts';
import { localDate } from './calendar.ts';
import { badInput, refused } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import { drawCutPaper, drawCutPaperTogether, drawProposalPaper } from './draw-papers.ts';
import type { Implementer } from './implementer.ts';
import { importJob, readWireText } from './import-job.ts';
import { freeName } from './new-records.ts';
import { priceRead } from './price-text.ts';
import { readDocument } from './read-document.ts';
import { findClientFolder } from './write-paper-out.ts';

const JOB_FILE = [{ name: 'Linenfold job', extensions: ['json'] }];

export function makeJobRequests(os: Implementer['jobs'], parts: DeskParts) {
  const { door, machine, clock } = parts;
  return {
    importJob: os.importJob.handler(({ input }) => {
      const wire = readWireText(input.text);
      return door.write((writing) =>
        importJob(writing, wire, parts, { projectName: 'Imported job', sample: false, notes: '' }),
      );
    }),

    exportJob: os.exportJob.handler(({ input }) => {
      const { text, fileName } = exportJob(parts, input.projectId);
      return { text, fileName };
    }),

    saveJob: os.saveJob.handler(async ({ input }) => {
      const { text, fileName, clientName } = exportJob(parts, input.projectId);
      const bytes = Buffer.from(text, 'utf8');
      if (machine.lacks.includes('chooseSavePath'))
        return { file: writeBeside(findClientFolder(parts, clientName), fileName, bytes) };
      const file = await machine.chooseSavePath(fileName, JOB_FILE);
      if (file !== null) writeOver(file, bytes);
      return { file };
    }),

    priceJob: os.priceJob.handler(({ input }) => priceRead(readJobText(input.text), (fault) => fault, 'strict').wire),

    proposeJob: os.proposeJob.handler(async ({ input }) => {
      const { job, result } = priceRead(readJobText(input.text));
      const { number, date, validUntil } = job.proposal;
      const paper = assembleProposal(job, result, {
        number,
        revision: 1,
        date: date ?? localDate(clock()),
        validUntil,
        audience: 'client',
      });
      const id = createHash('sha256').update(input.text).digest('hex');
      const { bytes, pages } = await drawProposalPaper(parts, id, paper, job);
      return { pdf: Buffer.from(bytes).toString('base64'), pages };
    }),

    drawCutPlan: os.drawCutPlan.handler(async ({ input }) => {
      const [first, ...others] = readHouses(input.texts);
      if (first === undefined) throw badInput([{ path: 'texts', wrong: 'is empty', right: 'give a job file' }]);
      const id = createHash('sha256')
        .update(`cut ${input.texts.join('\n')}`)
        .digest('hex');
      const drawn =
        others.length === 0
          ? await drawCutPaper(parts, id, first.job, input.tier ?? workToOrder(first.job))
          : await drawCutPaperTogether(parts, id, [first, ...others]);
      if (drawn === null) throw refused('The drawing was ended before it was done.', 'Ask for it again.');
      return { pdf: Buffer.from(drawn.bytes).toString('base64'), pages: drawn.pages };
    }),

    writeSchema: os.writeSchema.handler(({ input }) => ({ schema: writeSchema(input.of) })),
  };
}

/** Job files by their clients' names; of several, a fault says first in which it is. */
function readHouses(texts: readonly string[]): NamedJob[] {
  const taken: string[] = [];
  return texts.map((text) => {
    const read = readJobText(text);
    const name = freeName(read.ok ? read.job.client.name : `job ${taken.length + 1}`, taken);
    taken.push(name);
    const tell = (fault: Fault): Fault => (texts.length === 1 ? fault : { ...fault, path: `${name}: ${fault.path}` });
    return { name, job: priceRead(read, tell, 'strict').job };
  });
}

export interface ExportedJob {
  readonly text: string;
  readonly fileName: string;
  readonly clientName: string;
}

/** A project as a job file. What is not measured yet is left out of it. Throws NOT_FOUND. */
export function exportJob({ door }: DeskParts, projectId: string): ExportedJob {
  const document = door.read((reading) => readDocument(reading, projectId));
  const { client, project } = document;
  return {
    text: `${JSON.stringify(writeJob(document).wire, null, 2)}\n`,
    fileName: makeFileName(`${client.name} ${project.name}`, 'Job', '.json'),
    clientName: client.name,
  };
}
