/**
 * The host process of the Electron shell (a utility process): it alone owns the portfolio, the PDF maker and mail. It is
 * told by message what the main process wants, and serves the contract over one port a window.
 */
import { openDesk } from './open-desk.ts';
import { lendMachine } from './lent-machine.ts';
import type { FromHost, HostSettings, ToHost } from './messages.ts';
import { servePorts, type HostPort } from './serve-port.ts';

/** The part of Electron's `process.parentPort` used here. Only main/shell may import Electron, so it is written down. */
interface ParentPort {
  on(event: 'message', listener: (message: { data: ToHost; ports: HostPort[] }) => void): void;
  postMessage(message: FromHost): void;
}

const parent = Reflect.get(process, 'parentPort') as ParentPort;
const settings = JSON.parse(process.argv[2] ?? '{}') as HostSettings;
const lent = lendMachine(settings.papersFolder, (call, ask) => parent.postMessage({ kind: 'machine', call, ask }));

const tellFault = (error: unknown) => parent.postMessage({ kind: 'fault', says: sayError(error) });
const desk = openDesk({ ...settings, machine: lent.machine, onFault: tellFault });
const servePort = servePorts(desk);

parent.on('message', ({ data, ports }) => {
  switch (data.kind) {
    case 'port':
      for (const port of ports) servePort(port);
      return;
    case 'machine':
      lent.answer(data.call, data.path, data.error);
      return;
    case 'paper':
      desk.readPaper(data.paperKind, data.id).then(
        (paper) => parent.postMessage({ kind: 'paper', call: data.call, paper }),
        (error: unknown) => parent.postMessage({ kind: 'paper', call: data.call, paper: null, error: sayError(error) }),
      );
      return;
    case 'close':
      void desk
        .close()
        .catch(tellFault)
        .finally(() => parent.postMessage({ kind: 'closed' }));
      return;
  }
});
parent.postMessage({ kind: 'open' });

/** For the log: where a fault arose is what helps. */
function sayError(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
