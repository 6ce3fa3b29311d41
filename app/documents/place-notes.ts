/** What of a window's notes stands under its options, gravest first, and what is left for the end of the paper. */
import type { PaperNote } from '#app/proposal/proposal-paper.ts';
import type { Block } from './block.ts';
import { heightOf } from './flow-pages.ts';
import type { NoteBlocks } from './lay-out-window.ts';

export interface PlacedNotes {
  readonly placed: readonly Block[];
  readonly left: readonly PaperNote[];
}

/** All of them in `room`, or as many, down to the pieces of a note, as leave room for `more`, the line that sends a reader on. */
export function placeNotes(notes: readonly NoteBlocks[], more: Block, room: number): PlacedNotes {
  const all = notes.flatMap((each) => each.blocks);
  if (tall(all) <= room) return { placed: all, left: [] };
  const enough = room - tall([more]);
  const placed: Block[] = [];
  for (const [i, { note, blocks, set }] of notes.entries()) {
    if (tall([...placed, ...blocks]) <= enough) {
      placed.push(...blocks);
      continue;
    }
    const parts = note.parts ?? [];
    const counts = parts.map((_, count) => parts.length - 1 - count);
    const some = counts.find(
      (count) => count > 0 && tall([...placed, ...set(parts.slice(0, count).join(' '))]) <= enough,
    );
    const rest = notes.slice(i + 1).map((each) => each.note);
    if (some === undefined) return { placed: enough < 0 ? placed : [...placed, more], left: [note, ...rest] };
    const others = parts.slice(some);
    return {
      placed: [...placed, ...set(parts.slice(0, some).join(' ')), more],
      left: [{ ...note, says: others.join(' '), parts: others }, ...rest],
    };
  }
  return { placed, left: [] };
}

/** Height with the space before its first line. */
function tall(blocks: readonly Block[]): number {
  return (blocks[0]?.before ?? 0) + heightOf(blocks);
}
