/**
 * The one contract. Every request that crosses between what people see and what touches the computer is listed here
 * once: its input, its output, its errors. Both shells and the command line serve the same desk from it.
 */
import { oc } from '@orpc/contract';
import * as z from 'zod';
import { wireResult } from '../job-file/wire-result.ts';
import { cuttingRecord, remnantRecord } from '../records/cutting-records.ts';
import { recordId, instant } from '../records/record-fields.ts';
import {
  clientRecord,
  clothRecord,
  historyRecord,
  openingRecord,
  PROPOSAL_STATES,
  projectDocument,
  projectRecord,
  proposalRecord,
  roomRecord,
  settingsRecord,
  treatmentRecord,
} from '../records/records.ts';
import { TIERS } from '../words.ts';
import { ERRORS, portfolioTrouble } from './errors.ts';

const base = oc.errors(ERRORS);
const nothing = z.object({});
const byId = z.object({ id: recordId });
/** Null: of the accepted work of all projects. */
const ofCutPlan = z.object({ projectId: recordId.nullable() });

/** Fields that a person may change: all but the record's own keys. */
const clientFields = clientRecord.pick({ name: true, email: true, phone: true, address: true, notes: true }).partial();
const projectFields = projectRecord.omit({ id: true, createdAt: true, updatedAt: true, clientId: true }).partial();
const roomFields = roomRecord.omit({ id: true, createdAt: true, updatedAt: true, projectId: true }).partial();
const openingFields = openingRecord.omit({ id: true, createdAt: true, updatedAt: true, roomId: true }).partial();
const treatmentFields = treatmentRecord.omit({ id: true, createdAt: true, updatedAt: true, openingId: true }).partial();
const clothFields = clothRecord.omit({ id: true, createdAt: true, updatedAt: true, projectId: true }).partial();
const remnantFields = remnantRecord.omit({ id: true, createdAt: true, updatedAt: true, projectId: true }).partial();
const cuttingFields = cuttingRecord
  .omit({ id: true, createdAt: true, updatedAt: true, projectId: true, cloth: true })
  .partial();
const settingsFields = settingsRecord.partial();

const clientSummary = clientRecord.extend({
  projects: z.array(
    z.object({
      id: recordId,
      name: z.string(),
      rooms: z.int(),
      openings: z.int(),
      proposals: z.int(),
      updatedAt: instant,
    }),
  ),
});
export type ClientSummary = z.infer<typeof clientSummary>;

const portfolioState = z.object({
  state: z.enum(['ready', 'trouble']),
  trouble: portfolioTrouble.nullable(),
  /** Nothing in it yet: first start. */
  empty: z.boolean(),
  sample: z.boolean(),
  file: z.string(),
  programVersion: z.string(),
  shell: z.enum(['electron', 'browser', 'command']),
  /** What this shell cannot do, by the names of its machine: `chooseSavePath`, `openPath`, `showInFolder`. */
  lacks: z.array(z.string()),
});
export type PortfolioState = z.infer<typeof portfolioState>;

const written = z.object({
  /** Where it lies; null when the person closed the dialog. */
  file: z.string().nullable(),
});

const draftMail = z.object({
  /** The draft and the PDF beside it; null paths where this shell hands them over by address instead. */
  draftFile: z.string().nullable(),
  pdfFile: z.string().nullable(),
  /** Address under which the shell serves the draft: `/papers/draft/<id>`. */
  address: z.string(),
});

