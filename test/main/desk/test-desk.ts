import { createRouterClient } from '@orpc/server';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { createDesk } from '#main/desk/create-desk.ts';
import type { Desk } from '#main/desk/create-desk.ts';
import { readFonts } from '#main/host/fonts.ts';
import { cutPaperStarter } from '#main/host/start-cut-paper.ts';
import { MachineLacks } from '#main/host/machine.ts';
import type { Machine, MachineAct } from '#main/host/machine.ts';

/** A machine whose dialogs a test answers and whose acts it can look at. */
export class TestMachine implements Machine {
  readonly kind = 'electron';
  lacks: MachineAct[] = [];
  /** What the save dialog answers: a name in the test's folder, or null for cancelled. */
  savePath: string | null = null;
  readonly acts: string[] = [];
  papers: string;

  constructor(papers: string) {
    this.papers = papers;
  }

  #act(act: MachineAct, what: string): void {
    if (this.lacks.includes(act)) throw new MachineLacks(act, `No ${act} here: take the link.`);
    this.acts.push(`${act} ${what}`);
  }

  async chooseSavePath(suggestedName: string): Promise<string | null> {
    this.#act('chooseSavePath', suggestedName);
    return this.savePath;
  }

  async chooseOpenPath(): Promise<string | null> {
    this.#act('chooseOpenPath', '');
    return null;
  }

  async openPath(file: string): Promise<void> {
    this.#act('openPath', path.basename(file));
  }

  async showInFolder(file: string): Promise<void> {
    this.#act('showInFolder', path.basename(file));
  }

  papersFolder(): string {
    return this.papers;
  }
}

export interface TestDesk {
  readonly desk: Desk;
  readonly machine: TestMachine;
  /** Holds `data` and `papers`. */
  readonly folder: string;
  /** Faults that were ours. */
  readonly faults: unknown[];
  /** Sets the clock; each look at it moves it on by a second. */
  setClock(moment: string): void;
  remove(): Promise<void>;
}

/** A desk on a fresh portfolio whose ids count up and whose clock starts at noon UTC on 25 November 2026. */
export function makeTestDesk(): TestDesk {
  const folder = mkdtempSync(path.join(tmpdir(), 'linenfold-desk-'));
  const machine = new TestMachine(path.join(folder, 'papers'));
  const faults: unknown[] = [];
  let moment = Date.parse('2026-11-25T12:00:00Z');
  let lastId = 0;
  const desk = createDesk({
    dataFolder: path.join(folder, 'data'),
    machine,
    clock: () => new Date((moment += 1000)),
    makeId: () => `id-${String((lastId += 1)).padStart(5, '0')}`,
    readFonts: () => readFonts(null),
    startCutPaper: cutPaperStarter(null),
    programVersion: '0.0.0-test',
    onFault: (error) => faults.push(error),
    busyTimeout: 200,
  });
  return {
    desk,
    machine,
    folder,
    faults,
    setClock: (text) => {
      moment = Date.parse(text);
    },
    remove: async () => {
      await desk.close();
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/** The desk called as the command line calls it: directly, with every check of the contract. */
export function callDesk({ desk }: TestDesk) {
  return createRouterClient(desk.router);
}
export type DeskClient = ReturnType<typeof callDesk>;
