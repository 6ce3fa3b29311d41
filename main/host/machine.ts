/**
 * What a shell lends the desk: file dialogs, opening files, the folder for papers. The desk never asks which shell it
 * runs under except to say what is missing; each shell implements this once.
 */

/** One choice in a file dialog, for example `{ name: 'PDF', extensions: ['pdf'] }` (extensions without the dot). */
export interface FileFilter {
  readonly name: string;
  readonly extensions: readonly string[];
}

/** A thing that a shell may be unable to do. */
export type MachineAct = 'chooseSavePath' | 'chooseOpenPath' | 'openPath' | 'showInFolder';

export interface Machine {
  readonly kind: 'electron' | 'browser' | 'command';
  /** What this shell cannot do. Asking for it all the same rejects with `MachineLacks`. */
  readonly lacks: readonly MachineAct[];
  /** Asks where to save. Resolves with an absolute path, or null when the person cancelled. */
  chooseSavePath(suggestedName: string, filters: readonly FileFilter[]): Promise<string | null>;
  /** Asks for a file to read. Resolves with an absolute path, or null when the person cancelled. */
  chooseOpenPath(filters: readonly FileFilter[]): Promise<string | null>;
  /** Opens a file with the program that the computer uses for it. Rejects with the computer's reason when it cannot. */
  openPath(path: string): Promise<void>;
  /** Shows a file in its folder. */
  showInFolder(path: string): Promise<void>;
  /** Where papers are written: `Documents/Linenfold`, or the folder in the environment's LINENFOLD_PAPERS. Need not exist yet. */
  papersFolder(): string;
}

/** The shell cannot do what was asked. `act` says what; the message says the way round it. */
export class MachineLacks extends Error {
  readonly act: MachineAct;

  constructor(act: MachineAct, wayRound: string) {
    super(wayRound);
    this.name = 'MachineLacks';
    this.act = act;
  }
}
