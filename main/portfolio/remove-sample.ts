import { sql } from './compile.ts';
import type { WriteConnection } from './connection.ts';
import { addHistory } from './history.ts';

/**
 * Takes every sample household away for good, with its proposals: nothing of it was ever handed to anybody. What the
 * history told of it stays. Returns how many households there were.
 */
export function removeSample(writing: WriteConnection, at: string): number {
  const samples = writing.all(sql.selectFrom('clients').select(['id', 'name']).where('sample', '=', 1).compile());
  if (samples.length === 0) return 0;
  const clients = sql.selectFrom('clients').select('id').where('sample', '=', 1);
  const projects = sql.selectFrom('projects').select('id').where('client_id', 'in', clients);
  const rooms = sql.selectFrom('rooms').select('id').where('project_id', 'in', projects);
  const openings = sql.selectFrom('openings').select('id').where('room_id', 'in', rooms);
  const proposals = sql.selectFrom('proposals').select('id').where('project_id', 'in', projects);
  for (const table of ['mail_drafts', 'paper_places', 'proposal_files'] as const)
    writing.run(sql.deleteFrom(table).where('proposal_id', 'in', proposals).compile());
  writing.run(sql.deleteFrom('proposals').where('project_id', 'in', projects).compile());
  writing.run(sql.deleteFrom('treatments').where('opening_id', 'in', openings).compile());
  writing.run(sql.deleteFrom('openings').where('room_id', 'in', rooms).compile());
  writing.run(sql.deleteFrom('rooms').where('project_id', 'in', projects).compile());
  writing.run(sql.deleteFrom('remnants').where('project_id', 'in', projects).compile());
  writing.run(sql.deleteFrom('cuttings').where('project_id', 'in', projects).compile());
  writing.run(sql.deleteFrom('cloths').where('project_id', 'in', projects).compile());
  writing.run(sql.deleteFrom('projects').where('client_id', 'in', clients).compile());
  writing.run(sql.deleteFrom('clients').where('sample', '=', 1).compile());
  for (const { id, name } of samples)
    addHistory(writing, {
      at,
      projectId: null,
      clientId: id,
      entity: 'client',
      entityId: id,
      verb: 'removed',
      changes: { name: { before: name, after: null } },
    });
  return samples.length;
}
