import { randomUUID } from 'node:crypto';
import { createDesk } from '#main/desk/create-desk.ts';
import type { Desk } from '#main/desk/create-desk.ts';
import { PROGRAM_VERSION } from '#main/desk/program-version.ts';
import { readFonts } from './fonts.ts';
import type { Machine } from './machine.ts';
import { cutPaperStarter } from './start-cut-paper.ts';

export interface DeskPlace {
  /** Absolute path of the folder that holds `portfolio.sqlite`. */
  readonly dataFolder: string;
  /** Absolute path of the folder with the TrueType files, or null to take them from node_modules. */
  readonly fontsFolder: string | null;
  /** Absolute path of the built thread that draws cut plans, or null to run it from the sources. */
  readonly cutPaperThread: string | null;
  readonly machine: Machine;
  /** Told of every fault that is ours. */
  readonly onFault: (error: unknown) => void;
}

/** The desk with the computer's own clock and chance, as both shells serve it. */
export function openDesk({ dataFolder, fontsFolder, cutPaperThread, machine, onFault }: DeskPlace): Desk {
  return createDesk({
    dataFolder,
    machine,
    clock: () => new Date(),
    makeId: randomUUID,
    readFonts: () => readFonts(fontsFolder),
    startCutPaper: cutPaperStarter(cutPaperThread),
    programVersion: PROGRAM_VERSION,
    onFault,
  });
}
