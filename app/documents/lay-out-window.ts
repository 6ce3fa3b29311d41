/** One window: its wall to scale, and three options side by side whose rows align, so that they can be read across. */
import type { PaperNote, PaperOption, PaperReading, PaperWindow } from '#app/proposal/proposal-paper.ts';
import type { Shape } from '#app/drawing/shape.ts';
import { after, artifact, beside, figureItem, keep, ruleShape, stack, textBlock, textBlocks } from './block.ts';
import type { Block } from './block.ts';
import type { FontSet } from './font-set.ts';
import { openingHead } from './lay-out-opening-head.ts';
import { padded, ruledAbove } from './lay-out-table.ts';
import type { PageItem } from './page-item.ts';
import { tickBox } from './tick-box.ts';
import { COLUMN_GAP, COLUMN_WIDTH, CONTENT_WIDTH, STYLES } from './paper-style.ts';
import type { TextStyle } from './paper-style.ts';

const COLUMNS = [0, COLUMN_WIDTH + COLUMN_GAP, 2 * (COLUMN_WIDTH + COLUMN_GAP)] as const;
const LABEL = 35;
const TICK = 11;

export interface WindowBlocks {
  readonly blocks: readonly Block[];
  /** Heads the options again where they run over a page. */
  readonly repeat: Block;
  /** Under the options as far as the page has room for them, cautions first. */
  readonly notes: readonly NoteBlocks[];
  /** Says that the others stand at the end. */
  readonly more: Block;
}

export interface NoteBlocks {
  readonly note: PaperNote;
  readonly blocks: readonly Block[];
  /** The same with only some of what it says. */
  readonly set: (says: string) => readonly Block[];
}

export function layOutWindow(window: PaperWindow, index: number, fonts: FontSet): WindowBlocks {
  const field = `windows[${index}]`;
  const titles = titleRows(window, field, fonts);
  const blocks = [
    ...openingHead(window, field, fonts),
    ...ownNotes(window, field, fonts, 'stop').flatMap((each) => each.blocks),
    {
      height: window.elevation.height,
      items: [figureItem(window.elevation, `${field}.elevation`, (CONTENT_WIDTH - window.elevation.width) / 2, 0)],
      before: 5,
      keepWithNext: true,
    },
    ...titles,
    ...optionRows(window, field, fonts),
    ...textBlocks({
      text: window.advice,
      lead: 'Our advice.',
      field: `${field}.advice`,
      style: STYLES.reading,
      width: CONTENT_WIDTH,
      fonts,
      before: 8,
    }),
  ];
  return {
    blocks,
    repeat: after(stack(titles), 6),
    notes: [...ownNotes(window, field, fonts, 'caution'), ...ownNotes(window, field, fonts)],
    more: textBlock({
      text: 'What else to heed at this window stands at the end, under its name.',
      field: `${field}.more`,
      style: STYLES.smallInk,
      width: CONTENT_WIDTH,
      fonts,
      before: 2,
    }),
  };
}

/** What to heed at this window, in running text: each option named once. Stops stand over the options, the others under them. */
function ownNotes(
  window: PaperWindow,
  field: string,
  fonts: FontSet,
  level?: PaperNote['level'],
): readonly NoteBlocks[] {
  return window.notes.flatMap((note, i) => {
    if (note.level !== level) return [];
    const set = (says: string): readonly Block[] =>
      textBlocks({
        text: says,
        lead: leadOf(note),
        field: `${field}.notes[${i}]`,
        style: STYLES.smallInk,
        width: CONTENT_WIDTH,
        fonts,
        before: level === 'stop' ? 6 : 2,
      });
    return [{ note, blocks: set(note.says), set }];
  });
}

function leadOf({ about, level }: PaperNote): string {
  const lead = level === 'stop' ? 'Not advised' : 'Please note';
  return about === '' ? `${lead}.` : `${lead}, for ${about}.`;
}

