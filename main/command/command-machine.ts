/** The command line as a machine: it has files and nothing else. */
import path from 'node:path';
import { MachineLacks } from '#main/host/machine.ts';
import type { Machine, MachineAct } from '#main/host/machine.ts';

export function makeCommandMachine(): Machine {
  const lack = (act: MachineAct): Promise<never> =>
    Promise.reject(new MachineLacks(act, 'The command line writes to the file that it is given.'));
  return {
    kind: 'command',
    lacks: ['chooseSavePath', 'chooseOpenPath', 'openPath', 'showInFolder'],
    chooseSavePath: () => lack('chooseSavePath'),
    chooseOpenPath: () => lack('chooseOpenPath'),
    openPath: () => lack('openPath'),
    showInFolder: () => lack('showInFolder'),
    papersFolder: () => path.resolve('.'),
  };
}