export const contract = {
  portfolio: {
    readState: base.input(nothing).output(portfolioState),
    /** Tries to open the file again after a trouble was mended outside. */
    tryAgain: base.input(nothing).output(portfolioState),
  },
  clients: {
    listClients: base.input(z.object({ search: z.string().max(200).optional() })).output(z.array(clientSummary)),
    /** A new client with a first project, ready to measure. */
    addClient: base
      .input(clientFields.extend({ name: z.string().min(1).max(400), projectName: z.string().max(400).optional() }))
      .output(z.object({ client: clientRecord, project: projectRecord })),
    editClient: base.input(byId.extend({ changes: clientFields })).output(clientRecord),
    removeClient: base.input(byId).output(nothing),
    restoreClient: base.input(byId).output(clientRecord),
  },
  projects: {
    readProject: base.input(byId).output(projectDocument),
    /** Every project of which the client accepted anything, oldest first: what is bought and made together. */
    listAccepted: base.input(nothing).output(z.array(projectDocument)),
    addProject: base.input(z.object({ clientId: recordId, name: z.string().min(1).max(400) })).output(projectRecord),
    editProject: base.input(byId.extend({ changes: projectFields })).output(projectRecord),
    removeProject: base.input(byId).output(nothing),
    restoreProject: base.input(byId).output(projectRecord),
  },
  rooms: {
    addRoom: base.input(z.object({ projectId: recordId, fields: roomFields })).output(roomRecord),
    editRoom: base.input(byId.extend({ changes: roomFields })).output(roomRecord),
    removeRoom: base.input(byId).output(nothing),
    restoreRoom: base.input(byId).output(roomRecord),
  },
  openings: {
    addOpening: base.input(z.object({ roomId: recordId, fields: openingFields })).output(openingRecord),
    editOpening: base.input(byId.extend({ changes: openingFields })).output(openingRecord),
    removeOpening: base.input(byId).output(nothing),
    restoreOpening: base.input(byId).output(openingRecord),
  },
  treatments: {
    addTreatment: base.input(z.object({ openingId: recordId, fields: treatmentFields })).output(treatmentRecord),
    editTreatment: base.input(byId.extend({ changes: treatmentFields })).output(treatmentRecord),
    removeTreatment: base.input(byId).output(nothing),
    restoreTreatment: base.input(byId).output(treatmentRecord),
  },
  cloth: {
    /** The decorator's own cloth. */
    listCloth: base.input(nothing).output(z.array(clothRecord)),
    addCloth: base.input(z.object({ projectId: recordId.nullable(), fields: clothFields })).output(clothRecord),
    editCloth: base.input(byId.extend({ changes: clothFields })).output(clothRecord),
    removeCloth: base.input(byId).output(nothing),
    restoreCloth: base.input(byId).output(clothRecord),
  },
  remnants: {
    /** Of the decorator's own and generic cloth, and with a project of the project's too. */
    listRemnants: base.input(z.object({ projectId: recordId.nullable() })).output(z.array(remnantRecord)),
    addRemnant: base
      .input(z.object({ projectId: recordId.nullable(), fields: remnantFields.required({ cloth: true }) }))
      .output(remnantRecord),
    editRemnant: base.input(byId.extend({ changes: remnantFields.omit({ cloth: true }) })).output(remnantRecord),
    removeRemnant: base.input(byId).output(nothing),
    restoreRemnant: base.input(byId).output(remnantRecord),
  },
  cuttings: {
    /** What is settled of one cloth of a project; refused where there is one already. */
    addCutting: base
      .input(z.object({ projectId: recordId, cloth: z.string().min(1).max(80), fields: cuttingFields }))
      .output(cuttingRecord),
    editCutting: base.input(byId.extend({ changes: cuttingFields })).output(cuttingRecord),
    removeCutting: base.input(byId).output(nothing),
    restoreCutting: base.input(byId).output(cuttingRecord),
    /**
     * Lays and draws the cut plan of a project, or with null of all accepted work, so that `/papers/cut-plan/` has it at
     * once. `pages` null: it was left before it was done.
     */
    drawCutPlan: base.input(ofCutPlan).output(z.object({ pages: z.int().nullable() })),
    /** How much of the laying is done; 1: the pages are being drawn; null: it is not being drawn. */
    readDrawing: base.input(ofCutPlan).output(z.object({ share: z.number().nullable() })),
    leaveDrawing: base.input(ofCutPlan).output(nothing),
  },
  settings: {
    readSettings: base.input(nothing).output(settingsRecord),
    editSettings: base.input(z.object({ changes: settingsFields })).output(settingsRecord),
  },
  proposals: {
    listProposals: base
      .input(z.object({ projectId: recordId.optional() }))
      .output(z.array(proposalRecord.extend({ clientName: z.string(), projectName: z.string() }))),
    /** Prices the project, draws the PDF and freezes both in one transaction. */
    makeProposal: base
      .input(
        z.object({
          projectId: recordId,
          terms: z.string().max(20000).optional(),
          cancellation: z.string().max(20000).optional(),
          tierNames: z.object({ good: z.string(), better: z.string(), best: z.string() }).optional(),
        }),
      )
      .output(proposalRecord),
    readProposal: base.input(byId).output(proposalRecord.extend({ result: wireResult, jobFile: z.string() })),
    /** Opens the PDF with the computer's own reader. */
    openPaper: base.input(byId).output(written),
    /** Asks where, and writes a copy. */
    saveCopy: base.input(byId).output(written),
    showInFolder: base.input(byId).output(written),
    /** An unsent mail draft with the PDF attached, and the PDF beside it. */
    writeDraft: base
      .input(byId.extend({ to: z.string().max(400), subject: z.string().max(400), text: z.string().max(20000) }))
      .output(draftMail),
    markProposal: base.input(byId.extend({ state: z.enum(PROPOSAL_STATES) })).output(proposalRecord),
  },
  jobs: {
    /** A job file becomes a client with a project. */
    importJob: base
      .input(z.object({ text: z.string().max(20_000_000) }))
      .output(z.object({ clientId: recordId, projectId: recordId })),
    exportJob: base
      .input(z.object({ projectId: recordId }))
      .output(z.object({ text: z.string(), fileName: z.string() })),
    /** Asks where, and writes the job file. */
    saveJob: base.input(z.object({ projectId: recordId })).output(written),
    priceJob: base.input(z.object({ text: z.string() })).output(wireResult),
    /** The proposal of a job file, in base64. */
    proposeJob: base.input(z.object({ text: z.string() })).output(z.object({ pdf: z.string(), pages: z.int() })),
    /** The cut plans of a job file, in base64: of accepted work or of one option; of several, of what is accepted in all. */
    drawCutPlan: base
      .input(z.object({ texts: z.array(z.string()).min(1).max(100), tier: z.enum(TIERS).optional() }))
      .output(z.object({ pdf: z.string(), pages: z.int() })),
    writeSchema: base.input(z.object({ of: z.enum(['job', 'result']) })).output(z.object({ schema: z.unknown() })),
  },
  samples: {
    addSample: base.input(nothing).output(z.object({ clientId: recordId, projectId: recordId })),
    removeSample: base.input(nothing).output(nothing),
  },
  history: {
    listHistory: base
      .input(
        z.object({
          projectId: recordId.optional(),
          clientId: recordId.optional(),
          most: z.int().min(1).max(1000).optional(),
        }),
      )
      .output(z.array(historyRecord)),
  },
};
export type Contract = typeof contract;
