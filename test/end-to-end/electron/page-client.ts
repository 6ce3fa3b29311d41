import { createORPCClient, type ClientContext } from '@orpc/client';
import { RPCLink } from '@orpc/client/message-port';
import type { ContractRouterClient } from '@orpc/contract';
import type { Page } from 'playwright';
import type { Contract } from '#shared/contract/contract.ts';

/**
 * The contract over a real message port of the page: what a test calls goes the very way that the page's own calls go,
 * through preload, main process and host. One client a page; a reload ends it.
 */
export async function openPageClient(page: Page): Promise<ContractRouterClient<Contract>> {
  const listeners: ((data: unknown) => void)[] = [];
  await page.exposeFunction('tellTest', (data: string) => {
    for (const listener of listeners) listener(data);
  });
  await page.evaluate(() => {
    const { port1, port2 } = new MessageChannel();
    window.postMessage('linenfold:connect', window.location.origin, [port2]);
    const test = window as unknown as { tellTest(data: unknown): void; testPort: MessagePort };
    port1.onmessage = (event) => test.tellTest(event.data);
    test.testPort = port1;
  });
  const link = new RPCLink<ClientContext>({
    port: {
      onMessage: { addListener: (listener) => listeners.push(listener) },
      onDisconnect: { addListener: () => undefined },
      postMessage: (data: string) =>
        void page.evaluate((text) => (window as unknown as { testPort: MessagePort }).testPort.postMessage(text), data),
    },
  });
  return createORPCClient(link);
}
