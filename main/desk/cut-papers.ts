/** The cut plans that are being drawn, each in a thread of its own, and those drawn last: asked for again, they are there. */
import { createHash } from 'node:crypto';
import { serialize } from 'node:v8';
import type { DrawnDocument } from '#app/documents/document-given.ts';
import type { CutPaperQuestion } from '#main/host/cut-paper-messages.ts';
import type { CutPaperStarted, StartCutPaper } from '#main/host/start-cut-paper.ts';

export interface CutPapers {
  /**
   * The paper of this name; null when it was left before it was done. The same question is drawn once, however often it is
   * asked; another question under the name ends the one before.
   */
  readonly draw: (name: string, question: CutPaperQuestion) => Promise<DrawnDocument | null>;
  /** Share of the laying that is done, 1 while the pages are drawn; null when the paper is not being drawn. */
  readonly shareOf: (name: string) => number | null;
  readonly leave: (name: string) => void;
  readonly close: () => void;
}

interface Drawing extends CutPaperStarted {
  readonly key: string;
  share: number;
}

/** So many papers are kept. */
const MOST_KEPT = 4;

export function makeCutPapers(start: StartCutPaper): CutPapers {
  const drawings = new Map<string, Drawing>();
  const kept = new Map<string, DrawnDocument>();

  const begin = (name: string, key: string, question: CutPaperQuestion): Drawing => {
    drawings.get(name)?.end();
    const started = start(question, (share) => (drawing.share = share));
    const drawing: Drawing = { ...started, key, share: 0 };
    drawings.set(name, drawing);
    return drawing;
  };
  const keep = (key: string, drawn: DrawnDocument): void => {
    kept.delete(key);
    kept.set(key, drawn);
    for (const [oldest] of kept) if (kept.size > MOST_KEPT) kept.delete(oldest);
  };

  return {
    async draw(name, question) {
      const key = nameQuestion(question);
      const known = kept.get(key);
      if (known !== undefined) return known;
      const going = drawings.get(name);
      const drawing = going?.key === key ? going : begin(name, key, question);
      try {
        const drawn = await drawing.drawn;
        if (drawn !== null) keep(key, drawn);
        return drawn;
      } finally {
        if (drawings.get(name) === drawing) drawings.delete(name);
      }
    },
    shareOf: (name) => drawings.get(name)?.share ?? null,
    leave: (name) => drawings.get(name)?.end(),
    close: () => {
      for (const drawing of drawings.values()) drawing.end();
    },
  };
}

/** The typefaces are the same for every paper of a run. Rates are big integers, which JSON cannot write. */
function nameQuestion({ work, date, given: { id, page, programVersion } }: CutPaperQuestion): string {
  return createHash('sha256')
    .update(serialize([work, date, id, page, programVersion]))
    .digest('hex');
}
