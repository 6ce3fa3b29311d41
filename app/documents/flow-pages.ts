/** Fills pages with blocks from top to bottom. What belongs together stays together wherever a page can hold it. */
import type { Block } from './block.ts';
import { moveItem } from './page-item.ts';
import type { PageItem } from './page-item.ts';
import type { PageFrame } from './paper-style.ts';

export interface Flow {
  /** Adds blocks, starting a new page wherever the next ones do not fit. `repeat` heads each page that begins among them. */
  readonly add: (blocks: readonly Block[], repeat?: Block) => void;
  /** The same, on one page if any page can hold them all. */
  readonly addTogether: (blocks: readonly Block[]) => void;
  readonly startPage: () => void;
  /** Height that is left on the page. */
  readonly roomLeft: () => number;
  readonly isPageEmpty: () => boolean;
  /** Items of each page in page coordinates. */
  readonly pages: readonly (readonly PageItem[])[];
}

/** What a run of blocks needs when it stands at the top of a page. */
export function heightOf(blocks: readonly Block[]): number {
  return blocks.reduce((sum, block, i) => sum + (i === 0 ? 0 : block.before) + block.height, 0);
}

/** `firstTop`: where content begins on the first page (it carries no running head). */
export function makeFlow(frame: PageFrame, firstTop: number): Flow {
  const pages: PageItem[][] = [[]];
  let y = firstTop;
  let empty = true;
  const startPage = () => {
    if (empty) return;
    pages.push([]);
    y = frame.top;
    empty = true;
  };
  const put = (block: Block) => {
    const top = empty ? y : y + block.before;
    pages.at(-1)?.push(...block.items.map((item) => moveItem(item, frame.left, top)));
    y = top + block.height;
    empty = false;
  };
  const fits = (blocks: readonly Block[]) => {
    const first = blocks[0];
    if (first === undefined) return true;
    return y + (empty ? 0 : first.before) + heightOf(blocks) <= frame.bottom + 0.01;
  };
  const full = frame.bottom - frame.top;

  const add = (blocks: readonly Block[], repeat?: Block) => {
    let start = 0;
    while (start < blocks.length) {
      const group = groupFrom(blocks, start, full - (repeat?.height ?? 0));
      if (!fits(group) && !empty) {
        startPage();
        if (repeat !== undefined && start > 0) put(repeat);
      }
      group.forEach(put);
      start += group.length;
    }
  };
  const addTogether = (blocks: readonly Block[]) => {
    if (!fits(blocks) && !empty) startPage();
    add(blocks);
  };
  return {
    add,
    addTogether,
    startPage,
    roomLeft: () => frame.bottom - y,
    isPageEmpty: () => empty,
    pages,
  };
}

/** The next block with all that it has to keep with, as far as one page can hold. */
function groupFrom(blocks: readonly Block[], start: number, full: number): readonly Block[] {
  let end = start + 1;
  while (end < blocks.length && blocks[end - 1]?.keepWithNext === true) {
    if (heightOf(blocks.slice(start, end + 1)) > full) break;
    end += 1;
  }
  return blocks.slice(start, end);
}
