import { RPCHandler } from '@orpc/server/message-port';
import type { SupportedMessagePort } from '@orpc/client/message-port';
import type { ServedDesk } from './served-desk.ts';

/** A port of Electron's: it keeps its messages until it is started. */
export type HostPort = SupportedMessagePort & { start(): void };

/** Serves the desk's contract over message ports, one a window. Returns the function that takes the next port. */
export function servePorts(desk: ServedDesk): (port: HostPort) => void {
  const handler = new RPCHandler(desk.router);
  return (port) => {
    handler.upgrade(port);
    port.start();
  };
}
