/** The projects of which anything was accepted, and the plan of their cloth together. */
import type { ProjectDocument } from '#shared/records/records.ts';
import type { NamedJob } from '#app/pricing/plan-together.ts';
import { client } from './client.ts';
import { tellDeskFault } from './desk-fault.ts';
import type { DeskFault } from './desk-fault.ts';
import { readLeavingOut } from './read-document.ts';

export interface AcceptedProject {
  readonly id: string;
  /** The client, and the project where she has more than one of them here. */
  readonly name: string;
  readonly document: ProjectDocument;
}

export class WorkroomStore {
  projects: readonly AcceptedProject[] | null = $state.raw(null);
  fault: DeskFault | null = $state.raw(null);
  /** Ids of those left out of the plan. */
  leftOut: readonly string[] = $state.raw([]);

  readonly jobs = $derived(
    (this.projects ?? []).flatMap(({ id, name, document }): NamedJob[] => {
      const read = this.leftOut.includes(id) ? null : readLeavingOut(document);
      return read?.job ? [{ name, job: read.job }] : [];
    }),
  );

  async reload(): Promise<void> {
    try {
      this.projects = nameProjects(await client.projects.listAccepted({}));
      this.fault = null;
    } catch (error) {
      this.fault = tellDeskFault(error);
    }
  }

  take(id: string, taken: boolean): void {
    this.leftOut = taken ? this.leftOut.filter((each) => each !== id) : [...this.leftOut, id];
  }
}

function nameProjects(documents: readonly ProjectDocument[]): AcceptedProject[] {
  const taken = new Set<string>();
  return documents.map((document) => {
    const { client: person, project } = document;
    const alone = documents.filter((each) => each.client.name === person.name).length === 1;
    const plain = alone ? person.name : `${person.name}, ${project.name}`;
    let name = plain;
    for (let count = 2; taken.has(name); count += 1) name = `${plain} ${count}`;
    taken.add(name);
    return { id: project.id, name, document };
  });
}
