import { randomUUID } from 'node:crypto';
import { createDesk } from '#main/desk/create-desk.ts';
import type { Desk } from '#main/desk/create-desk.ts';
import { PROGRAM_VERSION } from '#main/desk/program-version.ts';
import { readFonts } from './fonts.ts';
import type { Machine } from './machine.ts';

export interface DeskPlace {
  /** Absolute path of the folder that holds `portfolio.sqlite`. */
  readonly dataFolder: string;
  /** Absolute path of the folder with the TrueType files, or null to take them from node_modules. */
  readonly fontsFolder: string | null;
  readonly machine: Machine;
  /** Told of every fault that is ours. */
  readonly onFault: (error: unknown) => void;
}

/** The desk with the computer's own clock and chance, as both shells serve it. */
export function openDesk({ dataFolder, fontsFolder, machine, onFault }: DeskPlace): Desk {
  return createDesk({
    dataFolder,
    machine,
    clock: () => new Date(),
    makeId: randomUUID,
    readFonts: () => readFonts(fontsFolder),
    programVersion: PROGRAM_VERSION,
    onFault,
  });
}
