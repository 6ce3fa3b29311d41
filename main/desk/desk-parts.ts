import type { PaperFonts } from '#app/documents/document-given.ts';
import type { Machine } from '#main/host/machine.ts';
import type { StartCutPaper } from '#main/host/start-cut-paper.ts';
import { makeCutPapers } from './cut-papers.ts';
import type { CutPapers } from './cut-papers.ts';
import { makePortfolioDoor } from './portfolio-door.ts';
import type { PortfolioDoor } from './portfolio-door.ts';

/** What a shell gives the desk. Time, chance, fonts and the machine come from outside, so that tests may give their own. */
export interface DeskSettings {
  /** Absolute path of the folder that holds `portfolio.sqlite`. It need not exist yet. */
  readonly dataFolder: string;
  readonly machine: Machine;
  readonly clock: () => Date;
  /** A new id, never given before. */
  readonly makeId: () => string;
  /** Reads the TrueType files of papers; asked for when the first paper is drawn. */
  readonly readFonts: () => Promise<PaperFonts>;
  readonly startCutPaper: StartCutPaper;
  readonly programVersion: string;
  /** Told of every fault that is ours. */
  readonly onFault: (error: unknown) => void;
  /** Milliseconds to wait for another process to let go of the portfolio. */
  readonly busyTimeout?: number | undefined;
}

/** What every domain of the desk works with. */
export interface DeskParts {
  readonly door: PortfolioDoor;
  readonly machine: Machine;
  readonly clock: () => Date;
  /** The instant now, ISO in UTC. */
  readonly now: () => string;
  readonly makeId: () => string;
  readonly readFonts: () => Promise<PaperFonts>;
  readonly cutPapers: CutPapers;
  readonly programVersion: string;
  /** Runs one after the other what must not overlap, such as two proposals that count up the same number. */
  readonly inTurn: <T>(act: () => Promise<T>) => Promise<T>;
}

export function makeDeskParts(settings: DeskSettings): DeskParts {
  const now = (): string => settings.clock().toISOString();
  let fonts: Promise<PaperFonts> | null = null;
  let last: Promise<unknown> = Promise.resolve();
  return {
    door: makePortfolioDoor(settings.dataFolder, now, settings.busyTimeout),
    machine: settings.machine,
    clock: settings.clock,
    now,
    makeId: settings.makeId,
    readFonts() {
      fonts ??= settings.readFonts().catch((error: unknown) => {
        fonts = null;
        throw error;
      });
      return fonts;
    },
    cutPapers: makeCutPapers(settings.startCutPaper),
    programVersion: settings.programVersion,
    inTurn(act) {
      const turn = last.then(act);
      last = turn.catch(() => undefined);
      return turn;
    },
  };
}
