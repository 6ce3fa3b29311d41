import { practiceWithUnits, priceBookWithUnits } from '#shared/job-file/with-units.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { ProjectRecord } from '#shared/records/records.ts';
import { clients } from '#main/portfolio/clients.ts';
import type { EditsOf } from '#main/portfolio/kept-table.ts';
import { listAcceptedProjects, projects } from '#main/portfolio/projects.ts';
import { listStandingProposals } from '#main/portfolio/proposals.ts';
import { refusePromised } from './clients.ts';
import { readSettings } from './default-settings.ts';
import { mustFind } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import type { Implementer } from './implementer.ts';
import { newProject, withGiven } from './new-records.ts';
import { readDocument } from './read-document.ts';

export function makeProjectRequests(os: Implementer['projects'], { door, now, makeId }: DeskParts) {
  return {
    readProject: os.readProject.handler(({ input }) => door.read((reading) => readDocument(reading, input.id))),

    listAccepted: os.listAccepted.handler(() =>
      door.read((reading) => listAcceptedProjects(reading).map((id) => readDocument(reading, id))),
    ),

    addProject: os.addProject.handler(({ input }) =>
      door.write((writing) => {
        const client = mustFind(clients.read(writing, input.clientId), 'client', input.clientId);
        const blank = newProject({ id: makeId(), at: now() }, client.id, readSettings(writing));
        return projects.add(writing, withGiven(blank, { name: input.name }));
      }),
    ),

    editProject: os.editProject.handler(({ input }) =>
      door.write((writing) => {
        const before = mustFind(projects.read(writing, input.id), 'project', input.id);
        const changes = withUnits(input.changes, input.changes.units ?? before.units);
        return mustFind(projects.edit(writing, input.id, changes, now()), 'project', input.id);
      }),
    ),

    removeProject: os.removeProject.handler(({ input }) => {
      door.write((writing) => {
        const [standing] = listStandingProposals(writing, { projectId: input.id });
        if (standing) throw refusePromised(standing.number);
        mustFind(projects.remove(writing, input.id, now()), 'project', input.id);
      });
      return {};
    }),

    restoreProject: os.restoreProject.handler(({ input }) =>
      door.write((writing) => mustFind(projects.restore(writing, input.id, now()), 'project', input.id)),
    ),
  };
}

/** Bare lengths of practice and price book get the unit in which they were typed. */
function withUnits(changes: EditsOf<ProjectRecord>, unit: LengthUnit): EditsOf<ProjectRecord> {
  const { practice, priceBook } = changes;
  return {
    ...changes,
    ...(practice ? { practice: practiceWithUnits(practice, unit) } : {}),
    ...(priceBook && priceBook !== 'example' ? { priceBook: priceBookWithUnits(priceBook, unit) } : {}),
  };
}
