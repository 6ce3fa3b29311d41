/** A proposal as pages of items: the first page, a section for each window, what to heed, and where to sign. */
import type { PaperNote, PaperWindow, ProposalPaper } from '#app/proposal/proposal-paper.ts';
import { keep } from './block.ts';
import { heightOf, makeFlow } from './flow-pages.ts';
import type { FontSet } from './font-set.ts';
import { acceptanceBlocks } from './lay-out-acceptance.ts';
import { FIRST_TOP, foot, letterheadBlock, runningHead } from './lay-out-head.ts';
import { cancellationBlocks, noteBlocks, termBlocks } from './lay-out-notes.ts';
import { clientBlocks, overviewBlock, summaryBlocks } from './lay-out-summary.ts';
import { layOutWindow } from './lay-out-window.ts';
import { placeNotes } from './place-notes.ts';
import { workingBlocks } from './lay-out-working.ts';
import type { LaidPage } from './page-item.ts';
import type { PageFrame } from './paper-style.ts';

/** Pages in order. Nothing lies outside the frame but head and foot; a block that fits on a page is never cut. */
export function layOutProposal(paper: ProposalPaper, frame: PageFrame, fonts: FontSet): readonly LaidPage[] {
  const flow = makeFlow(frame, FIRST_TOP);
  const summary = summaryBlocks(paper, fonts);
  flow.add([keep(letterheadBlock(paper, fonts)), ...clientBlocks(paper, fonts)]);
  flow.add(overviewBlock(paper));
  flow.add(summary.blocks, summary.head);

  const moved: PaperNote[] = [];
  paper.windows.forEach((window, i) => {
    flow.startPage();
    const { blocks, repeat, notes, more } = layOutWindow(window, i, fonts);
    flow.add(blocks, repeat);
    // Where no room is left the others go to those for all, under the window's name: no page is begun for a few lines.
    const { placed, left } = placeNotes(notes, more, flow.roomLeft());
    flow.add(placed);
    moved.push(...notesLeft(window, left));
  });

  flow.startPage();
  flow.add(noteBlocks([...moved, ...paper.notes], 'notes', 'Please note', fonts));
  flow.addTogether(termBlocks(paper.closing, fonts));
  flow.addTogether(cancellationBlocks(paper.closing, fonts));
  const acceptance = acceptanceBlocks(paper, fonts);
  if (heightOf(acceptance.blocks) + 28 > flow.roomLeft()) flow.startPage();
  flow.add(acceptance.blocks, acceptance.head);

  paper.working.forEach((working, i) => {
    flow.startPage();
    flow.add(workingBlocks(working, i, fonts));
  });

  const count = flow.pages.length;
  return flow.pages.map((items, i) => ({
    width: frame.width,
    height: frame.height,
    items: [
      ...(i === 0 ? [] : runningHead(paper, frame, fonts)),
      ...items,
      ...foot(paper, frame, { page: i + 1, pages: count }, fonts),
    ],
  }));
}

/** One entry for a window and option, in the order of its notes. */
function notesLeft({ room, opening }: PaperWindow, left: readonly PaperNote[]): readonly PaperNote[] {
  const place = `${room}, ${opening}`;
  const byAbout = new Map<string, PaperNote>();
  for (const note of left) {
    const about = note.about === '' ? place : `${place} (${note.about})`;
    const before = byAbout.get(about);
    byAbout.set(about, before ? { ...before, says: `${before.says} ${note.says}` } : { about, says: note.says });
  }
  return [...byAbout.values()];
}
