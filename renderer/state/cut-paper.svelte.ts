/** The cut plan on paper as a screen asks for it: drawn at the desk, watched meanwhile, and left when nobody waits for it. */
import { client } from './client.ts';
import { program } from './program.svelte.ts';

/** Milliseconds between two looks at how far it is. */
const LOOK_EVERY = 400;
/** A browser lets a page open a tab for some seconds after a press; later the person has to press again. */
const OPENS_WITHIN = 3_000;

export class CutPaper {
  readonly address: string;
  /** How much of the laying is done; 1: the pages are being drawn; null: nothing is. */
  share: number | null = $state(null);
  /** Of the paper that is ready; null: none is. */
  pages: number | null = $state(null);
  readonly #of: { readonly projectId: string | null };
  #asked = 0;

  /** Of a project, or with null of the accepted work of all. */
  constructor(projectId: string | null) {
    this.#of = { projectId };
    this.address = `/papers/cut-plan/${projectId ?? 'accepted'}`;
  }

  /** Draws it; opens it by itself where that is allowed, else it waits to be opened. */
  async draw(): Promise<void> {
    const asked = (this.#asked += 1);
    const isWanted = (): boolean => asked === this.#asked;
    const began = performance.now();
    let isDone = false;
    this.share = 0;
    this.pages = null;
    try {
      await program.edits.flush();
      const drawn = client.cuttings.drawCutPlan(this.#of);
      void this.#watch(() => isWanted() && !isDone);
      const { pages } = await drawn;
      if (!isWanted()) return;
      this.pages = pages;
      if (pages !== null && performance.now() - began < OPENS_WITHIN) window.open(this.address, '_blank');
    } catch (error) {
      if (isWanted()) program.tell(error);
    } finally {
      isDone = true;
      if (isWanted()) this.share = null;
    }
  }

  async leave(): Promise<void> {
    this.#asked += 1;
    this.share = null;
    await client.cuttings.leaveDrawing(this.#of).catch((error: unknown) => program.tell(error));
  }

  /** What is ready is of work as it was. One that is being drawn is left alone: its address tells the work as it is. */
  forget(): void {
    this.pages = null;
  }

  /** The screen is closed: nobody waits for it any more. */
  close(): void {
    if (this.share !== null) void this.leave();
  }

  async #watch(isGoing: () => boolean): Promise<void> {
    while (isGoing()) {
      await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY));
      // Whether it failed is told by the drawing itself.
      const { share } = await client.cuttings.readDrawing(this.#of).catch(() => ({ share: null }));
      if (share !== null && isGoing()) this.share = share;
    }
  }
}
