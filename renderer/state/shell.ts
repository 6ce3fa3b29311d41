/**
 * What the page knows of the shell around it. In Electron the preload script puts `linenfoldShell` on the window
 * (main/shell/preload.ts); in a browser there is none, and the page talks to the loopback server.
 */

/** `up`: asks are answered. `gone`: the host died and is being started again. `failed`: it died twice and stays away. */
export type HostState = 'up' | 'gone' | 'failed';

export interface LinenfoldShell {
  readonly kind: 'electron';
  /** Told of each change of the host process, and of its state after the page has loaded. */
  onHostState(listener: (state: HostState) => void): void;
  /** Told when the window is about to close; answered by `confirmClose` when everything typed is saved. */
  onCloseAsked(listener: () => void): void;
  confirmClose(): void;
}

declare global {
  interface Window {
    readonly linenfoldShell?: LinenfoldShell;
  }
}

/** Makes a message channel and hands its far end to the shell, which passes it to the host. Returns the near end. */
export function connectToHost(): MessagePort {
  const { port1, port2 } = new MessageChannel();
  // A port cannot cross contextBridge, so it goes to the preload script by a message of the window to itself.
  window.postMessage('linenfold:connect', window.location.origin, [port2]);
  port1.start();
  return port1;
}
