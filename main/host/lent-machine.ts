import type { FileFilter, Machine } from './machine.ts';
import type { MachineAsk } from './messages.ts';

/** The machine as the host process has it: every act is asked of Electron's main process and answered by message. */
export interface LentMachine {
  readonly machine: Machine;
  /** Hands in one answer of the main process. `path` is the chosen path, where one was asked for. */
  answer(call: number, path: string | null, error?: string): void;
}

interface Waiting {
  readonly resolve: (path: string | null) => void;
  readonly reject: (reason: Error) => void;
}

export function lendMachine(papersFolder: string, send: (call: number, ask: MachineAsk) => void): LentMachine {
  const waiting = new Map<number, Waiting>();
  let lastCall = 0;

  const ask = (request: MachineAsk): Promise<string | null> =>
    new Promise((resolve, reject) => {
      lastCall += 1;
      waiting.set(lastCall, { resolve, reject });
      send(lastCall, request);
    });

  return {
    machine: {
      kind: 'electron',
      lacks: [],
      chooseSavePath: (suggestedName: string, filters: readonly FileFilter[]) =>
        ask({ act: 'chooseSavePath', suggestedName, filters }),
      chooseOpenPath: (filters: readonly FileFilter[]) => ask({ act: 'chooseOpenPath', filters }),
      openPath: async (path: string) => {
        await ask({ act: 'openPath', path });
      },
      showInFolder: async (path: string) => {
        await ask({ act: 'showInFolder', path });
      },
      papersFolder: () => papersFolder,
    },
    answer(call, path, error) {
      const one = waiting.get(call);
      waiting.delete(call);
      if (error === undefined) one?.resolve(path);
      else one?.reject(new Error(error));
    },
  };
}