function rowOf(blocks: readonly Block[], before = 0): Block {
  return keep({ ...beside(blocks.map((block, i) => ({ x: COLUMNS[i] ?? 0, block }))), before });
}

/** Tier names, titles and, where the options are of several cloths, theirs. */
function titleRows(window: PaperWindow, field: string, fonts: FontSet): readonly Block[] {
  const { options } = window;
  const text = (pick: (option: PaperOption) => string, name: string, style: TextStyle, role: 'P' | 'H3' = 'P') =>
    options.map((option, i) =>
      textBlock({
        text: pick(option),
        field: `${field}.options[${i}].${name}`,
        style,
        width: COLUMN_WIDTH,
        fonts,
        role,
      }),
    );
  const tiers = rowOf(text(tierLine, 'tierName', STYLES.small), 13);
  return [
    { ...tiers, items: [...tiers.items, ...adviceThreads(options)] },
    rowOf(text((option) => option.title, 'title', STYLES.option, 'H3')),
    ...(options.some((option) => option.cloth !== null)
      ? [rowOf(text((option) => option.cloth ?? '', 'cloth', STYLES.small))]
      : []),
  ];
}

/** The three columns, row by row. Rows keep together; what is too long for that breaks between its lines. */
function optionRows(window: PaperWindow, field: string, fonts: FontSet): readonly Block[] {
  const fieldOf = (i: number) => `${field}.options[${i}]`;
  const { options } = window;
  return [
    rowOf(
      options.map((option, i) =>
        repeatsAnother(option) ? saysBlock(option, fieldOf(i), fonts) : pictureBlock(option, fieldOf(i)),
      ),
      5,
    ),
    ...linesAcross(options, fieldOf, fonts),
    ...readingRows(options, fieldOf, fonts),
    priceRow(options, fieldOf, fonts),
  ];
}

/** It shows nothing of its own: why it is the same stands where the pictures would. */
function repeatsAnother({ litWindow, strip, readings }: PaperOption): boolean {
  return litWindow === null && strip === null && readings.length === 0;
}

function saysBlock({ says }: PaperOption, field: string, fonts: FontSet): Block {
  return textBlock({ text: says, field: `${field}.says`, style: STYLES.body, width: COLUMN_WIDTH, fonts });
}

function tierLine(option: PaperOption): string {
  return option.advice === null ? option.tierName : `${option.tierName} · ${option.advice}`;
}

/** A thread of the one colour along the top of the advised column. */
function adviceThreads(options: readonly PaperOption[]): readonly PageItem[] {
  const shapes = options.flatMap((option, i): readonly Shape[] => {
    const x = COLUMNS[i] ?? 0;
    if (option.advice === null) return [];
    return [
      { kind: 'line', x1: x, y1: -5, x2: x + COLUMN_WIDTH, y2: -5, style: { stroke: 'thread', strokeWidth: 1.6 } },
    ];
  });
  return shapes.length === 0 ? [] : [artifact(shapes)];
}

function pictureBlock(option: PaperOption, field: string): Block {
  const { litWindow, strip } = option;
  const gap = litWindow !== null && strip !== null && strip.height > 0 ? 4 : 0;
  const below = (litWindow?.height ?? 0) + gap;
  return {
    height: below + (strip?.height ?? 0),
    items: [
      ...(litWindow === null ? [] : [figureItem(litWindow, `${field}.litWindow`, 0, 0)]),
      ...(strip === null ? [] : [figureItem(strip, `${field}.strip`, 0, below)]),
    ],
    before: 0,
    keepWithNext: true,
  };
}

/** Beyond this many lines a row of texts may break over a page. */
const MOST_LINES = 24;

