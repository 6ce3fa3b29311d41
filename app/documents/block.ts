/** What a page is filled with: blocks that never break, in the order in which they are read. */
import type { Drawing, NamedPaint, Shape, Text } from '#app/drawing/shape.ts';
import { cleanLine, plainSpaces } from './clean-text.ts';
import type { FontSet } from './font-set.ts';
import { moveItem } from './page-item.ts';
import type { PageItem, Paragraph, Role } from './page-item.ts';
import type { TextStyle } from './paper-style.ts';
import { breakLines, lineShape, paragraphsOf } from './set-text.ts';

export interface Block {
  readonly height: number;
  /** In the block's own coordinates. */
  readonly items: readonly PageItem[];
  /** Air above it, dropped at the top of a page. */
  readonly before: number;
  /** Never the last thing on a page. */
  readonly keepWithNext: boolean;
}

export interface TextGiven {
  readonly text: string;
  readonly field: string;
  readonly style: TextStyle;
  readonly width: number;
  readonly fonts: FontSet;
  readonly role?: Role;
  readonly x?: number;
  readonly before?: number;
  readonly anchor?: 'start' | 'end';
  /** Every line keeps with the next, the last with what follows. */
  readonly keepWithNext?: boolean;
  /** Words in semibold ink that the first line begins with. */
  readonly lead?: string;
}

/** A text as one block a line; no first or last line of a paragraph stands alone on a page. */
export function textBlocks(given: TextGiven): readonly Block[] {
  if (isLongLead(given)) return underLead(given);
  const { style, field, fonts, width, x = 0, role = 'P', anchor = 'start' } = given;
  return paragraphsOf(given.text).flatMap((words, index) => {
    const paragraph: Paragraph = { role };
    const lead = index === 0 ? setLead(given) : null;
    const lines = breakLines(words, style, width, fonts, lead?.width ?? 0);
    return lines.map((line, i): Block => {
      const start = i === 0 && lead !== null ? lead.width : 0;
      const shape = lineShape(line, style, anchor === 'end' ? width : start, 0, anchor);
      const glued = i === 0 || i === lines.length - 2;
      return {
        height: style.leading,
        items: [{ role, field, x, y: 0, shapes: i === 0 && lead !== null ? [lead.shape, shape] : [shape], paragraph }],
        before: i > 0 ? 0 : spaceBefore(index, given),
        keepWithNext: i === lines.length - 1 ? (given.keepWithNext ?? false) : glued || (given.keepWithNext ?? false),
      };
    });
  });
}

/** A lead that would leave too little of its line is set on lines of its own. */
const LONGEST_LEAD = 0.6;

function leadStyle(style: TextStyle): TextStyle {
  return { ...style, weight: 'semibold', paint: 'ink' };
}

function setLead({ lead, style, fonts }: TextGiven): { readonly shape: Text; readonly width: number } | null {
  if (lead === undefined || cleanLine(lead) === '') return null;
  const look = leadStyle(style);
  const words = plainSpaces(cleanLine(lead));
  return { shape: lineShape(words, look, 0, 0), width: fonts.measure(`${words} `, look, style.size) };
}

function isLongLead(given: TextGiven): boolean {
  const lead = setLead(given);
  return lead !== null && lead.width > given.width * LONGEST_LEAD;
}

function underLead({ lead = '', ...given }: TextGiven): readonly Block[] {
  const style = leadStyle(given.style);
  const head = textBlocks({ ...given, text: lead, style, keepWithNext: true });
  return [...head, ...textBlocks({ ...given, before: 0 })];
}

function spaceBefore(index: number, given: TextGiven): number {
  return index === 0 ? (given.before ?? 0) : given.style.leading * 0.4;
}

/** The same as one block that never breaks. */
export function textBlock(given: TextGiven): Block {
  return { ...stack(textBlocks(given)), before: given.before ?? 0, keepWithNext: given.keepWithNext ?? false };
}

/** One line that is known to fit. */
export function lineItem(
  text: string,
  style: TextStyle,
  place: {
    readonly x: number;
    readonly y: number;
    readonly field: string;
    readonly anchor?: 'start' | 'middle' | 'end';
  },
  role: Role = 'P',
): PageItem {
  const shape = lineShape(plainSpaces(cleanLine(text)), style, 0, 0, place.anchor ?? 'start');
  return { role, field: place.field, x: place.x, y: place.y, shapes: [shape] };
}

export function figureItem(drawing: Drawing, field: string, x: number, y: number): PageItem {
  return { role: 'Figure', field, x, y, shapes: drawing.shapes, alt: drawing.title };
}

export function artifact(shapes: readonly Shape[], x = 0, y = 0): PageItem {
  return { role: 'Artifact', field: '', x, y, shapes };
}

export function ruleShape(x1: number, x2: number, y: number, paint: NamedPaint, width = 0.6): Shape {
  return { kind: 'line', x1, y1: y, x2, y2: y, style: { stroke: paint, strokeWidth: width } };
}

/** A line across, as a block of no height of its own. */
export function ruleBlock(width: number, paint: NamedPaint, before: number, after: number, strength = 0.6): Block {
  return {
    height: after,
    items: [artifact([ruleShape(0, width, 0, paint, strength)])],
    before,
    keepWithNext: true,
  };
}

/** Blocks one under the other as one that never breaks. */
export function stack(blocks: readonly Block[]): Block {
  const items: PageItem[] = [];
  let height = 0;
  blocks.forEach((block, i) => {
    height += i === 0 ? 0 : block.before;
    items.push(...block.items.map((item) => moveItem(item, 0, height)));
    height += block.height;
  });
  return {
    height,
    items,
    before: blocks[0]?.before ?? 0,
    keepWithNext: blocks.at(-1)?.keepWithNext ?? false,
  };
}

/** Blocks side by side, their tops aligned. */
export function beside(columns: readonly { readonly x: number; readonly block: Block }[], before = 0): Block {
  return {
    height: Math.max(0, ...columns.map(({ block }) => block.height)),
    items: columns.flatMap(({ x, block }) => block.items.map((item) => moveItem(item, x, 0))),
    before,
    keepWithNext: false,
  };
}

export function keep(block: Block): Block {
  return { ...block, keepWithNext: true };
}

export function after(block: Block, air: number): Block {
  return { ...block, height: block.height + air };
}
