/** Everything that has a name, read once when the search is opened. */
import { GENERIC_CLOTH_IDS } from '#shared/words.ts';
import { client } from './client.ts';
import { program } from './program.svelte.ts';
import type { Spot } from './route.svelte.ts';
import { GENERIC_NAMES } from '../words/cloth-words.ts';
import { HELP_SECTIONS } from '../words/help/help-sections.ts';
import { PLACES } from '../words/shell-words.ts';
import { sayRevision } from '../words/proposal-words.ts';

export interface Finding {
  readonly key: string;
  readonly name: string;
  /** What it is and where: `room of Ada Fenn`. */
  readonly kind: string;
  readonly spot: Spot | { readonly help: string };
}

/** Projects whose rooms and windows are read for the search; the newest come first. */
const MOST_PROJECTS = 60;
const MOST_SHOWN = 12;

export class SearchStore {
  text = $state('');
  loading = $state(true);
  #all: readonly Finding[] = $state.raw([
    ...PLACES.map(({ place, name }): Finding => ({ key: place, name, kind: 'place', spot: { place, id: null } })),
    ...HELP_SECTIONS.map(({ id, title }): Finding => ({
      key: `help-${id}`,
      name: title,
      kind: 'help',
      spot: { help: id },
    })),
  ]);
  readonly found = $derived(rank(this.#all, this.text));

  async load(): Promise<void> {
    try {
      const [clients, cloth, proposals] = await Promise.all([
        client.clients.listClients({}),
        client.cloth.listCloth({}),
        client.proposals.listProposals({}),
      ]);
      this.#add([
        ...clients.map((each): Finding => ({
          key: each.id,
          name: each.name,
          kind: 'client',
          spot:
            each.projects[0] && each.projects.length === 1
              ? { place: 'project', id: each.projects[0].id, sheet: 'worksheet', opening: null }
              : { place: 'clients', id: each.id },
        })),
        ...clients.flatMap((each) =>
          each.projects.map((project): Finding => ({
            key: project.id,
            name: project.name,
            kind: `project of ${each.name}`,
            spot: { place: 'project', id: project.id, sheet: 'worksheet', opening: null },
          })),
        ),
        ...cloth.map((each): Finding => ({
          key: each.id,
          name: each.name,
          kind: each.role === 'face' ? 'cloth' : each.role,
          spot: { place: 'cloth', id: each.id },
        })),
        ...GENERIC_CLOTH_IDS.filter((id) => !cloth.some((each) => each.code === id)).map((id): Finding => ({
          key: id,
          name: GENERIC_NAMES[id] ?? id,
          kind: id.startsWith('inter') ? 'generic interlining' : 'generic lining',
          spot: { place: 'cloth', id: null },
        })),
        ...proposals.map((each): Finding => ({
          key: each.id,
          name: sayRevision(each),
          kind: `proposal for ${each.clientName}`,
          spot: { place: 'project', id: each.projectId, sheet: 'proposal', opening: null },
        })),
      ]);
      const newest = clients
        .flatMap((each) => each.projects)
        .sort((a, b) => (a.updatedAt < b.updatedAt ? 1 : -1))
        .slice(0, MOST_PROJECTS);
      for (const project of newest) await this.#addRooms(project.id);
    } catch (error) {
      program.tell(error);
    } finally {
      this.loading = false;
    }
  }

  async #addRooms(projectId: string): Promise<void> {
    const document = await client.projects.readProject({ id: projectId });
    this.#add(
      document.rooms.flatMap((room) => [
        {
          key: room.id,
          name: room.name,
          kind: `room of ${document.client.name}`,
          spot: { place: 'project', id: projectId, sheet: 'worksheet', opening: room.openings[0]?.id ?? null } as const,
        },
        ...room.openings.map((opening) => ({
          key: opening.id,
          name: opening.name,
          kind: `${room.name}, ${document.client.name}`,
          spot: { place: 'project', id: projectId, sheet: 'worksheet', opening: opening.id } as const,
        })),
      ]),
    );
  }

  #add(more: readonly Finding[]): void {
    this.#all = [...this.#all, ...more];
  }
}

/** Names that begin with the text first, then words that do, then the rest that hold every word of it. */
function rank(all: readonly Finding[], text: string): readonly Finding[] {
  const wanted = text.trim().toLowerCase();
  if (wanted === '') return all.slice(0, PLACES.length);
  const words = wanted.split(/\s+/);
  const scored = all.flatMap((finding) => {
    const name = finding.name.toLowerCase();
    const whole = `${name} ${finding.kind.toLowerCase()}`;
    if (!words.every((word) => whole.includes(word))) return [];
    if (name.startsWith(wanted)) return [{ finding, score: 0 }];
    return [{ finding, score: ` ${name}`.includes(` ${wanted}`) ? 1 : 2 }];
  });
  return scored
    .sort((a, b) => a.score - b.score)
    .map(({ finding }) => finding)
    .slice(0, MOST_SHOWN);
}
