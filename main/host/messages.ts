import type { FileFilter, MachineAct } from './machine.ts';
import type { Paper } from './served-desk.ts';

/**
 * What passes between Electron's main process and the host process. The contract itself does not pass here: each window
 * gets a message port of its own to the host.
 */

/** What the host is told when it is started, as one JSON argument. */
export interface HostSettings {
  /** Absolute path of the folder that holds `portfolio.sqlite`. */
  readonly dataFolder: string;
  /** Absolute path of the folder where papers are written. */
  readonly papersFolder: string;
  /** Absolute path of the folder with the TrueType files. */
  readonly fontsFolder: string;
  /** Absolute path of the built thread that draws cut plans. */
  readonly cutPaperThread: string;
}

/** One request of the desk to the machine. */
export interface MachineAsk {
  readonly act: MachineAct;
  readonly path?: string | undefined;
  readonly suggestedName?: string | undefined;
  readonly filters?: readonly FileFilter[] | undefined;
}

export type ToHost =
  /** Comes with one transferred port, over which the contract is then served. */
  | { readonly kind: 'port' }
  | { readonly kind: 'paper'; readonly call: number; readonly paperKind: string; readonly id: string }
  | {
      readonly kind: 'machine';
      readonly call: number;
      readonly path: string | null;
      readonly error?: string | undefined;
    }
  | { readonly kind: 'close' };

export type FromHost =
  | { readonly kind: 'open' }
  /** A fault that is ours, for the log. */
  | { readonly kind: 'fault'; readonly says: string }
  | { readonly kind: 'paper'; readonly call: number; readonly paper: Paper | null; readonly error?: string | undefined }
  | { readonly kind: 'machine'; readonly call: number; readonly ask: MachineAsk }
  | { readonly kind: 'closed' };
