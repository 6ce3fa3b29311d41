import { createHash } from 'node:crypto';
import { workToOrder } from '#app/pricing/plan-work.ts';
import { assembleProposal } from '#app/proposal/assemble-proposal.ts';
import { readJobText } from '#shared/job-file/read-job.ts';
import { writeJob } from '#shared/job-file/write-job.ts';
import { writeSchema } from '#shared/job-file/write-schema.ts';
import { makeFileName } from '#main/files/make-file-name.ts';
import { writeBeside, writeOver } from '#main/files/write-file.ts';
import { localDate } from './calendar.ts';
import type { DeskParts } from './desk-parts.ts';
import { drawCutPaper, drawProposalPaper } from './draw-papers.ts';
import type { Implementer } from './implementer.ts';
import { importJob, readWireText } from './import-job.ts';
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
      const { job } = priceRead(readJobText(input.text), (fault) => fault, 'strict');
      const id = createHash('sha256').update(`cut ${input.text}`).digest('hex');
      const { bytes, pages } = await drawCutPaper(parts, id, job, input.tier ?? workToOrder(job));
      return { pdf: Buffer.from(bytes).toString('base64'), pages };
    }),

    writeSchema: os.writeSchema.handler(({ input }) => ({ schema: writeSchema(input.of) })),
  };
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
