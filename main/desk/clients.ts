import { clients, foldText, listClients } from '#main/portfolio/clients.ts';
import { projects } from '#main/portfolio/projects.ts';
import { listStandingProposals } from '#main/portfolio/proposals.ts';
import { readSettings } from './default-settings.ts';
import { badInput, mustFind, refused } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import type { Implementer } from './implementer.ts';
import { newClient, newProject, withGiven } from './new-records.ts';

export function makeClientRequests(os: Implementer['clients'], { door, now, makeId }: DeskParts) {
  return {
    listClients: os.listClients.handler(({ input }) => {
      const all = door.read(listClients);
      const wanted = foldText(input.search ?? '').trim();
      if (wanted === '') return all;
      return all.filter(({ name, email, phone, address, projects: own }) =>
        [name, email, phone, address, ...own.map((project) => project.name)].some((text) =>
          foldText(text).includes(wanted),
        ),
      );
    }),

    addClient: os.addClient.handler(({ input }) => {
      const { projectName, ...fields } = input;
      refuseBlank(fields.name);
      return door.write((writing) => {
        const at = now();
        const client = clients.add(writing, withGiven(newClient({ id: makeId(), at }), fields));
        const blank = newProject({ id: makeId(), at }, client.id, readSettings(writing));
        const project = projects.add(writing, withGiven(blank, { name: projectName }));
        return { client, project };
      });
    }),

    editClient: os.editClient.handler(({ input }) => {
      if (input.changes.name !== undefined) refuseBlank(input.changes.name, 'changes.name');
      return door.write((writing) =>
        mustFind(clients.edit(writing, input.id, input.changes, now()), 'client', input.id),
      );
    }),

    removeClient: os.removeClient.handler(({ input }) => {
      door.write((writing) => {
        const [standing] = listStandingProposals(writing, { clientId: input.id });
        if (standing) throw refusePromised(standing.number);
        mustFind(clients.remove(writing, input.id, now()), 'client', input.id);
      });
      return {};
    }),

    restoreClient: os.restoreClient.handler(({ input }) =>
      door.write((writing) => mustFind(clients.restore(writing, input.id, now()), 'client', input.id)),
    ),
  };
}

/** A client, or a project of hers, was promised something. */
export function refusePromised(number: string) {
  return refused(
    `Proposal ${number} was handed to the client and still stands.`,
    'Mark it declined first, if nothing will come of it.',
  );
}

/** A name of spaces alone would show as nothing in the list. */
function refuseBlank(name: string, path = 'name'): void {
  if (name.trim() === '') throw badInput([{ path, wrong: 'is empty', right: 'give the client a name' }]);
}
