/** Rows of words and amounts, aligned, without boxes: a line where a line will do. */
import { artifact, beside, ruleShape, textBlock } from './block.ts';
import type { Block } from './block.ts';
import type { FontSet } from './font-set.ts';
import type { TextStyle } from './paper-style.ts';
import type { NamedPaint } from '#app/drawing/shape.ts';

export interface Column {
  readonly x: number;
  readonly width: number;
  readonly align: 'start' | 'end';
}

export interface Cell {
  readonly text: string;
  readonly style: TextStyle;
  readonly field: string;
}

/** One row; every cell wraps in its column, the row is as high as the highest. Empty cells take no place. */
export function rowBlock(
  columns: readonly Column[],
  cells: readonly (Cell | null)[],
  fonts: FontSet,
  space: { readonly before?: number; readonly above?: number; readonly below?: number } = {},
): Block {
  const placed = columns.flatMap((column, i) => {
    const cell = cells[i];
    if (cell === null || cell === undefined || cell.text === '') return [];
    const block = textBlock({
      text: cell.text,
      field: cell.field,
      style: cell.style,
      width: column.width,
      fonts,
      anchor: column.align,
    });
    return [{ x: column.x, block }];
  });
  return padded({ ...beside(placed, space.before ?? 0), keepWithNext: false }, space.above ?? 0, space.below ?? 0);
}

export function padded(block: Block, above: number, below: number): Block {
  return {
    ...block,
    height: block.height + above + below,
    items: block.items.map((item) => ({ ...item, y: item.y + above })),
  };
}

/** The block with a line along its top. */
export function ruledAbove(block: Block, width: number, paint: NamedPaint, strength = 0.6): Block {
  return { ...block, items: [artifact([ruleShape(0, width, 0, paint, strength)]), ...block.items] };
}
