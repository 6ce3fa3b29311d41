/** The clients with what each has; read again whenever something is added or removed. */
import type { ClientSummary } from '#shared/contract/contract.ts';
import type { ClientRecord } from '#shared/records/records.ts';
import { client } from './client.ts';
import { tellDeskFault } from './desk-fault.ts';
import type { DeskFault } from './desk-fault.ts';
import { reverseEdit } from './edit.ts';
import type { Edit } from './edit.ts';
import type { Edits } from './edits.svelte.ts';

export class ClientsStore {
  list: readonly ClientSummary[] | null = $state.raw(null);
  fault: DeskFault | null = $state.raw(null);
  search = $state('');
  readonly found = $derived(this.list?.filter((each) => matches(each, this.search)) ?? []);
  readonly #edits: Edits;

  constructor(edits: Edits) {
    this.#edits = edits;
  }

  open(): () => void {
    void this.reload();
    return this.#edits.follow({
      apply: (edit) => {
        if (edit.entity === 'client')
          this.list = this.list?.map((each) => (each.id === edit.id ? { ...each, ...edit.changes } : each)) ?? null;
      },
      reload: () => this.reload(),
    });
  }

  async reload(): Promise<void> {
    try {
      const list = await client.clients.listClients({});
      const pending = this.#edits.pendingEdits();
      this.list = list.map((each) =>
        pending.reduce(
          (record, edit) =>
            edit.entity === 'client' && edit.id === record.id ? { ...record, ...edit.changes } : record,
          each,
        ),
      );
      this.fault = null;
    } catch (error) {
      this.fault = tellDeskFault(error);
    }
  }

  type(record: ClientRecord, changes: Partial<ClientRecord>, label: string): void {
    const edit: Edit = { entity: 'client', id: record.id, changes };
    this.#edits.change(edit, reverseEdit(edit, { ...record }), `${record.name}, ${label}`);
  }

  addProject(record: ClientRecord, name: string) {
    return this.#edits.add(`${name} added`, async (added) => {
      const project = await client.projects.addProject({ clientId: record.id, name });
      added('project', project.id);
      return project;
    });
  }
}

function matches(each: ClientSummary, search: string): boolean {
  const wanted = search.trim().toLowerCase();
  if (wanted === '') return true;
  return [each.name, each.email, each.phone, each.address, ...each.projects.map((project) => project.name)].some(
    (text) => text.toLowerCase().includes(wanted),
  );
}
