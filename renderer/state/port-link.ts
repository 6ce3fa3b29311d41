import type { ClientContext, ClientLink, ClientOptions } from '@orpc/client';
import { RPCLink, type BrowserPortLike } from '@orpc/client/message-port';
import { connectToHost, type HostState, type LinenfoldShell } from './shell.ts';

/** The host process went away before it answered, or is away. What was asked may or may not have been done. */
export class HostGone extends Error {
  readonly code = 'HOST_GONE';
  readonly state: 'gone' | 'failed';

  constructor(state: 'gone' | 'failed') {
    super(
      state === 'gone'
        ? 'The part of Linenfold that keeps your work stopped and is being started again. Try once more.'
        : 'The part of Linenfold that keeps your work stopped twice. Close Linenfold and open it again.',
    );
    this.name = 'HostGone';
    this.state = state;
  }
}

/**
 * A link to the host over message ports. A port says nothing reliable when its other end dies: the shell tells, every
 * pending call is then rejected with `HostGone`, and a new port is made when something is asked again.
 */
export class PortLink implements ClientLink<ClientContext> {
  #state: HostState = 'up';
  #open: { readonly link: RPCLink<ClientContext>; readonly close: () => void } | null = null;
  readonly #pending = new Set<(reason: HostGone) => void>();

  constructor(shell: LinenfoldShell) {
    shell.onHostState((state) => this.#change(state));
  }

  call(path: readonly string[], input: unknown, options: ClientOptions<ClientContext>): Promise<unknown> {
    if (this.#state === 'failed') return Promise.reject(new HostGone('failed'));
    // While the host is being started its port waits, and the call with it.
    this.#open ??= openLink();
    const { link } = this.#open;
    return new Promise((resolve, reject) => {
      this.#pending.add(reject);
      link
        .call(path, input, options)
        .then(resolve, reject)
        .finally(() => this.#pending.delete(reject));
    });
  }

  #change(state: HostState): void {
    this.#state = state;
    if (state === 'up') return;
    for (const reject of this.#pending) reject(new HostGone(state));
    this.#pending.clear();
    this.#open?.close();
    this.#open = null;
  }
}

/**
 * The port is shown to oRPC through three functions and not as itself: oRPC would listen for the port's `close` event,
 * and with such a listener Chromium 114's page process crashes when the page is reloaded.
 */
function openLink(): { link: RPCLink<ClientContext>; close: () => void } {
  const port = connectToHost();
  const closers: (() => void)[] = [];
  const shown: BrowserPortLike = {
    onMessage: {
      addListener: (listener) =>
        port.addEventListener('message', (event: MessageEvent<unknown>) => listener(event.data)),
    },
    onDisconnect: { addListener: (listener) => closers.push(listener) },
    postMessage: (data: unknown) => port.postMessage(data),
  };
  return {
    link: new RPCLink({ port: shown }),
    close() {
      for (const closer of closers) closer();
      port.close();
    },
  };
}
