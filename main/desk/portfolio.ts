import type { PortfolioState } from '#shared/contract/contract.ts';
import type { ToldTrouble } from '#shared/contract/errors.ts';
import type { MachineAct } from '#main/host/machine.ts';
import { readSampleClient } from '#main/portfolio/clients.ts';
import { isEmpty } from '#main/portfolio/count-records.ts';
import { PortfolioUnavailable } from '#main/portfolio/portfolio-trouble.ts';
import type { DeskParts } from './desk-parts.ts';
import type { Implementer } from './implementer.ts';

const LACKS: Readonly<Record<MachineAct, string>> = {
  chooseSavePath: 'save-dialog',
  chooseOpenPath: 'open-dialog',
  openPath: 'open-file',
  showInFolder: 'show-in-folder',
};

export function makePortfolioRequests(os: Implementer['portfolio'], { door, machine, programVersion }: DeskParts) {
  function readState(): PortfolioState {
    const known = {
      file: door.file,
      programVersion,
      shell: machine.kind,
      lacks: machine.lacks.map((act) => LACKS[act]),
    };
    const trouble = (told: ToldTrouble): PortfolioState => ({
      ...known,
      state: 'trouble',
      trouble: told,
      empty: false,
      sample: false,
    });
    try {
      return door.read((reading) => ({
        ...known,
        state: 'ready',
        trouble: null,
        empty: isEmpty(reading),
        sample: readSampleClient(reading) !== null,
      }));
    } catch (error) {
      if (error instanceof PortfolioUnavailable) return trouble(error.trouble);
      throw error;
    }
  }

  return {
    readState: os.readState.handler(readState),
    tryAgain: os.tryAgain.handler(() => {
      door.tryAgain();
      return readState();
    }),
  };
}
