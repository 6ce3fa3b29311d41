import { createORPCClient, type ClientContext, type ClientLink } from '@orpc/client';
import { RPCLink } from '@orpc/client/fetch';
import type { ContractRouterClient } from '@orpc/contract';
import type { Contract } from '#shared/contract/contract.ts';
import { HostGone, PortLink } from './port-link.ts';
import { takeSnapshot } from './snapshot.svelte.ts';

/**
 * The desk as the page calls it: `client.domain.verbNoun(input)`. Over a message port in Electron, over loopback HTTP in
 * a browser. Input may be reactive state: a plain copy of it is sent. Rejects with the contract's typed errors, or with
 * `HostGone` when the host process ended before it answered.
 */
export const client: ContractRouterClient<Contract> = createORPCClient(watchAnswers(makeLink()));

function makeLink(): ClientLink<ClientContext> {
  const shell = window.linenfoldShell;
  return shell === undefined ? new RPCLink({ url: `${window.location.origin}/rpc` }) : new PortLink(shell);
}

/** Sends copies, and shows on the document (`data-desk`) whether the desk answered last or is away. */
function watchAnswers(link: ClientLink<ClientContext>): ClientLink<ClientContext> {
  return {
    async call(path, input, options) {
      try {
        const answer = await link.call(path, takeSnapshot(input), options);
        document.documentElement.dataset.desk = 'answered';
        return answer;
      } catch (error) {
        if (error instanceof HostGone) document.documentElement.dataset.desk = error.state;
        throw error;
      }
    },
  };
}
