import { createORPCClient, type ClientContext, type ClientLink } from '@orpc/client';
import { RPCLink as FetchLink } from '@orpc/client/fetch';
import { RPCLink as PortLink } from '@orpc/client/message-port';
import { createRouterClient } from '@orpc/server';
import { tmpdir } from 'node:os';
import { MessageChannel } from 'node:worker_threads';
import { serveBrowserShell } from '#main/browser/serve.ts';
import { servePorts } from '#main/host/serve-port.ts';
import type { TestDesk } from '../desk/test-desk.ts';

export type Call = (request: string, input: unknown) => Promise<unknown>;

export interface Transport {
  readonly call: Call;
  close(): Promise<void>;
}

/** `clients.addClient` on a client of any transport. */
function callOn(client: unknown): Call {
  return (request, input) => {
    const [domain = '', verb = ''] = request.split('.');
    const procedures = (client as Record<string, Record<string, (given: unknown) => Promise<unknown>> | undefined>)[
      domain
    ];
    const procedure = procedures?.[verb];
    if (procedure === undefined) throw new Error(`there is no request ${request}`);
    return procedure(input);
  };
}

function callOver(link: ClientLink<ClientContext>): Call {
  return callOn(createORPCClient(link));
}

/** As the command line calls. */
export async function openDirect({ desk }: TestDesk): Promise<Transport> {
  return { call: callOn(createRouterClient(desk.router)), close: async () => undefined };
}

/** As a window of the Electron shell calls: over a message port. */
export async function openPort({ desk }: TestDesk): Promise<Transport> {
  const { port1, port2 } = new MessageChannel();
  servePorts(desk)(port1);
  const call = callOver(new PortLink({ port: port2 }));
  port2.start();
  return {
    call,
    close: async () => {
      port2.close();
      port1.close();
    },
  };
}

/** As the page in a browser calls: over loopback HTTP, with the key that the first address gives. */
export async function openHttp({ desk }: TestDesk): Promise<Transport> {
  const shell = await serveBrowserShell({ desk, rendererFolder: tmpdir(), port: 0 });
  const origin = `http://127.0.0.1:${shell.port}`;
  const admitted = await fetch(shell.readAddress(), { redirect: 'manual' });
  const cookie = admitted.headers.get('set-cookie')?.split(';')[0] ?? '';
  return {
    call: callOver(new FetchLink({ url: `${origin}/rpc`, headers: { cookie, origin } })),
    close: () => shell.close(),
  };
}
