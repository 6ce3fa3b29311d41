/** Proposals as they were handed over. The tables refuse to change them; only the state moves on. */
import { wireResult } from '#shared/job-file/wire-result.ts';
import type { WireResult } from '#shared/job-file/wire-result.ts';
import type { ProposalRecord } from '#shared/records/records.ts';
import { sql } from './compile.ts';
import type { ReadConnection, WriteConnection } from './connection.ts';
import { addHistory } from './history.ts';
import { readJson } from './json-column.ts';
import { touchProject } from './kept-table.ts';
import { placeOfProject } from './place.ts';
import type { Flag, ProposalRow } from './tables.ts';

/** What is frozen beside the record. */
export interface ProposalFiles {
  readonly pdf: Uint8Array;
  /** SHA-256 of the PDF, hexadecimal. */
  readonly sha256: string;
  readonly jobFile: string;
  readonly result: WireResult;
  /** What the PDF prints. */
  readonly paper: object;
}

export interface ListedProposal extends ProposalRecord {
  readonly clientName: string;
  readonly projectName: string;
}

/** How many proposals of a year there are, plus one. */
export function nextOrdinal(reading: ReadConnection, year: number): number {
  const query = sql
    .selectFrom('proposals')
    .select((row) => row.fn.max<number | null>('ordinal').as('last'))
    .where('year', '=', year);
  return (reading.first(query.compile())?.last ?? 0) + 1;
}

/** The newest proposal of a project, with where its number comes from and the job that it froze; null before the first. */
export interface LastProposal {
  readonly id: string;
  readonly number: string;
  readonly year: number;
  readonly ordinal: number;
  readonly revision: number;
  readonly jobFile: string;
}

export function readLastProposal(reading: ReadConnection, projectId: string): LastProposal | null {
  const query = sql
    .selectFrom('proposals')
    .innerJoin('proposal_files', 'proposal_files.proposal_id', 'proposals.id')
    .select(['proposals.id', 'number', 'year', 'ordinal', 'revision', 'job_file as jobFile'])
    .where('project_id', '=', projectId)
    .orderBy('revision', 'desc')
    .limit(1);
  return reading.first(query.compile());
}

export interface NewProposal {
  readonly record: ProposalRecord;
  readonly year: number;
  readonly ordinal: number;
  readonly sample: boolean;
  readonly files: ProposalFiles;
}

export function addProposal(writing: WriteConnection, proposal: NewProposal): void {
  const { record, files } = proposal;
  const sample: Flag = proposal.sample ? 1 : 0;
  writing.run(
    sql
      .insertInto('proposals')
      .values({
        id: record.id,
        project_id: record.projectId,
        number: record.number,
        year: proposal.year,
        ordinal: proposal.ordinal,
        revision: record.revision,
        state: record.state,
        date: record.date,
        valid_until: record.validUntil,
        created_at: record.createdAt,
        program_version: record.programVersion,
        currency: record.currency,
        locale: record.locale,
        total_good: record.totals.good,
        total_better: record.totals.better,
        total_best: record.totals.best,
        pages: record.pages,
        sample,
      })
      .compile(),
  );
  writing.run(
    sql
      .insertInto('proposal_files')
      .values({
        proposal_id: record.id,
        pdf: Buffer.from(files.pdf),
        sha256: files.sha256,
        job_file: files.jobFile,
        result: JSON.stringify(files.result),
        paper: JSON.stringify(files.paper),
      })
      .compile(),
  );
  tell(writing, record, record.createdAt, 'made', {
    number: { before: null, after: record.number },
    revision: { before: null, after: record.revision },
    totals: { before: null, after: record.totals },
  });
}

/** Notes where the PDF was written. */
export function placePaper(writing: WriteConnection, record: ProposalRecord, path: string, at: string): void {
  if (record.file === path) return;
  writing.run(sql.insertInto('paper_places').values({ proposal_id: record.id, path, at }).compile());
  tell(writing, record, at, 'written', { file: { before: record.file, after: path } });
}

