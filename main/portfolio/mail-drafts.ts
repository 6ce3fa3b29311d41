import { sql } from './compile.ts';
import type { ReadConnection, WriteConnection } from './connection.ts';
import { addHistory } from './history.ts';
import { placeOfProject } from './place.ts';

export interface MailDraft {
  readonly id: string;
  readonly proposalId: string;
  readonly to: string;
  readonly subject: string;
  readonly text: string;
  /** The instant. */
  readonly createdAt: string;
}

export function addMailDraft(writing: WriteConnection, draft: MailDraft, projectId: string): void {
  writing.run(
    sql
      .insertInto('mail_drafts')
      .values({
        id: draft.id,
        proposal_id: draft.proposalId,
        recipient: draft.to,
        subject: draft.subject,
        body: draft.text,
        created_at: draft.createdAt,
      })
      .compile(),
  );
  addHistory(writing, {
    ...placeOfProject(writing, projectId),
    at: draft.createdAt,
    entity: 'mail',
    entityId: draft.id,
    verb: 'written',
    changes: { to: { before: null, after: draft.to }, subject: { before: null, after: draft.subject } },
  });
}

export function readMailDraft(reading: ReadConnection, id: string): MailDraft | null {
  const row = reading.first(sql.selectFrom('mail_drafts').selectAll().where('id', '=', id).compile());
  if (row === null) return null;
  return {
    id: row.id,
    proposalId: row.proposal_id,
    to: row.recipient,
    subject: row.subject,
    text: row.body,
    createdAt: row.created_at,
  };
}
