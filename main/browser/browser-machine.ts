import { MachineLacks, type Machine, type MachineAct } from '#main/host/machine.ts';

const wayRound: Readonly<Record<MachineAct, string>> = {
  chooseSavePath:
    'The browser has no dialog for this: the file is written to the papers folder, and a link downloads it.',
  chooseOpenPath: 'The browser has no dialog for this: choose the file in the page.',
  openPath: 'The browser cannot open files of the computer: use the link to the paper.',
  showInFolder: 'The browser cannot show a folder: its path is written beside the paper.',
};

/** The machine as the browser shell has it: a folder for papers, and no dialogs. */
export function makeBrowserMachine(papersFolder: string): Machine {
  const lack = (act: MachineAct) => () => Promise.reject(new MachineLacks(act, wayRound[act]));
  return {
    kind: 'browser',
    lacks: ['chooseSavePath', 'chooseOpenPath', 'openPath', 'showInFolder'],
    chooseSavePath: lack('chooseSavePath'),
    chooseOpenPath: lack('chooseOpenPath'),
    openPath: lack('openPath'),
    showInFolder: lack('showInFolder'),
    papersFolder: () => papersFolder,
  };
}
