/** What every screen shares: the state of the portfolio, the edits, and where one is. */
import type { PortfolioState } from '#shared/contract/contract.ts';
import { client } from './client.ts';
import { saveBeforeClosing } from './closing.ts';
import { tellDeskFault } from './desk-fault.ts';
import type { DeskFault } from './desk-fault.ts';
import { Edits } from './edits.svelte.ts';
import { makeKeptEdits } from './kept-edits.ts';
import { Route } from './route.svelte.ts';
import { sendEdit, sendRemoval, sendRestoring } from './send-edit.ts';

/** Long enough to be read twice, in milliseconds; nothing is said here that is not to be seen elsewhere too. */
const SAID_FOR = 15_000;

class Program {
  portfolio: PortfolioState | null = $state.raw(null);
  /** The desk did not answer at all. */
  fault: DeskFault | null = $state.raw(null);
  /** One line about what just happened, said to those who cannot see it too. */
  said = $state('');
  #silence: ReturnType<typeof setTimeout> | undefined;
  /** Section of the help that lies over the screen, by its id; null while it is closed. */
  help: string | null = $state(null);
  readonly route = new Route();
  readonly edits = new Edits({ sendEdit, sendRemoval, sendRestoring }, makeKeptEdits(findStorage()));

  async start(): Promise<void> {
    saveBeforeClosing(() => this.edits.saveAll());
    await this.readPortfolio();
    if (this.portfolio?.state !== 'ready') return;
    const count = await this.edits.replayKept();
    if (count > 0) this.say('What you typed last and the window had not saved yet is saved now.');
  }

  async readPortfolio(again = false): Promise<void> {
    try {
      this.portfolio = again ? await client.portfolio.tryAgain({}) : await client.portfolio.readState({});
      this.fault = null;
    } catch (error) {
      const fault = tellDeskFault(error);
      if (fault.trouble && this.portfolio)
        this.portfolio = { ...this.portfolio, state: 'trouble', trouble: fault.trouble };
      else this.fault = fault;
    }
  }

  /** Something failed that no field can show. A trouble of the portfolio takes the whole screen. */
  tell(error: unknown): void {
    const fault = tellDeskFault(error);
    if (fault.trouble && this.portfolio)
      this.portfolio = { ...this.portfolio, state: 'trouble', trouble: fault.trouble };
    else this.say(`${fault.says} ${fault.remedy}`);
  }

  say(text: string): void {
    this.said = text;
    clearTimeout(this.#silence);
    this.#silence = setTimeout(() => (this.said = ''), SAID_FOR);
  }

  /** Whether this shell can do a thing; else a link is offered instead. */
  can(act: keyof typeof LACK_NAMES): boolean {
    return this.portfolio !== null && !LACK_NAMES[act].some((name) => this.portfolio?.lacks.includes(name));
  }
}

/** A lack by the name of the contract and by that of the machine. */
const LACK_NAMES = {
  save: ['save-dialog', 'chooseSavePath'],
  open: ['open-file', 'openPath'],
  show: ['show-in-folder', 'showInFolder'],
} as const;

function findStorage(): Storage | null {
  try {
    return window.localStorage;
  } catch {
    // Some windows forbid it: edits are then kept in memory alone.
    return null;
  }
}

export const program = new Program();
