/** Proposals that were made, of one project or of all. */
import type { ProposalRecord } from '#shared/records/records.ts';
import { client } from './client.ts';
import { tellDeskFault } from './desk-fault.ts';
import type { DeskFault } from './desk-fault.ts';

export type ListedProposal = ProposalRecord & { readonly clientName: string; readonly projectName: string };

export class ProposalsStore {
  list: readonly ListedProposal[] | null = $state.raw(null);
  fault: DeskFault | null = $state.raw(null);
  readonly #projectId: string | undefined;

  constructor(projectId?: string) {
    this.#projectId = projectId;
  }

  async reload(): Promise<void> {
    try {
      const list = await client.proposals.listProposals(
        this.#projectId === undefined ? {} : { projectId: this.#projectId },
      );
      this.list = [...list].sort((a, b) => (a.createdAt < b.createdAt ? 1 : -1));
      this.fault = null;
    } catch (error) {
      this.fault = tellDeskFault(error);
    }
  }

  async mark(id: string, state: ProposalRecord['state']): Promise<void> {
    await client.proposals.markProposal({ id, state });
    await this.reload();
  }
}