export function markProposal(
  writing: WriteConnection,
  record: ProposalRecord,
  state: ProposalRecord['state'],
  at: string,
): void {
  if (record.state === state) return;
  writing.run(sql.updateTable('proposals').set({ state }).where('id', '=', record.id).compile());
  tell(writing, record, at, 'edited', { state: { before: record.state, after: state } });
}

function tell(
  writing: WriteConnection,
  record: ProposalRecord,
  at: string,
  verb: 'made' | 'written' | 'edited',
  changes: Parameters<typeof addHistory>[1]['changes'],
): void {
  const place = placeOfProject(writing, record.projectId);
  addHistory(writing, { ...place, at, entity: 'proposal', entityId: record.id, verb, changes });
  touchProject(writing, record.projectId, at);
}

function proposalQuery() {
  return sql
    .selectFrom('proposals')
    .innerJoin('projects', 'projects.id', 'proposals.project_id')
    .innerJoin('clients', 'clients.id', 'projects.client_id')
    .selectAll('proposals')
    .select((row) => [
      'clients.name as client_name',
      'projects.name as project_name',
      row
        .selectFrom('paper_places')
        .select('paper_places.path')
        .whereRef('paper_places.proposal_id', '=', 'proposals.id')
        .orderBy('paper_places.id', 'desc')
        .limit(1)
        .as('file'),
    ]);
}

interface FoundRow extends ProposalRow {
  readonly client_name: string;
  readonly project_name: string;
  readonly file: string | null;
}

function toProposal(row: FoundRow): ProposalRecord {
  return {
    id: row.id,
    projectId: row.project_id,
    number: row.number,
    revision: row.revision,
    state: row.state,
    date: row.date,
    validUntil: row.valid_until,
    createdAt: row.created_at,
    programVersion: row.program_version,
    currency: row.currency,
    locale: row.locale,
    totals: { good: row.total_good, better: row.total_better, best: row.total_best },
    file: row.file,
    pages: row.pages,
  };
}

/** A proposal, also of a project that was taken away since: what was handed over stays readable. */
export function readProposal(reading: ReadConnection, id: string): ListedProposal | null {
  const row = reading.first(proposalQuery().where('proposals.id', '=', id).compile());
  return row === null ? null : { ...toProposal(row), clientName: row.client_name, projectName: row.project_name };
}

/** Of projects that are kept, newest first. */
export function listProposals(reading: ReadConnection, projectId: string | null): ListedProposal[] {
  let query = proposalQuery()
    .where('projects.removed_at', 'is', null)
    .where('clients.removed_at', 'is', null)
    .orderBy('proposals.created_at', 'desc')
    .orderBy('proposals.number', 'desc');
  if (projectId !== null) query = query.where('projects.id', '=', projectId);
  return reading
    .all(query.compile())
    .map((row) => ({ ...toProposal(row), clientName: row.client_name, projectName: row.project_name }));
}

export function readProposalPdf(reading: ReadConnection, id: string): Uint8Array | null {
  const query = sql.selectFrom('proposal_files').select('pdf').where('proposal_id', '=', id);
  return reading.first(query.compile())?.pdf ?? null;
}

export function readProposalResult(
  reading: ReadConnection,
  id: string,
): { jobFile: string; result: WireResult } | null {
  const query = sql.selectFrom('proposal_files').select(['job_file', 'result']).where('proposal_id', '=', id);
  const row = reading.first(query.compile());
  return row === null ? null : { jobFile: row.job_file, result: readJson(wireResult, row.result) };
}

/** Proposals that a client was promised something by: sent or accepted. */
export function listStandingProposals(
  reading: ReadConnection,
  asked: { projectId: string } | { clientId: string },
): ProposalRecord[] {
  const query = proposalQuery().where('proposals.state', 'in', ['sent', 'accepted']).where('proposals.sample', '=', 0);
  const narrowed =
    'projectId' in asked
      ? query.where('projects.id', '=', asked.projectId)
      : query.where('clients.id', '=', asked.clientId);
  return reading.all(narrowed.orderBy('proposals.number').compile()).map(toProposal);
}