function linesAcross(
  options: readonly PaperOption[],
  fieldOf: (i: number) => string,
  fonts: FontSet,
): readonly Block[] {
  const columns = options.map((option, i) =>
    repeatsAnother(option)
      ? []
      : textBlocks({ text: option.says, field: `${fieldOf(i)}.says`, style: STYLES.body, width: COLUMN_WIDTH, fonts }),
  );
  const most = Math.max(...columns.map((lines) => lines.length));
  const at = (block: Block, i: number) => ({ x: COLUMNS[i] ?? 0, block });
  if (most <= MOST_LINES) return [keep(padded({ ...beside(columns.map(stack).map(at)), before: 6 }, 0, 6))];
  return Array.from({ length: most }, (_, line): Block => {
    const blocks = columns.flatMap((lines, i) => (lines[line] === undefined ? [] : [at(lines[line], i)]));
    return {
      ...beside(blocks, line === 0 ? 7 : 0),
      keepWithNext: line === 0 || line >= most - 2,
    };
  });
}

function readingRows(
  options: readonly PaperOption[],
  fieldOf: (i: number) => string,
  fonts: FontSet,
): readonly Block[] {
  const count = Math.max(...options.map((option) => option.readings.length));
  return Array.from({ length: count }, (_, line) => {
    const cells = options.flatMap((option, i) => {
      const reading = option.readings[line];
      if (reading === undefined) return [];
      const field = `${fieldOf(i)}.readings[${line}]`;
      const cell = readingCell(reading, field, fonts);
      return [{ x: COLUMNS[i] ?? 0, block: ruledAbove(padded(cell, 2.4, 2.4), COLUMN_WIDTH, 'rule') }];
    });
    return keep(beside(cells));
  });
}

/** Words first; the figure stands small at the end of their line, or under them where there is no room. */
function readingCell(reading: PaperReading, field: string, fonts: FontSet): Block {
  const width = COLUMN_WIDTH - LABEL;
  const set = (text: string, name: string, style: TextStyle, x: number, room: number, anchor: 'start' | 'end') => ({
    x,
    block: textBlock({ text, field: `${field}.${name}`, style, width: room, fonts, anchor }),
  });
  const label = set(reading.label, 'label', STYLES.readingQuiet, 0, LABEL, 'start');
  const words = set(reading.words, 'words', STYLES.reading, LABEL, width, 'start');
  if (reading.figure === '') return beside([label, words]);
  const style = { ...STYLES.small, leading: STYLES.reading.leading };
  const taken =
    fonts.measure(reading.words, STYLES.reading, STYLES.reading.size) +
    fonts.measure(reading.figure, style, style.size);
  const figure = set(reading.figure, 'figure', style, LABEL, width, 'end');
  if (taken + 4 <= width) return beside([label, words, figure]);
  const under = stack([words.block, set(reading.figure, 'figure', style, LABEL, width, 'start').block]);
  return beside([label, { x: LABEL, block: under }]);
}

function priceRow(options: readonly PaperOption[], fieldOf: (i: number) => string, fonts: FontSet): Block {
  const cells = options.map((option, i) => {
    const x = COLUMNS[i] ?? 0;
    const field = fieldOf(i);
    const price = textBlock({
      text: option.price,
      field: `${field}.price`,
      style: STYLES.price,
      width: COLUMN_WIDTH - TICK - 8,
      fonts,
    });
    const wide = fonts.measure(option.price, STYLES.price, STYLES.price.size) + 6;
    const room = COLUMN_WIDTH - TICK - 8 - wide;
    const fits = fonts.measure(option.priceNote, STYLES.small, STYLES.small.size) <= room;
    const note = textBlock({
      text: option.priceNote,
      field: `${field}.priceNote`,
      style: STYLES.small,
      width: fits ? room : COLUMN_WIDTH - TICK - 8,
      fonts,
    });
    const both = fits
      ? beside([
          { x: 0, block: price },
          { x: wide, block: padded(note, 6.2, 0) },
        ])
      : stack([price, note]);
    const block = padded(both, 6, 0);
    const items = [
      artifact([ruleShape(0, COLUMN_WIDTH, 0, 'ink', 0.9), tickBox(COLUMN_WIDTH - TICK - 0.5, 10.5, TICK)]),
      ...block.items,
    ];
    return { x, block: { ...block, items } };
  });
  return keep({ ...beside(cells), before: 3 });
}
