import { utilityProcess, type MessagePortMain, type UtilityProcess } from 'electron';
import log from 'electron-log/main';
import type { Paper } from '#main/host/served-desk.ts';
import type { FromHost, HostSettings, MachineAsk, ToHost } from '#main/host/messages.ts';
import type { HostState } from './channels.ts';

/** A second death within this time of the restart is not answered by another restart. */
const restartPause = 60_000;
/** How long the host may take to close the portfolio before it is ended. */
const closeLimit = 5_000;

export interface HostEvents {
  stateChanged(state: HostState): void;
  /** The desk asks the machine for something; the answer is a path where one was asked for. */
  asked(ask: MachineAsk): Promise<string | null>;
}

/** Holds the host process: starts it, restarts it once when it dies, passes ports and papers. */
export class HostProcess {
  /** Asks made while the host is first being started wait in its port, so it counts as up from the beginning. */
  state: HostState = 'up';
  readonly #script: string;
  readonly #settings: HostSettings;
  readonly #events: HostEvents;
  #child: UtilityProcess | null = null;
  #closing: (() => void) | null = null;
  #restartedAt = -Infinity;
  #lastCall = 0;
  readonly #papers = new Map<number, { resolve: (paper: Paper | null) => void; reject: (reason: Error) => void }>();

  constructor(script: string, settings: HostSettings, events: HostEvents) {
    this.#script = script;
    this.#settings = settings;
    this.#events = events;
  }

  start(): void {
    const child = utilityProcess.fork(this.#script, [JSON.stringify(this.#settings)], {
      serviceName: 'linenfold-host',
    });
    this.#child = child;
    child.on('message', (message: FromHost) => this.#receive(message));
    child.once('exit', (code) => this.#buryChild(code));
  }

  /** Hands a window's port to the host, which serves the contract over it. */
  connect(port: MessagePortMain): void {
    if (this.#child === null) port.close();
    else this.#child.postMessage({ kind: 'port' } satisfies ToHost, [port]);
  }

  /** The stored paper, or null when there is none. Rejects when the host cannot answer. */
  readPaper(paperKind: string, id: string): Promise<Paper | null> {
    return new Promise((resolve, reject) => {
      if (this.#child === null) return reject(new Error('the host process is not running'));
      this.#lastCall += 1;
      this.#papers.set(this.#lastCall, { resolve, reject });
      this.#send({ kind: 'paper', call: this.#lastCall, paperKind, id });
    });
  }

  /** Ends the host after it has closed the portfolio. Resolves when it is gone. */
  close(): Promise<void> {
    const child = this.#child;
    if (child === null) return Promise.resolve();
    return new Promise((resolve) => {
      const limit = setTimeout(() => child.kill(), closeLimit);
      this.#closing = () => {
        clearTimeout(limit);
        resolve();
      };
      this.#send({ kind: 'close' });
    });
  }

  #send(message: ToHost): void {
    this.#child?.postMessage(message);
  }

  #setState(state: HostState): void {
    this.state = state;
    this.#events.stateChanged(state);
  }

  #receive(message: FromHost): void {
    switch (message.kind) {
      case 'open':
        this.#setState('up');
        return;
      case 'fault':
        log.error('the desk:', message.says);
        return;
      case 'paper': {
        const one = this.#papers.get(message.call);
        this.#papers.delete(message.call);
        if (message.error === undefined) one?.resolve(message.paper);
        else one?.reject(new Error(message.error));
        return;
      }
      case 'machine':
        this.#events.asked(message.ask).then(
          (path) => this.#send({ kind: 'machine', call: message.call, path }),
          (error: unknown) =>
            this.#send({
              kind: 'machine',
              call: message.call,
              path: null,
              error: error instanceof Error ? error.message : String(error),
            }),
        );
        return;
      case 'closed':
        this.#child?.kill();
        return;
    }
  }

  #buryChild(code: number): void {
    this.#child = null;
    for (const { reject } of this.#papers.values()) reject(new Error('the host process ended'));
    this.#papers.clear();
    if (this.#closing !== null) return this.#closing();
    const again = performance.now() - this.#restartedAt > restartPause;
    log.error(`host process ended with code ${code}; ${again ? 'starting it again' : 'not started again'}`);
    this.#setState(again ? 'gone' : 'failed');
    if (!again) return;
    this.#restartedAt = performance.now();
    this.start();
  }
}
