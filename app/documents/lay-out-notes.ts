/** Texts at the end: what to heed, terms, the notice of cancellation. */
import type { PaperClosing, PaperNote } from '#app/proposal/proposal-paper.ts';
import { artifact, keep, ruleShape, textBlock, textBlocks } from './block.ts';
import type { Block } from './block.ts';
import type { FontSet } from './font-set.ts';
import { CONTENT_WIDTH, STYLES } from './paper-style.ts';

/** Lines of running text are easiest to read at this width. */
const MEASURE = 440;

export function headingBlock(text: string, field: string, fonts: FontSet, before = 24): Block {
  return textBlock({
    text,
    field,
    style: STYLES.heading,
    width: CONTENT_WIDTH,
    fonts,
    role: 'H2',
    before,
    keepWithNext: true,
  });
}

/** Notes under their heading. What a note is about stands over it in semibold. */
export function noteBlocks(
  notes: readonly PaperNote[],
  field: string,
  title: string,
  fonts: FontSet,
): readonly Block[] {
  if (notes.length === 0) return [];
  return [
    headingBlock(title, `${field}.title`, fonts),
    ...notes.flatMap((note, i) => noteLines(note, `${field}[${i}]`, i === 0 ? 5 : 7, fonts)),
  ];
}

function noteLines(note: PaperNote, field: string, before: number, fonts: FontSet): readonly Block[] {
  const about =
    note.about === ''
      ? []
      : [
          textBlock({
            text: note.about,
            field: `${field}.about`,
            style: STYLES.strong,
            width: MEASURE,
            fonts,
            before,
            keepWithNext: true,
          }),
        ];
  const says = textBlocks({
    text: note.says,
    field: `${field}.says`,
    style: STYLES.body,
    width: MEASURE,
    fonts,
    before: about.length === 0 ? before : 0,
  });
  return [...about, ...says];
}

export function termBlocks(closing: PaperClosing, fonts: FontSet): readonly Block[] {
  if (closing.terms.length === 0) return [];
  return [
    headingBlock('Terms', 'closing.terms.title', fonts),
    ...closing.terms.flatMap((text, i) =>
      textBlocks({ text, field: `closing.terms[${i}]`, style: STYLES.body, width: MEASURE, fonts, before: 5 }),
    ),
  ];
}

export function cancellationBlocks(closing: PaperClosing, fonts: FontSet): readonly Block[] {
  const { says, blanks } = closing.cancellation;
  if (says.length === 0 && blanks.length === 0) return [];
  return [
    headingBlock('If you change your mind', 'closing.cancellation.title', fonts),
    ...says.flatMap((text, i) =>
      textBlocks({
        text,
        field: `closing.cancellation.says[${i}]`,
        style: STYLES.body,
        width: MEASURE,
        fonts,
        before: 5,
        keepWithNext: blanks.length > 0,
      }),
    ),
    ...(blanks.length === 0 ? [] : [blankLine(blanks, 'closing.cancellation.blanks', [0.56, 0.44], fonts)]),
  ];
}

/** Labels in a row, each with a line to write on behind it. `shares` part the width among them. */
export function blankLine(
  labels: readonly string[],
  field: string,
  shares: readonly number[],
  fonts: FontSet,
  height = 30,
): Block {
  const gap = 16;
  const room = CONTENT_WIDTH - gap * (labels.length - 1);
  let x = 0;
  const items = labels.flatMap((text, i) => {
    const width = room * (shares[i] ?? 1 / labels.length);
    const block = textBlock({ text, field: `${field}[${i}]`, style: STYLES.small, width, fonts });
    const taken = fonts.measure(text, STYLES.small, STYLES.small.size) + 5;
    const top = height - STYLES.small.leading;
    const placed = [
      ...block.items.map((item) => ({ ...item, x: item.x + x, y: item.y + top })),
      artifact([ruleShape(x + taken, x + width, height - 2.2, 'pencil', 0.6)]),
    ];
    x += width + gap;
    return placed;
  });
  return keep({ height, items, before: 0, keepWithNext: false });
}
